import {describe, expect, it} from 'vitest'
import {readGenotype} from '../../src/heredity/genotype-notation.ts'
import {folderInMemory, type Folder} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'
import {SHIPPED_LOCI} from '../../src/records/shipped-loci.ts'

// read as a project's own folder, with every check there is
const {records, slips} = readRecords(SHIPPED_LOCI)
const loci = new Map(records.locus.map(({id, data}) => [id, {symbol: id, ...data}]))

describe('the reference of chicken loci', () => {
  it('reads without a fault, a file a locus, called by its symbol', () => {
    expect(slips).toEqual([])
    expect(loci.size).toBe(SHIPPED_LOCI.list().length)
    expect(loci.size).toBeGreaterThan(40)
  })

  it('has no two files that one disk could take for one', () => {
    expect(new Set([...loci.keys()].map(symbol => symbol.toLowerCase())).size).toBe(loci.size)
  })

  describe.each([...loci.values()])('$symbol', locus => {
    it('has two alleles or more, of which its symbol or its letters are one', () => {
      expect(locus.alleles.length).toBeGreaterThan(1)
      expect(locus.alleles.some(allele => allele.toLowerCase().replace(/[+^].*|\d$/, '') === locus.symbol.toLowerCase().replace(/\d$/, ''))).toBe(true)
    })

    it('has rules that read for the loci they name, in both sexes’ notation', () => {
      for (const {shows} of locus.looks ?? []) for (const {others} of shows) for (const {key, value} of others) {
        const named = loci.get(key)
        expect(named && readGenotype(value, named).kind, `${key}: ${value}`).toBe('read')
      }
    })

    it('lies near loci of the reference, on the same kind of chromosome, once a pair', () => {
      for (const {key, value} of locus.linked ?? []) {
        const other = loci.get(key)
        expect([other?.on, other?.chromosome]).toEqual([locus.on, locus.chromosome])
        expect(value.recombination).toBeGreaterThan(0)
        expect(value.recombination).toBeLessThan(0.5)
        expect(other?.linked?.some(back => back.key === locus.symbol) ?? false).toBe(false)
      }
    })

    it('names a source, and says so where it is not one that was read', () => {
      expect(locus.sources?.length ?? 0).toBeGreaterThan(0)
      if (locus.sources?.every(({known}) => known === 'memory' || known === 'hobbyists')) expect(locus.doubts ?? []).not.toEqual([])
      for (const {year} of locus.sources ?? []) if (year !== undefined) expect(year).toBeGreaterThan(1900)
    })

    it('speaks in sentences', () => {
      const {cautions = [], beliefs = [], doubts = []} = locus
      for (const words of [...cautions.map(({says}) => says), ...beliefs.flatMap(({heard, right}) => [heard, right]), ...doubts]) expect(words).toMatch(/^\S.*\.$/)
    })

    it('warns of what is lethal', () => {
      const kills = (locus.looks ?? []).some(({shows}) => shows.some(rule => rule.is === 'lethal'))
      expect(locus.cautions?.some(({about}) => about === 'lethal') ?? false).toBe(kills)
    })
  })

  it('is opened only for the loci that a project names, and not at all where it names none', () => {
    const opened: string[] = []
    const watched: Folder = {list: () => SHIPPED_LOCI.list(), bytes: file => { opened.push(file); return SHIPPED_LOCI.bytes(file) }}
    const trait = (loci: string) => folderInMemory({'traits/x.md': `---\nname: X\nstates: [a, b]\n${loci}---\n`})
    expect(readRecords(trait(''), watched).reference.symbols).toEqual([])
    const {reference} = readRecords(trait('loci: [P, R, p]\n'), watched)
    expect([opened, [...reference.loci.keys()], reference.symbols.length]).toEqual([['loci/P.md', 'loci/R.md'], ['P', 'R'], loci.size])
  })

  it('at fault, is a fault of ours', () => {
    const broken = folderInMemory({'loci/P.md': '---\nname: Pea\n---\n'})
    expect(() => readRecords(folderInMemory({'traits/x.md': '---\nname: X\nstates: [a, b]\nloci: [P]\n---\n'}), broken)).toThrow('loci/P.md')
  })
})
