/**
 * The dossier for the committee, which names more than the site may. It is set from the same findings and lies beside the site, never in it:
 *
 *     site/                  public: its own dossier.html names who agreed to be named to all
 *     site-for-committee/    dossier.html, and dossier.pdf where PDFs are asked for
 */
import {existsSync} from 'node:fs'
import {basename, dirname, join, resolve} from 'node:path'
import type {Findings} from '../findings/study.ts'
import type {Confidential} from '../logbook/confidential.ts'
import type {Logbook} from '../logbook/book.ts'
import {dossierPage} from '../pages/dossier.ts'
import {namedToCommittee} from '../pages/naming.ts'
import {renderSite, type SiteInput} from '../site/render.ts'
import {besideNames, liesApart, MARKER, refusalOf, refusalWords} from '../site/write.ts'

/** `site-for-committee`, beside `site`; of `.` and the like, beside the folder they lead to. */
export function committeeFolder(site: string): string {
  const plain = site.replace(/[/\\]+$/, ''), named = /^\.{0,2}$/.test(basename(plain)) ? resolve(site) : plain
  return join(dirname(named), `${basename(named)}-for-committee`)
}

/** Why the committee's folder may not be written, in a sentence; null when it may. Asked before anything is published. */
export function committeeRefusal(site: string, content: string): string | null {
  const place = committeeFolder(site)
  if (!liesApart(place, site)) return `${place} is to hold the dossier for the committee, which is not to be published, and leads into the site in ${site}, or the site into it; name another folder for the site with --to, or take the link away.`
  const refusal = refusalOf(place, content)
  return refusal && `The dossier for the committee goes beside the site, and cannot: ${refusalWords(refusal)}.`
}

/** The files for the committee's folder. */
export async function committeeFiles(findings: Findings, confidential: Confidential, site: Omit<SiteInput, 'pages' | 'downloads' | 'progress'>): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const page = dossierPage(findings, confidential)
  const files = new Map<string, string | Uint8Array>()
  for (const [path, content] of await renderSite({...site, pages: [page], downloads: []})) if (path === page.path || path === page.pdf) files.set(path, content)
  return files
}

/** Where it lies, whom it names, and that it is not for everybody. */
export function committeeWords(book: Logbook, confidential: Confidential, {place, files}: {readonly place: string; readonly files: readonly string[]}): string {
  const {keepers, judges} = namedToCommittee(book, confidential)
  const parts = [...(keepers.length > 0 ? [counted(keepers.length, 'keeper')] : []), ...(judges.length > 0 ? [counted(judges.length, 'judge')] : [])]
  const whom = parts.length === 0 ? 'nobody whom the site does not' : `${parts.join(' and ')} whom the site does not`
  return `For the committee only: ${files.map(file => join(place, file)).join(' and ')}. It is no part of the public site and names ${whom}; send it, and publish it nowhere.`
}

/** Of a dossier that an earlier run made, where none is asked for any more: it may name somebody who has thought better of it. */
export function leftFromBefore(site: string): string | null {
  const place = committeeFolder(site), there = [...(existsSync(join(place, MARKER)) ? [place] : []), ...besideNames(place).filter(each => existsSync(each))]
  return there.length === 0 ? null : `${there.join(' and ')} still ${there.length === 1 ? 'holds' : 'hold'} a dossier for the committee${there.includes(place) ? '' : ', or part of one'}. The records ask for none now, so it was left as it was; take it away if it is not wanted.`
}

const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`
