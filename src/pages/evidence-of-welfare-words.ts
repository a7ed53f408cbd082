/** Evidence of welfare, in words: what the standard asks of the genes, how the chicks live, and who says so. */
import type {HarmAsked, LifeAsked, ShownWelfare} from '../findings/shown-of-breeding.ts'
import {ageWords, dateWords} from './dates.ts'
import {someOf} from './evidence-of-work-words.ts'
import {nameOf} from './evidence-of-type-words.ts'
import {figured, limits, listWords, percentSign, sentence} from './numbers.ts'

/** Of harm nothing is left to this site. */
const LAW_FIRST = 'Local law and a veterinarian go before anything said here.'

/** Genes, lives and a word, each in its sentence. */
export function welfareWords(shown: ShownWelfare): string {
  return [genesWords(shown), ...(shown.life ? [lifeWords(shown.life)] : []), wordWords(shown), LAW_FIRST].join(' ')
}

/** `legs (Cp)`: what is asked for, and the allele it cannot be had without */
export const harmName = (harm: Pick<HarmAsked, 'trait' | 'locus' | 'allele'>): string => `${nameOf(harm)} (${harm.locus.alleles[harm.allele] ?? ''})`

function genesWords({harms, looks, withoutGenes, untoldClauses}: ShownWelfare): string {
  const clauses = untoldClauses.length === 0 ? '' : ` Nothing can be told of ${listWords(untoldClauses)}.`
  const unknown = withoutGenes.length === 0 ? '' : ` Of ${someOf(withoutGenes.map(({name}) => name.toLowerCase()))} no rule says which genes ${withoutGenes.length === 1 ? 'it comes' : 'they come'} of.`
  const none = looks === 0 ? 'No look is asked for that genes could be told of.' : looks === 1 ? 'The look asked for needs no allele that is on record as killing or harming a bird.' : `None of the ${figured(looks, 'look')} asked for needs an allele that is on record as killing or harming a bird.`
  if (harms.length === 0) return `${looks > 0 && looks === withoutGenes.length ? unknown.trim() : `${none}${unknown}`}${clauses}`
  const once = [...new Map(harms.map(harm => [harmName(harm), harm])).values()], of = (what: HarmAsked['harm']): readonly HarmAsked[] => once.filter(({harm}) => harm === what)
  const says = [...new Set(once.flatMap(({says}) => says ?? []))].join(' ')
  const told = [
    ...(of('lethal').length === 0 ? [] : [`cannot be had without an allele of which chicks die: ${listWords(of('lethal').map(harmName))}`]),
    ...(of('welfare').length === 0 ? [] : [`needs an allele of which a caution is on record: ${listWords(of('welfare').map(harmName))}`]),
  ]
  return `Of what is asked for ${told.join('; ')}.${says === '' ? '' : ` ${says}`}${unknown}${clauses}`
}

function lifeWords(life: LifeAsked): string {
  const {of, age, mark, found, ifDied, undated, unlisted, culled, taken, lost, silent, decidedBy} = life, open = undated + unlisted
  const left = [...(culled > 0 ? [`${culled} culled`] : []), ...(taken > 0 ? [`${taken} taken`] : []), ...(lost > 0 ? [`${lost} lost`] : [])]
  const doubt = [...(left.length === 0 ? [] : [`${listWords(left)} before that age`]), ...(silent === 0 ? [] : [`of ${silent} nothing is written after it`])]
  const worst = doubt.length === 0 || ifDied === null || found === null ? '' : `: had they died, it would be ${percentSign(ifDied.share)}`
  const beside = `${doubt.length === 0 ? '' : ` ${sentence(doubt.join('; '))}${worst}.`}${open === 0 ? '' : ` Of ${open} more that hatched nothing is written, or no day.`}`
  if (found === null) return `How many live to ${ageWords(age)} cannot be told of ${of === '' ? 'any step' : of}: nobody was watched so long.${beside}`
  const whose = found.kind === 'families' ? `by ${found.families} sire families` : 'of these chicks only'
  return `Of ${figured(found.n, 'chick')} of ${of} ${percentSign(found.share)} (${limits(found)}, ${whose}) lived to ${ageWords(age)}, where ${percentSign(mark)} is asked${decidedBy === 'cautious' ? ' of the lower limit' : ''}.${beside}`
}

function wordWords({papers, valid, stated}: ShownWelfare): string {
  const told = (some: ShownWelfare['papers'], held: string): string => some.map(({title, on, until}) => `${title}, ${dateWords(on)}${until ? `, ${held} until ${dateWords(until)}` : ''}`).join('; ')
  if (valid.length > 0) return `${sentence(told(valid, 'holds'))}.`
  if (stated !== null) return `The keeper states: ${stated}`
  return papers.length > 0 ? `${sentence(told(papers.slice(-1), 'held'))}. None holds now.` : 'No paper and no statement says that birds bear it.'
}
