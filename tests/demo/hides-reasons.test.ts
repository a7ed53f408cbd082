/** Every reason that a page of the demo gives for what a bird may hide makes the chance that stands beside it, worked as a reader would. */
import {expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {lookTells} from '../../src/findings/look-tells.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import type {Bird} from '../../src/logbook/book.ts'
import {hidesReason} from '../../src/pages/hides-reason.ts'

/** A reader takes two chances for the same that are no further apart. */
const NEAR = 0.05
const PERCENT = String.raw`(under |over )?(\d+(?:\.\d)?)%`

const quiet = {phase: () => undefined, at: () => undefined, end: () => undefined, timings: new Map<string, number>()}
const opened = openBook(new URL('../../content/', import.meta.url).pathname, undefined, quiet)
if (!opened.findings || !opened.book) throw new Error('the demo is at fault')
const {book, findings} = opened

it('makes the chance that is shown, or says what else does', () => {
  const wrong: string[] = [], kinds = new Set<string>()
  for (const bird of book.birds) {
    for (const at of findings.hidden(bird)) {
      const why = at.why(), told = hidesReason(bird, at, findings)
      if (why === null) continue
      // the word belongs to the list of chicks in doubt, which has another threshold
      expect(told).not.toMatch(/doubtful|converged/)
      kinds.add(why.kind)
      if (why.kind === 'look') {
        // the look's odds by its kin, and every score of it right, or wrong as often as is said
        const [look] = why.looks, right = why.kin, wrong_ = (1 - why.kin) * (look?.passes?.rate ?? 0) ** (look?.scored.length ?? 0)
        const is = findings.heredity.of(bird, at.locus).genotypes.reduce((sum, {is: alleles, probability}) => sum + (alleles.every(each => each === null || at.shows.includes(each)) ? probability : 0), 0)
        if (Math.abs(right / (right + wrong_) - is) > NEAR) wrong.push(`${bird.band} ${is.toFixed(3)}: ${told}`)
      }
      const allele = 'asked' in why ? why.asked.allele : null
      const shown = allele === null ? null : findings.heredity.carries(bird, at.locus, allele)
      const [low, high] = shown === null ? [0, 0] : byWords(told, bird, at.locus, allele ?? 0)
      if (shown !== null && (shown < low - NEAR || shown > high + NEAR)) wrong.push(`${bird.band} ${shown.toFixed(3)}: ${told}`)
    }
  }
  expect(wrong).toEqual([])
  expect([...kinds].sort()).toEqual(['alone', 'look', 'sex', 'told'])
})

/** Least and most that the sentence makes. */
function byWords(sentence: string, bird: Bird, locus: Locus, allele: number): readonly [number, number] {
  // a look misread once in a hundred moves less than a reader minds
  const told = sentence.replace(/; scored \w+, as \w+ is once in 100/, '')
  const last = new RegExp(`(?:leaves|lifts it to) ${PERCENT}\\.$`).exec(told)
  if (last) return [Number(last[2]) / 100, Number(last[2]) / 100]
  if (/ (has only \S+ to give|of (his|her|its) own are \w+|is \w+|a test found .*)\.$/.test(told) && !/carr|without/.test(told)) return [1, 1]
  if (/ has (no )?\S+\.$/.test(told) && /neither|has no/.test(told)) return [0, 0]
  if (/ has nothing else\.$/.test(told)) return [1, 1]
  const strain = /copies (\d+\.\d)% are/.exec(told)
  const sides = strain ? [pair(strain[1]), pair(strain[1])] : [...told.matchAll(new RegExp(`(?:his|her|its) (?:likely |possible )?(?:sires?|dams?)[^,;]*`, 'g'))].map(([words]) => gamete(words))
  if (sides.length === 0) throw new Error(`not understood: ${told}`)
  const [low, high] = [0, 1].map(end => ofGametes(sides.map(side => side[end] ?? 0), told, bird, locus, allele))
  return [low ?? 0, high ?? 0]
}

const pair = (percent = ''): readonly [number, number] => [Number(percent) / 100, Number(percent) / 100]

/** What a side hands on, by its words. */
function gamete(words: string): readonly [number, number] {
  if (/ without /.test(words)) return [0, 0]
  if (/ (has|have) only /.test(words)) return [1, 1]
  const range = /with (\d+\.\d) to (\d+\.\d)%/.exec(words), one = new RegExp(`with ${PERCENT}`).exec(words)
  const most = new RegExp(`with up to ${PERCENT}`).exec(words)
  if (most) return [0, Number(most[2]) / 200]
  return range ? [Number(range[1]) / 200, Number(range[2]) / 200] : one ? [Number(one[2]) / 200, Number(one[2]) / 200] : [0.5, 0.5]
}

/** Chance to have it, its own look taken in. */
function ofGametes([a = 0, b = 0]: readonly number[], told: string, bird: Bird, locus: Locus, allele: number): number {
  const isHen = locus.on === 'Z' && bird.sex === 'female', twice = isHen ? a : a * b, once = isHen ? 0 : a + b - 2 * a * b
  if (locus.on === 'Z' && bird.sex === 'unknown') return (ofGametes([a, b], told, {...bird, sex: 'male', looks: new Map()}, locus, allele) + a) / 2
  const passes = / is (\d) times in 10/.exec(told)
  if (passes) return once * Number(passes[1]) / 10 / (once * Number(passes[1]) / 10 + 1 - once - twice)
  const looks = [...bird.looks].flatMap(([trait, {counted}]) => (counted && trait.loci.includes(locus) ? lookTells(trait, String(counted.value), bird.sex, locus) ?? [] : []))
  const may = { // of none, one and two
    none: looks.every(({must}) => !must.has(allele)), once: looks.every(({may: some, only}) => some.has(allele) && only !== allele), twice: looks.every(({only, must}) => only === allele || [...must].every(each => each === allele)),
  }
  const weights = {none: may.none ? 1 - once - twice : 0, once: may.once ? once : 0, twice: may.twice ? twice : 0}, sum = weights.none + weights.once + weights.twice
  return sum > 0 ? (weights.once + weights.twice) / sum : 0
}
