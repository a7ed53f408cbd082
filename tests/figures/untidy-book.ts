/** A drawn book made as untidy as barns are: birds banded late, parents in doubt, crosses off the ladder, days without bands. */
import {chanceOf, type Chance} from '../bench/chance.ts'
import {drawBook} from '../bench/draw-book.ts'
import type {FlockSize} from '../bench/draw-flock.ts'
import {plain, recordsOf} from './plain-reading.ts'

/** Banded chicks of a hatch that stayed, of one sex. */
function stayed(files: ReadonlyMap<string, string>, hatch: string, sex: string): string[] {
  const lines = plain.list(recordsOf(files, 'hatches').get(hatch)?.chicks).map(plain.map)
  return lines.filter(line => line.sex === sex && !('left' in line)).map(line => plain.text(line.band) ?? '')
    .filter(band => !(files.get(`birds/${band}.md`) ?? '').includes('left:'))
}

const record = (front: readonly string[]) => `---\n${front.join('\n')}\n---\n`

/** The year's hatches that hold a tally of at least two under this mark. */
function talliedHatches(files: ReadonlyMap<string, string>, mark: string): string[] {
  return [...recordsOf(files, 'hatches')].filter(([, hatch]) =>
    plain.list(hatch.tallies).map(plain.map).some(tally => tally.mark === mark && Number(tally.chicks) >= 2)).map(([id]) => id)
}

export function untidyBook(seed: number, size: Partial<FlockSize> & {readonly birds: number}): Map<string, string> {
  const files = drawBook(seed, size)
  const chance = chanceOf(seed + 1)
  const own = (band: string, ...front: string[]) => files.set(`birds/${band}.md`, record([`band: ${band}`, ...front]))
  const pick = (year: number, sex: string) => {
    const bands = [...recordsOf(files, 'hatches').keys()].filter(id => id.startsWith(`${year}-`) && !id.endsWith('bought')).flatMap(id => stayed(files, id, sex))
    return chance.oneOf(bands)
  }
  const [f1, bc1, bc2, bc3] = [2013, 2014, 2015, 2016].map(year => ({cock: pick(year, 'male'), hen: pick(year, 'female')}))
  if (f1 === undefined || bc1 === undefined || bc2 === undefined || bc3 === undefined) throw new RangeError('the book is too short')
  const holm = '12-0001'
  const buff = [...recordsOf(files, 'birds')].filter(([, bird]) => bird.strain === 'fell-buff').map(([band]) => band)[0] ?? ''

  own('X-001', 'sex: female', `sire: ${f1.cock}`, `dam: ${f1.hen}`, 'hatched: 2014-05-02', 'comb: pea', 'skin: yellow')
  own('X-002', 'sex: male', `sire: ${buff}`, `dam: ${f1.hen}`, 'hatched: 2014-05', 'comb: pea')
  own('X-003', 'sex: male', `sire: ${bc2.cock}`, `dam: ${bc1.hen}`, 'hatched: 2016-05-02', 'comb: single', 'skin: white')
  own('X-004', 'sex: female', `sire: {${bc1.cock}: 70%, ${bc2.cock}: 30%}`, `dam: ${holm}`, 'hatched: 2016-05-02', 'comb: pea', 'skin: white')
  own('X-005', 'sex: female', `sire: [${bc1.cock}, ${f1.cock}]`, `dam: ${bc1.hen}`, 'hatched: 2015-05-02', 'skin: white')
  own('X-006', 'sex: unknown', `sire: ${bc1.cock}`, 'dam: unknown', 'hatched: 2015-05-02', 'comb: pea')
  own('X-007', 'sex: female', `sire: ${bc3.cock}`, 'dam: X-004', 'hatched: 2017-05-02')
  own('X-008', 'sex: male', 'sire: X-002', 'dam: X-001', 'hatched: 2015-05-03', 'comb: pea')

  for (const [n, hatch] of talliedHatches(files, 'basket 1').slice(0, 3).entries()) {
    const extra = n === 0 ? ['comb: single'] : []
    own(`T-00${n + 1}`, `sex: ${n === 1 ? 'male' : 'female'}`, `out-of: {hatch: ${hatch}, mark: basket 1}`, ...extra)
  }
  addLooseDays(files, chance)
  addSeenLater(files, chance)
  forgetPens(files)
  return files
}

/** A weigh day at 20 weeks on which nobody read the bands, for the hatches of a machine nobody weighed otherwise. */
function addLooseDays(files: Map<string, string>, chance: Chance): void {
  const rows = ['hatch,on,sex,weight']
  for (const [id, hatch] of recordsOf(files, 'hatches')) {
    const on = plain.text(hatch.on)
    if (on === null || id.endsWith('bought') || !chance.happens(0.3)) continue
    const day = new Date(Date.parse(`${on}T00:00:00Z`) + 141 * 86_400_000).toISOString().slice(0, 10)
    for (let n = 0; n < 6; n++) rows.push(`${id},${day},${chance.oneOf(['male', 'female'])},${chance.whole(1800, 2500)}`)
  }
  files.set('measures/nobody-read-the-bands.csv', `${rows.join('\n')}\n`)
}

/** Looks noted in an observation, later than what stands in the chick's line. */
function addSeenLater(files: Map<string, string>, chance: Chance): void {
  for (const [path, text] of files) {
    const on = /^ {2}- \{on: (\d{4}-\d\d-\d\d), temperament/m.exec(text)?.[1]
    if (path.startsWith('birds/') && on !== undefined && chance.happens(0.7)) {
      files.set(path, text.replace(/^( {2}- \{on: .*)\}$/m, `$1, comb: ${chance.oneOf(['pea', 'single'])}}`))
    }
  }
}

/** In a setting of two pens' eggs not every chick's pen is known. */
function forgetPens(files: Map<string, string>): void {
  for (const [path, text] of files) {
    if (path.startsWith('hatches/') && text.includes('\npen: {')) files.set(path, text.replace(/(band: \d\d-\d{4}.*?), pen: [\w-]+/, '$1'))
  }
}
