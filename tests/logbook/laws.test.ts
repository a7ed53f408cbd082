/** What must hold of any book, tried on drawn flocks: shares sum to one, order and names of no matter, one fault without echoes. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {drawBook} from '../bench/draw-book.ts'
import {linkFiles, type Files} from './around.ts'

const drawn = (seed: number): Files => Object.fromEntries(drawBook(seed, {birds: 120, seasons: 5}))
const seeds = fc.integer({min: 1, max: 1000})

function linked(files: Files): Logbook {
  const {book, problems} = linkFiles(files)
  if (!book || problems.some(problem => problem.severity === 'error')) throw new Error(problems.map(problem => `${problem.place.file} ${problem.reason}`).join('\n'))
  return book
}

/** What a bird is, without its names. */
const plain = (bird: Bird, name: (bird: Bird) => string) => ({
  name: name(bird), sex: bird.sex, step: bird.step.label, shares: [...bird.shares].map(([strain, share]) => [strain.id, share]),
  pairs: bird.parentage.pairs.map(({sire, dam, chance}) => [sire && name(sire), dam && name(dam), chance]), looks: [...bird.looks].map(([trait, look]) => [trait.id, look.counted?.value]),
  weighings: bird.weighings.map(weighing => weighing.value), hatch: bird.hatch?.id,
})

describe('any drawn book', () => {
  it('gives every chick shares that sum to 1 and chances that sum to 1', () => {
    fc.assert(fc.property(seeds, seed => {
      const book = linked(drawn(seed))
      for (const chicks of [...book.birds, ...book.hatches.flatMap(hatch => hatch.tallies)]) {
        expect(Math.abs([...chicks.shares.values()].reduce((sum, share) => sum + share, 0) - 1)).toBeLessThan(1e-12)
        const {kind, pairs} = chicks.parentage
        if (kind !== 'founder') expect(Math.abs(pairs.reduce((sum, pair) => sum + pair.chance, 0) - 1)).toBeLessThan(1e-12)
      }
    }), {numRuns: 5})
  })

  it('has parents before their chicks', () => {
    fc.assert(fc.property(seeds, seed => {
      const {birds} = linked(drawn(seed))
      const place = new Map(birds.map((bird, index) => [bird, index]))
      for (const bird of birds) for (const {bird: parent} of [...bird.parentage.sires, ...bird.parentage.dams]) expect(place.get(parent) ?? Infinity).toBeLessThan(place.get(bird) ?? -1)
    }), {numRuns: 5})
  })

  it('is the same whatever the order of the files', () => {
    fc.assert(fc.property(seeds, seed => {
      const files = drawn(seed)
      const turned = Object.fromEntries(Object.entries(files).reverse())
      const tell = (book: Logbook) => book.birds.map(bird => plain(bird, each => each.id))
      expect(tell(linked(turned))).toEqual(tell(linked(files)))
    }), {numRuns: 3})
  })

  it('is the same when every band is another word', () => {
    fc.assert(fc.property(seeds, seed => {
      const files = drawn(seed)
      const bands = linked(files).birds.map(bird => bird.band).sort((a, b) => b.length - a.length)
      const any = new RegExp(`(?<![\\w-])(?:${bands.join('|')})(?![\\w-])`, 'g')
      const renamed = Object.fromEntries(Object.entries(files).map(([file, text]) => [file.replace(any, band => `Q${band}`), text.replace(any, band => `Q${band}`)]))
      const tell = (book: Logbook) => book.birds.map(bird => plain(bird, each => each.band.replace(/^Q/, ''))).sort((a, b) => (a.name < b.name ? -1 : 1))
      expect(tell(linked(renamed))).toEqual(tell(linked(files)))
    }), {numRuns: 3})
  })

  it('misses a file that cannot be read once, and nothing that stood in it again', () => {
    fc.assert(fc.property(seeds, fc.nat(), (seed, pick) => {
      const files = drawn(seed)
      const records = Object.keys(files).filter(file => /^(?:hatches|birds|pens|traits|strains)\//.test(file))
      const file = records[pick % records.length] ?? ''
      const {problems} = linkFiles({...files, [file]: `---\n  - : [\n${(files[file] ?? '').slice(4)}`})
      expect(problems.filter(problem => problem.severity === 'error').map(problem => problem.place.file)).toEqual([file])
    }), {numRuns: 12})
  })
})
