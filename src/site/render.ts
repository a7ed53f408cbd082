/** placeholder of the signature; see the next commit */
import type {Download, Page} from '../pages/page.ts'
import type {Frame} from './frame.ts'
import type {Pictures} from './picture.ts'

export interface SiteInput {
  readonly pages: readonly Page[]
  readonly downloads: readonly Download[]
  readonly frame: Frame
  readonly pictures: Pictures
  /** the pictures' files, `photos/…` */
  readonly pictureFiles: ReadonlyMap<string, Uint8Array | string>
  /** what `readTemplates` gives */
  readonly templates: ReadonlyMap<string, string | Uint8Array>
}

export type SiteFiles = ReadonlyMap<string, string | Uint8Array>

export declare function renderSite(input: SiteInput): Promise<SiteFiles>
