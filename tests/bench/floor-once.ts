/**
 * The floor under publishing: `node --import tsx floor-once.ts <records> <site> <folder>` reads the same records and writes the same bytes
 * as the site, and does nothing else. Prints its milliseconds.
 */
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {filesOf} from '../folders/files-of.ts'

const [, , records = '', site = '', to = ''] = process.argv
const bytes = filesOf(site).map(path => [path, readFileSync(join(site, path))] as const)

const begun = performance.now()
for (const path of filesOf(records)) readFileSync(join(records, path), 'utf8')
for (const folder of new Set(bytes.map(([path]) => dirname(join(to, path))))) mkdirSync(folder, {recursive: true})
for (const [path, what] of bytes) writeFileSync(join(to, path), what)
process.stdout.write(`${performance.now() - begun}\n`)
