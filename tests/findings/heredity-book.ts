/** Small books for heredity: a line a bird, read and linked as records are. */
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {study, type Findings} from '../../src/findings/study.ts'
import {bookOf, type Files} from '../logbook/around.ts'

export const COMB = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'
export const GROUND = '---\nname: Ground\nstates: [silver, gold]\ntarget: silver\nrequired: yes\nloci:\n  S: {on: Z, alleles: [S, s+]}\nshows:\n  - {S: S/_, is: silver}\n  - {S: _/_, is: gold}\n---\n'
export const LEGS = '---\nname: Legs\nstates: [creeper, long]\nloci: [Cp]\nshows:\n  - {Cp: Cp/Cp, is: lethal}\n  - {Cp: Cp/_, is: creeper}\n  - {Cp: _/_, is: long}\n---\n'

export interface HeredityBook {
  readonly book: Logbook
  readonly findings: Findings
  bird(band: string): Bird
  /** chance of a genotype */
  chance(band: string, symbol: string, written: string): number
}

/**
 * Birds as `band sex sire dam field=value…`, founders as `band sex - -`, all of one strain; a year between generations; `~` stands for a space.
 *
 * @param alleles as the strain's record has them
 */
export function heredityBook(birds: readonly string[], alleles = '{P: {P: 50%, p+: 50%}}', files: Files = {}): HeredityBook {
  const generation = new Map<string, number>()
  const records = birds.map(line => {
    const [band = '', sex = '', sire = '-', dam = '-', ...more] = line.trim().split(/\s+/)
    const fields = more.map(each => each.replace('=', ': ').replaceAll('~', ' '))
    const depth = sire === '-' ? 0 : 1 + Math.max(...`${sire}~${dam}`.split(/[{}:,~%]+/).map(each => generation.get(each) ?? 0))
    generation.set(band, depth)
    const of = sire === '-' ? ['strain: holm-white'] : [`sire: ${sire.replaceAll('~', ' ')}`, `dam: ${dam.replaceAll('~', ' ')}`, `hatched: ${2022 + depth}-04-01`]
    return [`birds/${band}.md`, `---\nband: ${band}\nsex: ${sex}\n${[...of, ...fields].join('\n')}\n---\n`] as const
  })
  const book = bookOf({
    'traits/comb.md': COMB, 'strains/holm-white.md': `---\nname: Holm White\nrole: recurrent\nalleles: ${alleles}\n---\n`, 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\n---\n',
    ...Object.fromEntries(records), ...files,
  })
  const findings = study(book)
  const bird = (band: string): Bird => {
    const found = book.birds.find(each => each.band === band)
    if (!found) throw new Error(`no ${band}`)
    return found
  }
  return {
    book, findings, bird,
    chance(band, symbol, written) {
      const locus = book.loci.get(symbol)?.locus
      if (!locus) throw new Error(`no ${symbol}`)
      return findings.heredity.of(bird(band), locus).genotypes.find(each => each.written === written)?.probability ?? 0
    },
  }
}
/** The unwanted allele is dominant, and hens alone show it. */
export const SHELL = '---\nname: Shell\nstates: [blue, white]\ntarget: white\nrequired: true\nseen-in: female\nloci:\n  Q: {on: autosome, alleles: [Q, q+]}\nshows:\n  - {Q: Q/_, is: blue}\n  - {Q: q+/q+, is: white}\n---\n'
/** The unwanted allele is dominant, and three in five show it. */
export const TOES = '---\nname: Toes\nstates: [five, four]\ntarget: four\nrequired: true\nloci:\n  Po: {on: autosome, alleles: [Po, po+]}\nshows:\n  - {Po: po+/po+, is: four}\n  - {Po: _/_, is: five, penetrance: 60%}\n  - {Po: _/_, is: four}\n---\n'
/** Two loci give four looks. */
export const WALNUT = '---\nname: Comb\nstates: [walnut, rose, pea, single]\ntarget: walnut\nrequired: true\nloci:\n  R: {on: autosome, alleles: [R, r+]}\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {R: R/_, P: P/_, is: walnut}\n  - {R: R/_, is: rose}\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'
/** White hides silver and gold. */
export const HIDING = '---\nname: Ground\nstates: [silver, gold, white]\ntarget: silver\nrequired: yes\nloci:\n  S: {on: Z, alleles: [S, s+]}\n  C: {on: autosome, alleles: [C+, c]}\nshows:\n  - {C: c/c, is: white}\n  - {S: S/_, is: silver}\n  - {S: _/_, is: gold}\n---\n'
