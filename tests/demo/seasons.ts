/** Six seasons of the Skerry Fowl: who was put with whom, when eggs were set, what went wrong, who stayed and who left. */
import {plusDays} from './calendar.ts'
import {choose} from './choosing.ts'
import {dieYoung, sendAway, tallyFates} from './fates.ts'
import {Flock} from './flock.ts'
import type {StrainGenes} from './genes.ts'

const HOLM: StrainGenes = {P: 'p+', W: 'W+', S: 'S', apart: 'holm'}
const FELL: StrainGenes = {P: 'P', W: 'w', S: 's+', apart: 'fell'}
const GREY: StrainGenes = {P: 'p+', W: 'W+', S: 'S', apart: 'holm', darker: 1.1}

const trio = (ids: readonly string[]) => ids.map(band => ({band}))
/** Eggs shared out by hen: 5, 4, 4 … */
const byHen = (ids: readonly string[], counts: readonly number[]) => Object.fromEntries(ids.map((id, index) => [id, counts[index % counts.length] ?? 1]))

const GOOD = {fertile: 0.92, deadInGerm: 0.06, deadInShell: 0.1}
const FAIR = {fertile: 0.86, deadInGerm: 0.08, deadInShell: 0.13}

/** Another seed, another story: chance did not give what the plan of the seasons needs. */
function need(enough: boolean): void {
  if (!enough) throw new RangeError('this seed tells another story')
}

export interface Choices {
  /** birds kept for breeding, with the season they were kept for */
  readonly kept: ReadonlyMap<string, number>
  /** young birds of the last season about whom nothing is decided yet */
  readonly undecided: ReadonlySet<string>
}

export function drawSeasons(seed: number): {flock: Flock; choices: Choices} {
  const flock = new Flock(seed)
  const kept = new Map<string, number>()
  const keep = (season: number, ids: readonly string[]) => {
    for (const id of ids) if (!kept.has(id)) kept.set(id, season)
    return ids
  }
  const wish = (season: number, from: string[], sex: 'male' | 'female', count: number, more: {anyLook?: boolean; not?: readonly string[]} = {}) =>
    keep(season, choose(flock, {from, sex, count, ...more}))

  for (const id of ['F18-01', 'F18-02', 'F18-03', 'F18-04']) flock.found(id, 'female', 'fell-buff', FELL, '2018-05-01')
  for (const id of ['H19-01', 'H19-02']) flock.found(id, 'male', 'holm-white', HOLM, '2019-04-10')
  for (const id of ['H19-11', 'H19-12', 'H19-13', 'H19-14']) flock.found(id, 'female', 'holm-white', HOLM, '2019-04-10')

  // 2020: Fell Buff hens under a Holm White cock, so that every daughter has the cock's silver
  flock.pen({id: '2020-A', season: 2020, keeper: 'kelpgarth', males: trio(['H19-01']), females: trio(['F18-01', 'F18-02', 'F18-03', 'F18-04']), from: '2020-02-08', to: '2020-06-01', intends: 'F1'})
  flock.hatch({id: '2020-01', from: {'2020-A': 16}, set: '2020-03-01', laid: '2020-02-22..2020-02-29', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: false}, '20', 1)
  flock.hatch({id: '2020-02', from: {'2020-A': 20}, set: '2020-03-29', laid: '2020-03-20..2020-03-28', machine: 'I1', keeper: 'kelpgarth', fertile: 0.9, deadInGerm: 0.1, deadInShell: 0.45, unbanded: 2, damsKnown: false, late: 1}, '20', 1)
  flock.hatch({id: '2020-03', from: {'2020-A': 9}, set: '2020-05-10', laid: '2020-05-01..2020-05-09', broody: 'F18-02', keeper: 'kelpgarth', fertile: 0.95, deadInGerm: 0.05, deadInShell: 0.06, unbanded: 0, damsKnown: false}, '20', 1)
  for (const id of ['H20-02', 'H20-05']) flock.found(id, 'male', 'holm-white', HOLM, '2020-04-04')
  for (const id of ['H20-11', 'H20-12', 'H20-13']) flock.found(id, 'female', 'holm-white', HOLM, '2020-04-04')
  dieYoung(flock, 2020)
  const f1Hens = wish(2021, ['2020-A'], 'female', 5)
  const f1Cock = keep(2021, choose(flock, {from: ['2020-A'], sex: 'male', count: 1, where: bird => bird.genes.P.includes('P')}))
  sendAway(flock, 2020, kept)
  need(f1Hens.length === 5 && f1Cock.length === 1)

  // 2021: both ways about; the crossed cock over Holm White hens brings gold daughters to light
  flock.pen({id: '2021-A', season: 2021, keeper: 'kelpgarth', males: trio(['H20-02']), females: trio(f1Hens), from: '2021-02-06', to: '2021-05-20', intends: 'BC1'})
  flock.pen({id: '2021-B', season: 2021, keeper: 'ternhouse', males: trio(f1Cock), females: [{band: 'H19-11'}, {band: 'H19-12'}, {band: 'H19-13', to: '2021-04-12'}], from: '2021-02-13', to: '2021-05-15', intends: 'BC1'})
  flock.pen({id: '2021-H', season: 2021, keeper: 'ternhouse', males: trio(['H19-02']), females: [{band: 'H19-13', from: '2021-04-13'}, {band: 'H19-14'}], from: '2021-04-03', to: '2021-06-12'})
  flock.hatch({id: '2021-01', from: {'2021-A': byHen(f1Hens, [5, 4, 4, 4, 3])}, set: '2021-02-28', laid: '2021-02-20..2021-02-27', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: true}, '21', 1)
  flock.hatch({id: '2021-02', from: {'2021-B': 18}, set: '2021-03-14', laid: '2021-03-05..2021-03-13', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 2, damsKnown: false}, '21', 101)
  flock.hatch({id: '2021-03', from: {'2021-A': byHen(f1Hens, [4, 4, 4, 3, 3])}, set: '2021-03-28', laid: '2021-03-19..2021-03-27', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 0, damsKnown: true}, '21', 1)
  flock.hatch({id: '2021-04', from: {'2021-B': 16}, set: '2021-04-11', laid: '2021-04-01..2021-04-10', machine: 'I2', keeper: 'ternhouse', ...FAIR, bad: 2, unbanded: 3, damsKnown: false}, '21', 101)
  flock.hatch({id: '2021-05', from: {'2021-H': 12}, set: '2021-05-23', laid: '2021-05-12..2021-05-22', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 0, damsKnown: false}, 'H21', 1)
  dieYoung(flock, 2021)
  const bc1A = wish(2022, ['2021-A'], 'female', 7)
  const bc1B = wish(2022, ['2021-B'], 'female', 3)
  // a brassy cockerel taken for silver
  const brassy = keep(2022, choose(flock, {
    from: ['2021-B'], sex: 'male', count: 1,
    where: bird => bird.looks.ground === 'silver' && bird.genes.S.includes('s+') && bird.genes.P.includes('P') && bird.looks.comb === 'pea',
  }))
  const holm21 = wish(2022, ['2021-05'], 'male', 1, {anyLook: true})
  const holmHens21 = wish(2022, ['2021-05'], 'female', 2, {anyLook: true})
  sendAway(flock, 2021, kept)
  need(brassy.length === 1 && holm21.length === 1 && holmHens21.length >= 1 && bc1A.length >= 5 && bc1A.length + bc1B.length >= 8)

  // 2022: the second backcross, a cock that would not do, and eggs bought in
  const hens22A = bc1A.slice(0, 5)
  const hens22B = [...bc1A.slice(5), ...bc1B]
  flock.pen({id: '2022-A', season: 2022, keeper: 'kelpgarth', males: trio(holm21), females: trio(hens22A), from: '2022-02-12', to: '2022-05-10', intends: 'BC2'})
  flock.pen({id: '2022-B', season: 2022, keeper: 'ternhouse', males: [{band: 'H20-02', to: '2022-03-26'}, {band: 'H20-05', from: '2022-03-27'}], females: trio(hens22B), from: '2022-02-12', to: '2022-05-15', intends: 'BC2'})
  flock.pen({id: '2022-C', season: 2022, keeper: 'kelpgarth', males: trio(brassy), females: trio(['H20-11', 'H20-12', 'H20-13']), from: '2022-02-20', to: '2022-04-30', intends: 'BC2'})
  flock.hatch({id: '2022-01', from: {'2022-A': byHen(hens22A, [5, 5, 4, 4, 4])}, set: '2022-03-06', laid: '2022-02-25..2022-03-05', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 0, damsKnown: true}, '22', 1)
  flock.hatch({id: '2022-02', from: {'2022-B': 22}, set: '2022-03-13', laid: '2022-03-04..2022-03-12', machine: 'I2', keeper: 'ternhouse', fertile: 0.4, deadInGerm: 0.12, deadInShell: 0.14, unbanded: 0, damsKnown: false}, '22', 101)
  flock.hatch({id: '2022-03', from: {'2022-C': byHen(['H20-11', 'H20-12', 'H20-13'], [6, 5, 5])}, set: '2022-03-27', laid: '2022-03-17..2022-03-26', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 3, damsKnown: true}, '22', 1)
  flock.hatch({id: '2022-04', from: {'2022-B': 22}, set: '2022-04-10', laid: '2022-03-29..2022-04-09', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 4, damsKnown: false}, '22', 101)
  flock.hatch({id: '2022-05', from: {'2022-A': byHen(hens22A, [4, 4, 4, 4, 3])}, set: '2022-04-17', laid: '2022-04-08..2022-04-16', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: true}, '22', 1)
  flock.hatch({id: '2022-06', from: {bought: 20}, set: '2022-05-01', laid: '2022-04-20..2022-04-27', machine: 'I1', keeper: 'kelpgarth', fertile: 0.85, deadInGerm: 0.16, deadInShell: 0.2, bad: 2, unbanded: 0, damsKnown: false, strain: 'holm-white', flock: {name: 'east-shore', kinship: '25%'}}, 'H22', 1, HOLM)
  flock.found('G21-01', 'male', 'sound-grey', GREY, '2021-05-01')
  flock.found('H23-02', 'male', 'holm-white', HOLM, '2023-04-20')
  dieYoung(flock, 2022)
  const bc2A = wish(2023, ['2022-A'], 'female', 8)
  const bc2B = wish(2023, ['2022-B', '2022-C'], 'female', 7)
  const holm22 = wish(2023, ['2022-06'], 'male', 3, {anyLook: true})
  const holmHens22 = wish(2023, ['2022-06'], 'female', 3, {anyLook: true})
  sendAway(flock, 2022, kept)
  need(holm22.length === 3 && holmHens22.length >= 2 && bc2A.length >= 6 && bc2B.length >= 4)

  // 2023: the third backcross; two cocks run together; the thermostat; a side pen with Sound Grey
  const hens23A = bc2A.slice(0, 5)
  const hens23B = bc2B.slice(0, 6)
  const hens23G = bc2A.slice(5, 7)
  const [h1 = '', h2 = '', h3 = ''] = holm22
  flock.pen({id: '2023-A', season: 2023, keeper: 'kelpgarth', males: trio([h1]), females: trio(hens23A), from: '2023-02-11', to: '2023-05-20', intends: 'BC3'})
  flock.pen({id: '2023-B', season: 2023, keeper: 'ternhouse', males: [{band: h2, chance: '60%'}, {band: h3, chance: '40%'}], females: trio(hens23B), from: '2023-02-18', to: '2023-05-20', intends: 'BC3'})
  flock.pen({id: '2023-G', season: 2023, keeper: 'kelpgarth', males: trio(['G21-01']), females: trio(hens23G), from: '2023-04-01', to: '2023-05-20', intends: 'SG1'})
  flock.hatch({id: '2023-01', from: {'2023-A': byHen(hens23A, [5, 5, 5, 5, 4])}, set: '2023-03-05', laid: '2023-02-24..2023-03-04', machine: 'I1', keeper: 'kelpgarth', ...GOOD, unbanded: 0, damsKnown: true}, '23', 1)
  flock.hatch({id: '2023-02', from: {'2023-B': 21}, set: '2023-03-19', laid: '2023-03-09..2023-03-18', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 3, damsKnown: false}, '23', 101)
  flock.hatch({id: '2023-03', from: {'2023-A': byHen(hens23A, [5, 5, 5, 5, 4])}, set: '2023-04-02', laid: '2023-03-24..2023-04-01', machine: 'I1', keeper: 'kelpgarth', fertile: 0.92, deadInGerm: 0.35, deadInShell: 0.8, unbanded: 0, damsKnown: true, late: 1}, '23', 1)
  flock.hatch({id: '2023-04', from: {'2023-B': 22}, set: '2023-04-16', laid: '2023-04-06..2023-04-15', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 5, damsKnown: false}, '23', 101)
  flock.hatch({id: '2023-05', from: {'2023-A': byHen(hens23A, [4, 4, 4, 4, 3])}, set: '2023-04-30', laid: '2023-04-20..2023-04-29', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 3, damsKnown: true}, '23', 1)
  flock.hatch({id: '2023-06', from: {'2023-G': 11}, set: '2023-05-07', laid: '2023-04-20..2023-05-06', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: false}, '23', 1)
  dieYoung(flock, 2023)
  const cocks23A = wish(2024, ['2023-A'], 'male', 3)
  const cocks23B = wish(2024, ['2023-B'], 'male', 2)
  const hens23a = wish(2024, ['2023-A'], 'female', 8)
  const hens23b = wish(2024, ['2023-B'], 'female', 8)
  keep(2024, choose(flock, {from: ['2023-G'], sex: 'female', count: 1, where: () => true}))
  sendAway(flock, 2023, kept)
  need(cocks23A.length >= 1 && cocks23B.length >= 1 && cocks23A.length + cocks23B.length >= 4 && hens23a.length >= 5 && hens23b.length >= 5 && hens23a.length + hens23b.length >= 13)

  // 2024: the first mating inter se, in three places
  const cocks24C = [...cocks23A.slice(1), ...cocks23B.slice(1)]
  const hens24A = hens23a.slice(0, 5)
  const hens24B = hens23b.slice(0, 5)
  const hens24C = [...hens23a.slice(5), ...hens23b.slice(5)]
  flock.pen({id: '2024-A', season: 2024, keeper: 'kelpgarth', males: trio(cocks23B.slice(0, 1)), females: trio(hens24A), from: '2024-02-10', to: '2024-06-01', intends: 'BC3F2'})
  flock.pen({id: '2024-B', season: 2024, keeper: 'ternhouse', males: trio(cocks23A.slice(0, 1)), females: trio(hens24B), from: '2024-02-10', to: '2024-05-11', intends: 'BC3F2'})
  flock.pen({id: '2024-C', season: 2024, keeper: 'wadderness', males: [{band: cocks24C[0] ?? '', to: '2024-03-30'}, {band: cocks24C[1] ?? '', from: '2024-03-31'}], females: trio(hens24C), from: '2024-02-17', to: '2024-05-11', intends: 'BC3F2'})
  flock.hatch({id: '2024-01', from: {'2024-A': byHen(hens24A, [6, 5, 5, 5, 4])}, set: '2024-03-03', laid: '2024-02-23..2024-03-02', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: true}, '24', 1)
  flock.hatch({id: '2024-02', from: {'2024-C': 22}, set: '2024-03-10', laid: '2024-03-01..2024-03-09', machine: 'I4', keeper: 'wadderness', ...FAIR, unbanded: 3, damsKnown: false}, '24', 201)
  flock.hatch({id: '2024-03', from: {'2024-A': byHen(hens24A, [3, 2, 2, 2, 1]), '2024-B': byHen(hens24B, [4, 3, 3, 3, 2])}, set: '2024-03-24', laid: '2024-03-15..2024-03-23', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 5, damsKnown: true}, '24', 1)
  flock.hatch({id: '2024-04', from: {'2024-B': byHen(hens24B, [4, 4, 3, 3, 3]), '2024-C': 6}, set: '2024-04-21', laid: '2024-04-11..2024-04-20', machine: 'I2', keeper: 'ternhouse', ...FAIR, unbanded: 3, damsKnown: true}, '24', 101)
  const broody24 = hens24A[2] ?? ''
  flock.hatch({id: '2024-05', from: {'2024-A': 8}, set: '2024-05-12', laid: '2024-05-02..2024-05-11', broody: broody24, keeper: 'kelpgarth', ...GOOD, unbanded: 0, damsKnown: false}, '24', 1)
  dieYoung(flock, 2024)
  const neat = (from: string[], count: number) => choose(flock, {from, sex: 'male', count})
  const candidates = [...neat(['2024-A'], 2), ...neat(['2024-C'], 2), ...neat(['2024-B'], 2)]
  need(candidates.length === 6)
  const tested = [candidates[0] ?? '', candidates[2] ?? '', candidates[1] ?? '']
  keep(2025, tested)
  const testHens = [...holmHens22, ...holmHens21].slice(0, 5)
  const basketHens = [testHens.slice(0, 2), testHens.slice(2, 4), testHens.slice(4)]
  need(basketHens.every(hens => hens.length > 0))
  tested.forEach((cockerel, index) => flock.pen({
    id: `2024-T${index + 1}`, season: 2024, keeper: 'kelpgarth', males: trio([cockerel]), females: trio(basketHens[index] ?? []), from: '2024-11-16', to: '2024-12-14',
  }))
  flock.hatch({id: '2024-06', from: {'2024-T1': 11, '2024-T2': 11, '2024-T3': 9}, set: '2024-12-15', laid: '2024-11-30..2024-12-14', machine: 'I3', keeper: 'kelpgarth', fertile: 0.88, deadInGerm: 0.06, deadInShell: 0.1, unbanded: 40, damsKnown: false}, '24', 301)
  const singles = (pen: string) => (flock.hatches.get('2024-06')?.tallied ?? []).filter(chick => chick.pen === pen && chick.looks.comb === 'single').length
  const proved = tested.filter((_, index) => singles(`2024-T${index + 1}`) === 0)
  tallyFates(flock, '2024-06')
  const [clean = '', other = ''] = proved
  need(proved.length === 2)
  const hens24a = wish(2025, ['2024-A'], 'female', 7)
  const hens24b = wish(2025, ['2024-B'], 'female', 6)
  const hens24c = wish(2025, ['2024-C'], 'female', 6)
  const untested = keep(2025, candidates.slice(4, 5))
  keep(2025, proved)
  sendAway(flock, 2024, kept)

  // 2025: hens tried on a single-combed cock, then the second mating inter se
  const tried = [...hens24a.slice(0, 4), ...hens24c.slice(0, 2)]
  flock.pen({id: '2025-T', season: 2025, keeper: 'kelpgarth', males: trio(['H23-02']), females: trio(tried), from: '2024-11-09', to: '2024-12-07'})
  flock.hatch({id: '2025-01', from: {'2025-T': byHen(tried, [7, 7, 6, 6, 6, 5])}, set: '2024-12-08', laid: '2024-11-23..2024-12-07', machine: 'I3', keeper: 'kelpgarth', fertile: 0.86, deadInGerm: 0.07, deadInShell: 0.1, unbanded: 60, damsKnown: true}, '25', 301)
  const failed = new Set((flock.hatches.get('2025-01')?.tallied ?? []).filter(chick => chick.looks.comb === 'single').map(chick => chick.dam ?? ''))
  tallyFates(flock, '2025-01')
  const passed = tried.filter(hen => !failed.has(hen))
  need(passed.length >= 3 && failed.size > 0 && hens24b.length >= 4 && hens24c.length >= 4)
  const hens25A = [...passed.filter(hen => hens24a.includes(hen) || hens24c.includes(hen)), ...hens24b.slice(0, 1)]
  const hens25B = [...hens24b.slice(1, 4), ...hens24a.slice(4, 6)]
  const hens25C = [...hens24c.slice(2), ...hens24b.slice(4)]
  flock.pen({id: '2025-A', season: 2025, keeper: 'kelpgarth', males: trio([clean]), females: trio(hens25A).map(stay => ({...stay, from: '2025-02-22'})), from: '2025-02-22', to: '2025-05-17', intends: 'BC3F3'})
  flock.pen({id: '2025-B', season: 2025, keeper: 'ternhouse', males: trio(untested), females: trio(hens25B), from: '2025-02-15', to: '2025-05-17', intends: 'BC3F3'})
  flock.pen({id: '2025-C', season: 2025, keeper: 'wadderness', males: trio([other]), females: trio(hens25C), from: '2025-02-15', to: '2025-05-10', intends: 'BC3F3'})
  flock.hatch({id: '2025-02', from: {'2025-B': byHen(hens25B, [5, 4, 4, 4, 4])}, set: '2025-03-09', laid: '2025-02-28..2025-03-08', machine: 'I2', keeper: 'ternhouse', ...GOOD, unbanded: 2, damsKnown: true}, '25', 101)
  flock.hatch({id: '2025-03', from: {'2025-A': byHen(hens25A, [6, 5, 5, 5, 4])}, set: '2025-03-23', laid: '2025-03-14..2025-03-22', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 0, damsKnown: true}, '25', 1)
  flock.hatch({id: '2025-04', from: {'2025-C': 20}, set: '2025-04-06', laid: '2025-03-20..2025-04-05', machine: 'I4', keeper: 'wadderness', ...FAIR, unbanded: 4, damsKnown: false}, '25', 201)
  flock.hatch({id: '2025-05', from: {'2025-A': byHen(hens25A, [5, 4, 4, 4, 4])}, set: '2025-04-20', laid: '2025-04-11..2025-04-19', machine: 'I3', keeper: 'kelpgarth', ...GOOD, unbanded: 2, damsKnown: true}, '25', 1)
  dieYoung(flock, 2025)
  const undecided = new Set<string>()
  for (const pen of ['2025-A', '2025-B', '2025-C']) {
    const males = wish(2026, [pen], 'male', pen === '2025-A' ? 3 : 2)
    const females = wish(2026, [pen], 'female', pen === '2025-A' ? 9 : 7)
    for (const band of [...males.slice(pen === '2025-A' ? 2 : 1), ...females.slice(pen === '2025-A' ? 5 : 3)]) undecided.add(band)
  }
  sendAway(flock, 2025, kept)
  return {flock, choices: {kept, undecided}}
}

/** The day a pen's birds came to its keeper, before it was put together. */
export const cameToPen = (from: string) => plusDays(from, -24)
