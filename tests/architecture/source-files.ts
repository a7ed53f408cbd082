/** The files of the repository as the architecture tests see them: paths from the root, with `/`. */
import {readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import ts from 'typescript'

export const ROOT = fileURLToPath(new URL('../..', import.meta.url))

const NOT_OURS = new Set(['node_modules', '.git', '.build'])

/** Every file below a folder of the repository, sorted; what tools make and what is being compared is left out. */
export function filesBelow(folder: string): string[] {
  const found: string[] = []
  for (const entry of readdirSync(join(ROOT, folder), {withFileTypes: true})) {
    if (NOT_OURS.has(entry.name) || entry.name.endsWith('-changed')) continue
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`
    if (entry.isDirectory()) found.push(...filesBelow(path))
    else found.push(path)
  }
  return found.sort()
}

export const textOf = (file: string): string => readFileSync(join(ROOT, file), 'utf8')

/** The parsed source, so that words in comments and in texts are never taken for code. */
export function parsed(file: string, text = textOf(file)): ts.SourceFile {
  return ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
}

/** What a source file imports, re-exports or loads while running, as written. */
export function importsOf(file: string, text = textOf(file)): string[] {
  return ts.preProcessFile(text, true, true).importedFiles.map(imported => imported.fileName)
}

/** Every node of a tree, the outer before the inner. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node
  const children: ts.Node[] = []
  ts.forEachChild(node, child => {
    children.push(child)
  })
  for (const child of children) yield* nodesOf(child)
}
