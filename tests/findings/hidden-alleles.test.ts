import {describe, expect, it} from 'vitest'
import {hiddenAlleles} from '../../src/findings/hidden-alleles.ts'
import type {Evidence} from '../../src/findings/hidden-evidence.ts'
import {COMB, GROUND, heredityBook, type HeredityBook} from './heredity-book.ts'

/** One piece of evidence in brief. */
function brief(evidence: Evidence): string {
  switch (evidence.kind) {
    case 'threw': return `threw ${evidence.count} ${evidence.state}: ${evidence.chicks.map(chick => (chick.kind === 'bird' ? chick.band : 'tally')).join(' ')}`
    case 'given': return `given by ${evidence.parent.band}`
    case 'not-given': return `not given by ${evidence.parents.map(({band}) => band).join(' ')}`
    case 'strain': return `${evidence.strain.id} ${evidence.share} ${evidence.known}`
    case 'chicks': return `${evidence.chicks} by ${evidence.mates.map(({band}) => band).join(' ')} ${evidence.genotype} ${evidence.mateLook}, ${evidence.shown} shown`
    default: return evidence.kind
  }
}

function hidden({book, findings, bird}: HeredityBook, band: string, symbol = 'P') {
  const at = hiddenAlleles(book, findings.heredity, findings.pedigree)(bird(band)).find(({locus}) => locus.symbol === symbol) ?? expect.fail(symbol)
  const write = (allele: number) => at.locus.alleles[allele]
  return {shows: at.shows.map(write), open: at.open.map(({allele, evidence}) => [write(allele), ...evidence.map(brief)]), chance: at.open[0]?.probability, looks: at.looks.map(({state}) => state)}
}
const chicks = (count: number, sire: string, dam: string, rest = 'comb=pea') => Array.from({length: count}, (_, index) => `${sire}${dam}${index} female ${sire} ${dam} ${rest}`)

describe('hiddenAlleles(book, heredity, pedigree)', () => {
  it('points at clean chicks by a mate that would have let it show', () => {
    // ⅔ before, seven clean chicks of a single mate after: 1/65
    const found = hidden(heredityBook(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'D male - - comb=single', 'X female A B comb=pea', ...chicks(7, 'D', 'X')]), 'X')
    expect(found).toMatchObject({shows: ['P'], looks: ['pea'], open: [['p+', '7 by D p+/p+ single, 0 shown']]})
    expect(found.chance).toBeCloseTo(1 / 65, 9)
  })

  it('puts a chick that showed it before a parent that must have given it, and that before clean chicks', () => {
    const book = heredityBook(['A male - - tested={P:~P/P}', 'B female - - comb=single', 'D female - - comb=single', 'X male A B comb=pea', ...chicks(3, 'X', 'D'), 'Y female X D comb=single'])
    expect(hidden(book, 'X')).toMatchObject({chance: 1, open: [['p+', 'threw 1 single: Y', 'given by B', '4 by D p+/p+ single, 1 shown']]})
  })

  it('puts a test first', () => {
    expect(hidden(heredityBook(['A male - - comb=pea tested={P:~P/p+}', 'D female - - comb=single', ...chicks(2, 'A', 'D')]), 'A').open).toEqual([['p+', 'test', '2 by D p+/p+ single, 0 shown', 'holm-white 0.5 stated']])
  })

  it('puts a chick that was rather misread behind clean ones, and says how far it is believed', () => {
    const misread = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 5%')}
    const book = heredityBook(['D female - - tested={P:~p+/p+}', 'X male - - comb=pea', ...chicks(9, 'X', 'D'), 'Y female X D comb=single'], undefined, misread)
    const {open} = hidden(book, 'X')
    expect(open[0]?.slice(0, 3)).toEqual(['p+', '10 by D p+/p+ null, 1 shown', 'threw 1 single: Y'])
  })

  it('says of a single-combed bird that it hides nothing', () => {
    expect(hidden(heredityBook(['A male - - comb=single']), 'A')).toMatchObject({shows: ['p+'], open: []})
  })

  it('says that neither parent has it', () => {
    const found = hidden(heredityBook(['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'X male A B comb=pea']), 'X')
    expect(found).toMatchObject({chance: 0, open: [['p+', 'not given by A B']]})
  })

  it('leaves chicks of a mate that hides the allele too unsaid, and descent where nothing else speaks', () => {
    const book = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'C female - - tested={P:~P/P}', 'X male A B comb=pea', ...chicks(4, 'X', 'C')])
    expect(hidden(book, 'X').open).toEqual([['p+', 'descent']])
  })

  it('has both alleles open for a bird nobody scored', () => {
    expect(hidden(heredityBook(['A male - - comb=pea', 'D female - - comb=single', 'X male A D']), 'X').open).toEqual([['p+', 'given by D'], ['P', 'descent']])
  })

  it('lets a hen hide nothing of the Z, and takes a cock’s daughters of any hen', () => {
    const book = heredityBook(
      ['A male - - tested={S:~S/s+}', 'B female - - ground=silver', 'X male A B ground=silver', 'H female A B ground=gold', ...chicks(3, 'X', 'B', 'ground=silver')],
      '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND},
    )
    expect(hidden(book, 'H', 'S')).toMatchObject({shows: ['s+'], open: []})
    expect(hidden(book, 'X', 'S').open).toEqual([['s+', '3 by B S/- silver, 0 shown']])
  })

  it('takes no chick for its own that may be another’s', () => {
    const book = heredityBook(['A male - - comb=pea', 'E male - - comb=pea', 'D female - - comb=single', 'X male {A:~50%,~E:~50%} D comb=single'])
    expect(hidden(book, 'A').open).toEqual([['p+', 'holm-white 0.5 stated']])
  })
})
