/**
 * Problems as a keeper reads them, and as a program does. Both are text made from data; neither prints.
 *
 *     content/hatches/2024-03.md
 *       11:38-11:44  error  no bird wears band 22-071   unknown-band
 *                           did you mean 22-017 (content/birds/22-017.md)?
 *
 *     ✖ 1 error in 1 of 41 files.
 */
import {createColors} from 'picocolors'
import type {Place, Problem} from '../records/problem.ts'

export interface ReportOptions {
  /** how the folder of records is named in front of its files, such as `content`; empty for none */
  readonly folder: string
  /** how many files were looked at */
  readonly files: number
  /** whether the reader is a terminal that shows colours */
  readonly colour: boolean
  /** what came of it, said after the count: `Nothing was published; site/ is as it was.` */
  readonly outcome?: string
}

/** A reason longer than this does not push the codes of its neighbours aside. */
const REASON_WIDTH = 100

/** The report of sorted problems, ending in a count and a line break. */
export function inspectReport(problems: readonly Problem[], options: ReportOptions): string {
  const {folder, files, colour, outcome} = options
  const colors = createColors(colour)
  const tail = outcome === undefined ? '' : ` ${outcome}`
  if (problems.length === 0) return `${colors.green('✔')} no problems in ${counted(files, 'file')}.${tail}\n`

  const byFile = new Map<string, Problem[]>()
  for (const problem of problems) byFile.set(problem.place.file, [...(byFile.get(problem.place.file) ?? []), problem])
  const widest = (lengths: Iterable<number>) => Math.max(0, ...lengths)
  const starts = problems.map(({place}) => `${place.start.line}:${place.start.column}`)
  const ends = problems.map(({place}) => `${place.end.line}:${place.end.column}`)
  const startWidth = Math.max(5, widest(starts.map(text => text.length)))
  const endWidth = Math.max(5, widest(ends.map(text => text.length)))
  const severityWidth = widest(problems.map(problem => problem.severity.length))
  const indent = ' '.repeat(2 + startWidth + 1 + endWidth + 2 + severityWidth + 2)

  const lines: string[] = []
  for (const [file, own] of byFile) {
    if (lines.length > 0) lines.push('')
    lines.push(colors.underline(shownFile(folder, file)))
    const reasonWidth = widest(own.map(problem => problem.reason.length).filter(length => length <= REASON_WIDTH))
    for (const problem of own) {
      const {start, end} = problem.place
      const place = `${`${start.line}:${start.column}`.padStart(startWidth)}-${`${end.line}:${end.column}`.padEnd(endWidth)}`
      const severity = problem.severity.padEnd(severityWidth)
      lines.push(`  ${place}  ${problem.severity === 'error' ? colors.red(severity) : colors.yellow(severity)}  ${problem.reason.padEnd(reasonWidth)}   ${colors.dim(problem.code)}`)
      for (const line of remedyLines(problem, folder)) lines.push(indent + line)
    }
  }
  const errors = problems.filter(problem => problem.severity === 'error').length
  const warnings = problems.length - errors
  const count = [errors > 0 ? counted(errors, 'error') : '', warnings > 0 ? counted(warnings, 'warning') : ''].filter(part => part !== '').join(' and ')
  const mark = errors > 0 ? colors.red('✖') : colors.yellow('⚠')
  lines.push('', `${mark} ${count} in ${byFile.size} of ${counted(files, 'file')}.${tail}`)
  return `${lines.join('\n')}\n`
}

/** The remedy and, behind it, the one other place; several other places take a line each. */
function remedyLines(problem: Problem, folder: string): string[] {
  const related = problem.related ?? []
  const others = related.map(({place, note}) => `${note}${/\bat$/.test(note) ? '' : ':'} ${otherPlace(place, related.length === 1 ? problem.place : null, folder)}`)
  const [only] = others
  if (others.length !== 1 || only === undefined) return [problem.remedy, ...others]
  return [problem.remedy.endsWith('?') ? `${problem.remedy} (${only})` : `${problem.remedy}; ${only}`]
}

/** The only one, in the same file: `line 5, column 7`; else, among several always, as editors and terminals take it, `content/birds/22-017.md:5:7`. */
function otherPlace({file, start: {line, column}}: Place, from: Place | null, folder: string): string {
  return file === from?.file ? `line ${line}, column ${column}` : `${shownFile(folder, file)}:${line}:${column}`
}

const shownFile = (folder: string, file: string) => (folder === '' ? file : `${folder.replace(/\/+$/, '')}/${file}`)
const counted = (count: number, thing: string) => `${count} ${thing}${count === 1 ? '' : 's'}`

/** The problems as a JSON array, for editors and other programs: the keys always in this order, lines and columns from 1, the end behind the last character. */
export function inspectJson(problems: readonly Problem[], folder: string): string {
  const placed = ({file, start, end}: Place) => ({
    file: shownFile(folder, file), start: {line: start.line, column: start.column}, end: {line: end.line, column: end.column},
  })
  const plain = problems.map(({code, severity, place, reason, remedy, related}) => ({
    code, severity, place: placed(place), reason, remedy,
    related: (related ?? []).map(other => ({place: placed(other.place), note: other.note})),
  }))
  return `${JSON.stringify(plain, null, 2)}\n`
}
