import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook, Paper, Requirement} from '../../src/logbook/book.ts'
import {shownWords, whereShown} from '../../src/pages/evidence-words.ts'
import {waySentence} from '../../src/pages/way-words.ts'
import {LEGS} from '../findings/heredity-book.ts'
import {bookOf} from '../logbook/around.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'
import {at, bird, date, F2, hatch, logbook, project} from './small-logbook.ts'

function said(book: Logbook, more: Partial<Requirement>, papers: readonly Paper[] = []) {
  const [item] = study({...book, requirements: {at, body: '', association: null, papers, distinctness: null, items: [plainRequirement('welfare', more)]}}).evidence.items
  return item ? {shown: shownWords(item, book), way: waySentence(item, book.asOf), where: whereShown(item.shown)} : expect.fail('no evidence')
}
const LAW = 'Local law and a veterinarian go before anything said here.'
const legs = (target: string): Logbook => bookOf({'traits/legs.md': LEGS.replace('loci: [Cp]\n', `target: ${target}\nrequired: yes\nloci: [Cp]\n`)})

describe('welfareWords(shown)', () => {
  it('tells of an allele that kills with the caution, and defers to law and veterinarian', () => {
    const {shown, way, where} = said(legs('creeper'), {stated: 'All is well.'})
    expect(shown).toMatch(/^Of what is asked for cannot be had without an allele of which chicks die: legs \(Cp\)\. Chicks with two doses die about the fourth day .* Of comb no rule says which genes it comes of\. The keeper states: All is well\. Local law/)
    expect(way).toBe('Shortest way: ask for another look than legs (Cp), or drop the demand; ask a veterinarian, and the law, first.')
    expect(where?.text).toBe('Traits')
  })

  it('says where nothing is known to harm, and of what nothing can be told', () => {
    expect(said(legs('long'), {}, [plainPaper('welfare', '2022-08-12', null, {title: 'Letter'})]).shown).toBe(`None of the 2 looks asked for needs an allele that is on record as killing or harming a bird. Of comb no rule says which genes it comes of. Letter, 12 August 2022. ${LAW}`)
  })

  it('counts the traits without rules, and one look as one', () => {
    const {shown} = said(bookOf({'traits/legs.md': LEGS.replace('name: Legs', 'name: Comb and wattles').replace('loci: [Cp]\n', 'target: creeper\nrequired: yes\n').replace(/shows:[^]*?---/, '---')}), {})
    expect(shown).toMatch(/^Of comb and comb and wattles no rule says which genes they come of\./)
    const one = legs('long')
    expect(said({...one, traits: one.traits.filter(({id}) => id === 'legs')}, {}).shown).toMatch(/^The look asked for needs no allele that is on record as killing or harming a bird\. No paper/)
  })

  it('tells how many lived to the age, and what is beside them', () => {
    const from = hatch('1', {on: date('2024-03-23'), step: F2, unlisted: 2, hatched: 12})
    Object.assign(from, {chicks: Array.from({length: 10}, (_, index) => bird(`c${index}`, 'unknown', {hatched: from.on, hatch: from, step: F2, strain: null, left: index < 2 ? {on: date('2024-04-01'), how: index === 0 ? 'died' : 'culled', why: null} : null, observations: index < 3 ? [] : [{on: date('2025-01-01'), by: null, notes: []}]}))})
    const book = logbook('2025-10-30', {birds: from.chicks, hatches: [from], traits: [], project: {...project, ladder: ['F2']}}), {shown, way, where} = said(book, {atLeast: 0.85})
    expect(shown).toMatch(/^No look is asked for that genes could be told of\. Of 10 chicks of F2 90\.0% \(.*, of these chicks only\) lived to 8 weeks, where 85\.0% is asked\. 1 culled before that age; of 1 nothing is written after it: had they died, it would be 70\.0%\. Of 2 more that hatched nothing is written, or no day\. No paper and no statement says that birds bear it\. Local law/)
    expect(way).toBe('Shortest way: write what became of 3 chicks; a paper that shows it, or your own statement.')
    expect(where?.text).toBe('Hatches')
  })
})
