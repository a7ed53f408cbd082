#!/usr/bin/env -S node --max-semi-space-size=64
/** The words of the command line, nothing else. */
import {readFileSync} from 'node:fs'
import {Command, CommanderError, InvalidArgumentError, Option} from 'commander'
import {checksum} from './commands/checksum.ts'
import {inspect} from './commands/inspect.ts'
import {figures, QUESTIONS} from './commands/figures.ts'
import type {EvennessAsked} from './commands/evenness-figures.ts'
import type {HeredityAsked} from './commands/heredity-figures.ts'
import {figuresHelp} from './commands/figures-help.ts'
import {publish} from './commands/publish.ts'
import {sheet} from './commands/sheet.ts'
import {isSystemFault} from './commands/system-fault.ts'
import {worldOfProcess, type ExitCode} from './commands/world.ts'
import type {Day} from './records/dates.ts'
import type {Slip} from './records/problem.ts'
import {wholeDate} from './records/scalars.ts'

const world = worldOfProcess(process)

function wholeDay(text: string): Day {
  const slips: Slip[] = []
  const date = wholeDate.read(text, {file: '', path: []}, slip => slips.push(slip))
  if (date === undefined) throw new InvalidArgumentError(slips.map(({reason, remedy}) => `${reason}; ${remedy}.`).join(' '))
  return date.first
}

function pairOf(text: string): [string, string] {
  const [a = '', b = '', more] = text.split(',').map(band => band.trim())
  if (a === '' || b === '' || more !== undefined) throw new InvalidArgumentError('Write two bands with a comma between, such as 24-031,24-044.')
  return [a, b]
}

/** `5%` or `0.05`, between 0 and 1. */
function chanceOf(text: string): number {
  const [, digits = '', percent] = /^(\d*\.?\d+)\s*(%?)$/.exec(text.trim()) ?? [], chance = Number(digits) / (percent === '%' ? 100 : 1)
  if (digits !== '' && percent === '' && Number(digits) >= 1 && Number(digits) < 100) throw new InvalidArgumentError(`Did you mean ${digits}%?`)
  if (digits === '' || !(chance > 0 && chance < 1)) throw new InvalidArgumentError('Write a share between 0 and 100 %, such as 5% or 0.05.')
  return chance
}

function countOf(text: string): number {
  if (!/^[1-9]\d{0,3}$/.test(text.trim())) throw new InvalidArgumentError('Write a whole number from 1 on, such as 3.')
  return Number(text)
}

function command(name: string, description: string, example: string): Command {
  return program.command(name)
    .description(description)
    .addOption(new Option('--as-of <day>', 'figures as they stood on that day (default: the project’s as-of, else the latest date in the records)').argParser(wholeDay))
    .option('--quiet', 'say only what is wrong')
    .addHelpText('after', `\nExample:\n  ${example}`)
}

const {version} = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {readonly version: string}

const program = new Command('pinfeather')
  .version(version, '--version', 'say which version this is')
  .description('Turns the records of a breed in the making into a website, a draft standard and a dossier.')
  .showHelpAfterError('(add --help for the whole of it)')
  .showSuggestionAfterError()
  .exitOverride()
  .addHelpText('after', '\nExit codes: 0 done, 1 a record is at fault, 2 wrong use.')

interface Common {
  readonly asOf?: Day
  readonly quiet?: boolean
}

let code: ExitCode = 0

command('publish', 'read, check, compute and write the whole site', 'pinfeather publish content --to site')
  .argument('[folder]', 'the folder of records', 'content')
  .option('--to <site>', 'the folder to write', 'site')
  .option('--pdf', 'the standard and the dossier as PDFs too; takes an installed Chromium, which CHROMIUM=/path/to/chromium names where it is not found. Without one all else is published')
  .allowExcessArguments()
  .action(async (folder: string, options: Common & {to: string; pdf?: boolean}, {args: [, ...more]}: Command) => {
    if (more.length > 0) program.error(`error: the folder to write goes after --to: pinfeather publish ${folder} --to ${more.join(' ')}`)
    code = await publish({folder, to: options.to, asOf: options.asOf, pdf: options.pdf === true, quiet: options.quiet === true}, world)
  })

command('inspect', 'only check: every fault with its place, its reason and its remedy', 'pinfeather inspect content --format json')
  .argument('[folder]', 'the folder of records', 'content')
  .addOption(new Option('--format <format>', 'how to print').choices(['text', 'json']).default('text'))
  .action((folder: string, options: Common & {format: 'text' | 'json'}) => {
    code = inspect({folder, format: options.format, asOf: options.asOf, quiet: options.quiet === true}, world)
  })

program.command('checksum')
  .description('say which records these are, by the checksum that a dossier names them with')
  .argument('[folder]', 'the folder of records', 'content')
  .option('--is <digits>', 'hold the records against a checksum, its first 16 digits or all 64; exit code 1 when they are others')
  .option('--list', 'print a line for every record file, as sha256sum does; the SHA-256 of these lines is the checksum')
  .addHelpText('after', '\nExample:\n  pinfeather checksum content --is "ab12 cd34 ef56 7890"')
  .action((folder: string, {is, list}: {is?: string; list?: boolean}) => {
    code = checksum({folder, is, list: list === true}, world)
  })

command('figures', 'print one answer for people who want numbers without a site', 'pinfeather figures shares content --format csv')
  .argument('<question>', `one of ${QUESTIONS.join(', ')}`)
  .addHelpText('after', () => figuresHelp(process.argv.slice(3)))
  .argument('[folder]', 'the folder of records', 'content')
  .addOption(new Option('--format <format>', 'how to print').choices(['table', 'csv', 'json']).default('table'))
  .addOption(new Option('--pair <a,b>', 'for kinship: two birds by their bands, such as 24-031,24-044').argParser(pairOf))
  .option('--from <step>', 'for change: the earlier step, such as F3; for changes: the earlier draft, such as 3')
  .option('--to <step>', 'for change: the later step; for changes: the later draft (default: the latest)')
  .option('--locus <symbol>', 'for genotypes and test-mating: which locus, where there are several')
  .option('--sire <band>', 'for forecast and hatch-size: the male')
  .option('--dam <band>', 'for forecast and hatch-size: the female')
  .option('--bird <band>', 'for test-mating: the bird to be cleared')
  .option('--allele <allele>', 'for test-mating: the allele it may hide (default: the one that is not wanted)')
  .option('--mate <band>', 'for test-mating: the bird it is mated to')
  .option('--mate-genotype <genotype>', 'for test-mating: or what the mate is, such as p+/p+; at a locus not named, what all strains have or the wild type')
  .addOption(new Option('--among <chicks>', 'for test-mating: the chicks looked at (default: all)').choices(['sons', 'daughters', 'all']))
  .addOption(new Option('--error <share>', 'for test-mating: chance that may be left (default: 1%)').argParser(chanceOf))
  .option('--wanted <looks>', 'for hatch-size: what the chicks must be, such as "comb pea, female"')
  .addOption(new Option('--at-least <count>', 'for hatch-size: how many of them').argParser(countOf))
  .addOption(new Option('--chance <share>', 'for hatch-size: how surely (default: 95%)').argParser(chanceOf))
  .action((question: string, folder: string, {format, asOf, quiet, pair, from, to, ...asked}: Common & HeredityAsked & EvennessAsked & {format: 'table' | 'csv' | 'json'; pair?: [string, string]}) => {
    code = figures({question, folder, format, asOf, quiet: quiet === true, pair, asked, steps: {from, to}}, world)
  })

command('sheet', 'a sheet to print and write on by hand on a scoring day, made from the clauses of the standard', 'pinfeather sheet content --birds BC3F3 --to sheet.html')
  .argument('[folder]', 'the folder of records', 'content')
  .option('--birds <which>', 'living, a step, a pen, a hatch, or bands with commas between (default: the latest step)')
  .option('--to <file>', 'the file to write (default: sheet.html)')
  .option('--csv', 'a table to fill in for scores/ in its place (default: sheet.csv)')
  .action(async (folder: string, options: Common & {birds?: string; to?: string; csv?: boolean}) => {
    code = await sheet({folder, birds: options.birds, to: options.to, csv: options.csv === true, asOf: options.asOf, quiet: options.quiet === true}, world)
  })

try {
  await program.parseAsync(process.argv)
} catch (fault) {
  if (fault instanceof CommanderError) code = fault.exitCode === 0 ? 0 : 2
  else if (isSystemFault(fault)) {
    world.err(`\n${fault.message}\n`)
    code = 2
  } else throw fault
}
process.exitCode = code
