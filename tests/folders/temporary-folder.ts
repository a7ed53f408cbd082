/** A folder of its own for a test that writes, gone when the test file ends. */
import {mkdtempSync, rmSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll} from 'vitest'

export function temporaryFolder(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `pinfeather-${name}-`))
  afterAll(() => {
    rmSync(folder, {recursive: true, force: true})
  })
  return folder
}
