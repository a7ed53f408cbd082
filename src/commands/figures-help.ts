/** Help for `pinfeather figures`: an example for every question, or the columns of the one that was named. */
import {FIGURE_QUESTIONS, type FigureQuestion} from '../findings/figures.ts'
import {EVENNESS_QUESTIONS, type EvennessQuestion} from '../findings/evenness-figures.ts'
import {HEREDITY_QUESTIONS, type HeredityQuestion} from '../findings/heredity-figures.ts'
import {LIFE_QUESTIONS, type LifeQuestion} from '../findings/life-figures.ts'
import {VIGOUR_QUESTIONS, type VigourQuestion} from '../findings/vigour-figures.ts'
import {EVENNESS_COLUMN_WORDS} from '../pages/evenness-columns.ts'
import {COLUMN_WORDS, HEREDITY_COLUMN_WORDS} from '../pages/figure-columns.ts'
import {LIFE_COLUMN_WORDS} from '../pages/life-columns.ts'
import {VIGOUR_COLUMN_WORDS} from '../pages/vigour-columns.ts'
import {isPaperQuestion, PAPER_FIGURES, PAPER_QUESTIONS, type PaperQuestion} from './paper-figures.ts'

type Asked = FigureQuestion | EvennessQuestion | LifeQuestion | VigourQuestion | PaperQuestion | HeredityQuestion

const EXAMPLES: Readonly<Record<Exclude<Asked, PaperQuestion>, readonly [options: string, answers: string]>> = {
  birds: ['--format csv', 'every bird with parents and F'],
  shares: ['--format csv', 'how often each look was seen'],
  spread: ['', 'how even each measure is, step by step'],
  hatches: ['', 'eggs, fertility and hatch'],
  strains: ['--format csv', 'blood of every bird and step'],
  'true-bred': ['', 'how true each step bred'],
  kinship: ['--pair 24-031,24-044', 'two birds, and why they are kin; without --pair all that live, the closest first'],
  founders: ['', 'what is left of each founder'],
  inbreeding: ['', 'F, kinship and rate by step'],
  clans: ['', 'ten seasons ahead by each way of mating'],
  trend: ['', 'whether the steps grow truer and more even'],
  change: ['--from F3 --to F5', 'what changed from one step to another'],
  scores: ['', 'how graded traits were scored, and whether the scorers agree'],
  lay: ['', 'how eggs hatch, chicks live and hens lay, what they eat, and what was kept alike'],
  depression: ['', 'whether inbreeding is costing chicks, growth or eggs'],
  selection: ['', 'what choosing did, meant and unmeant, and what came of it'],
  crosses: ['', 'how far crosses stand above the mean of their lines'],
  genotypes: ['--locus P', 'what every bird may carry at a locus'],
  forecast: ['--sire 24-030 --dam 24-010', 'what a mating will give, with what is lost of it first'],
  'test-mating': ['--bird 24-010 --mate-genotype p+/p+ --locus P --error 1%', 'how many clean chicks clear a bird'],
  'hatch-size': ['--wanted "comb pea, female" --at-least 3 --sire 24-030 --dam 24-010', 'how many chicks and eggs that takes'],
}

const exampleFor = (question: Asked): readonly [options: string, answers: string] => (isPaperQuestion(question) ? PAPER_FIGURES[question].example : EXAMPLES[question])

const ALL = [...FIGURE_QUESTIONS, ...EVENNESS_QUESTIONS, ...LIFE_QUESTIONS, ...VIGOUR_QUESTIONS, ...PAPER_QUESTIONS, ...HEREDITY_QUESTIONS]

/** @param words those of the command line; the first that is a question is told of */
export function figuresHelp(words: readonly string[]): string {
  const question = ALL.find(each => words.includes(each))
  if (question) return `\nExample of ${question}:\n  ${exampleOf(question)}\n\nColumns of ${question}:\n${columnsOf(question)}\nThe table prints fractions as per cent; CSV and JSON give them whole, from 0 to 1.`
  const lines = ALL.map(each => [exampleOf(each), exampleFor(each)[1]] as const)
  const width = Math.max(...lines.map(([line]) => line.length))
  return `\nQuestions:\n${lines.map(([line, answers]) => `  ${line.padEnd(width)}  ${answers}`).join('\n')}\n\nWhat the columns of one hold: pinfeather figures birds --help`
}

function exampleOf(question: Asked): string {
  const [options] = exampleFor(question)
  return `pinfeather figures ${question} content${options === '' ? '' : ` ${options}`}`
}

function columnsOf(question: Asked): string {
  const named = Object.entries(isPaperQuestion(question) ? PAPER_FIGURES[question].columns : {...COLUMN_WORDS, ...EVENNESS_COLUMN_WORDS, ...LIFE_COLUMN_WORDS, ...VIGOUR_COLUMN_WORDS, ...HEREDITY_COLUMN_WORDS}[question])
  const all = question === 'strains' ? [['<strain>', 'expected share of it'], ['Z <strain>', 'on the Z'], ['dam line <strain>', 'of the mother’s line'], ...named] : named
  const width = Math.max(...all.map(([name = '']) => name.length))
  return all.map(([name = '', words]) => `  ${name.padEnd(width)}  ${words}\n`).join('')
}
