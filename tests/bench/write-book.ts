/** A drawn flock as the Markdown and CSV files a keeper would have. */
import {isoDay} from '../../src/records/dates.ts'
import type {Chance} from './chance.ts'
import type {DrawnBird, DrawnFlock, DrawnHatch, DrawnPen} from './draw-flock.ts'
import {stepOfSeason} from './draw-flock.ts'

const KEEPERS = [
  {id: 'kelpgarth', name: 'The keeper at Kelpgarth', consent: 'yes', signs: 'inga'},
  {id: 'ternhouse', name: 'The keeper at Ternhouse', consent: 'yes', signs: 'tern'},
  {id: 'wadderness', name: 'The keeper at Wadderness', consent: 'no', signs: 'wadd'},
] as const

const TRAITS: Readonly<Record<string, string>> = {
  comb: `name: Comb
states: [pea, single]
target: pea
required: true
scored-from: 6 weeks
loci:
  P: {on: autosome, alleles: [P, p+]}
shows:
  - {P: P/_, is: pea}
  - {P: p+/_, is: single}
misscoring: 1%`,
  skin: `name: Skin
states: [white, yellow]
target: white
required: true
scored-from: 4 weeks
loci:
  W: {on: autosome, alleles: [W+, w]}
shows:
  - {W: W+/_, is: white}
  - {W: w/w, is: yellow}`,
  ground: `name: Ground colour
states: [silver, gold]
target: silver
loci:
  S: {on: Z, alleles: [S, s+]}
shows:
  - {S: S/_, is: silver}
  - {S: s+/_, is: gold}`,
  spur: `name: Spur
states: [short, long]
target: short
required: true
seen-in: male
scored-from: 20 weeks`,
  shell: `name: Egg shell
order: [white, tinted, brown]
target: [white, tinted]
seen-in: female from first egg`,
  type: `name: Type
scale: 1 to 10
target: at least 7
scored-from: 20 weeks`,
  'weight-20': `name: Weight at 20 weeks
measure: weight
unit: g
at: 20 weeks
window: 10 days
target: {male: 2.4 kg, female: 1.9 kg}
tolerance: 10%
required: true`,
}

const page = (front: readonly string[], body = '') => `---\n${front.join('\n')}\n---\n${body === '' ? '' : `\n${body}\n`}`
const combOf = (bird: DrawnBird) => (bird.genes.P.includes('P') ? 'pea' : 'single')
const skinOf = (bird: DrawnBird) => (bird.genes.W.includes('W+') ? 'white' : 'yellow')
const groundOf = (bird: DrawnBird) => (bird.genes.S.includes('S') ? 'silver' : 'gold')
const alive = (bird: DrawnBird, day: number) => bird.left === null || bird.left.on > day

/** Every file of the folder, by its path. */
export function writeBook(chance: Chance, flock: DrawnFlock): Map<string, string> {
  const files = new Map<string, string>()
  const lastYear = flock.begun + flock.seasons - 1
  const ladder = Array.from({length: flock.seasons}, (_, season) => stepOfSeason(season))
  files.set('project.md', page([
    'name: Skerry Fowl', 'species: chicken', 'aim: A small-combed, white-skinned fowl that stands wind and wet.', `begun: ${flock.begun}-02`,
    `as-of: ${lastYear}-12-31`, 'strains: {recurrent: holm-white, donors: [fell-buff]}', `ladder: [${ladder.join(', ')}]`, 'units: metric',
    'limits: {mating-inbreeding: 12.5%, inbreeding-per-generation: 1%}',
  ]))
  files.set('strains/holm-white.md', page(['name: Holm White', 'role: recurrent', 'true-for: {comb: single, skin: white, ground: silver}', 'kinship: 2%']))
  files.set('strains/fell-buff.md', page(['name: Fell Buff', 'role: donor', 'true-for: {comb: pea, skin: yellow, ground: gold}', 'inbreeding: 5%', 'kinship: 4%']))
  for (const [id, front] of Object.entries(TRAITS)) files.set(`traits/${id}.md`, page([front]))
  for (const keeper of KEEPERS) {
    files.set(`keepers/${keeper.id}.md`, page([`name: ${keeper.name}`, `consent: ${keeper.consent}`, `signs-as: [${keeper.signs}]`, `since: ${flock.begun}`]))
  }
  for (const founder of flock.founders) files.set(`birds/${founder.band}.md`, founderFile(chance, founder))
  for (const pen of flock.pens) files.set(`pens/${pen.id}.md`, penFile(pen))
  for (const hatch of flock.hatches) writeHatch(chance, files, hatch)
  for (let season = 0; season < flock.seasons; season++) {
    const year = flock.begun + season
    const hatches = flock.hatches.filter(hatch => hatch.id.startsWith(`${year}-`) && !hatch.bought)
    writeDays(chance, files, year, hatches)
    files.set(`measures/eggs-${year}.csv`, eggTable(chance, flock.pens.filter(pen => pen.season === year)))
    writeYear(chance, files, year, season, hatches)
  }
  files.set('requirements.md', page(['requirements:', ...REQUIREMENTS.map(asked => `  - {${asked}}`)]))
  return files
}

/** One of every kind that reckons with many birds. */
const REQUIREMENTS = [
  'kind: years-bred, title: Years bred, asked: Five, at-least: 5', 'kind: inter-se-generations, title: Generations, asked: Three, at-least: 3', 'kind: breeders-alive, title: Stock, asked: Four and sixteen, males: 4, females: 16',
  'kind: true-to-type, title: True to type, asked: Half, at-least: 50%, judged-on: cautious', 'kind: fixed, title: Fixed, asked: Every breeder', 'kind: even-weight, title: Even weights, asked: A tenth, trait: weight-20, at-most: 10%',
  'kind: inbreeding, title: Inbreeding, asked: A tenth, at-most: 10%', 'kind: welfare, title: Welfare, asked: Nine in ten, at-least: 90%, to-age: 8 weeks', 'kind: identity, title: Identity, asked: Nearly all, at-least: 95%',
]

function founderFile(chance: Chance, bird: DrawnBird): string {
  const note = chance.happens(0.3) ? `A ${chance.oneOf(['quiet', 'lively', 'watchful'])} bird with a ${chance.oneOf(['broad', 'long', 'level'])} back.` : ''
  return page([
    `band: ${bird.band}`, `sex: ${bird.sex}`, `strain: ${bird.strain ?? ''}`, `hatched: ${isoDay(bird.hatched)}`, 'keeper: kelpgarth',
    `comb: ${combOf(bird)}`, `skin: ${skinOf(bird)}`, `ground: ${groundOf(bird)}`,
    ...(bird.strain === 'holm-white' ? ['flock: {name: holm-1, kinship: 2%}'] : []),
  ], note)
}

function penFile(pen: DrawnPen): string {
  const stay = ({bird, from, to}: DrawnPen['males'][number]) =>
    from === null && to === null
      ? bird.band
      : `{band: ${bird.band}${from === null ? '' : `, from: ${isoDay(from)}`}${to === null ? '' : `, to: ${isoDay(to)}`}}`
  const males = pen.shares === null
    ? `[${pen.males.map(stay).join(', ')}]`
    : `{${pen.males.map(({bird}, n) => `${bird.band}: ${pen.shares?.[n] ?? 0}%`).join(', ')}}`
  return page([
    `season: ${pen.season}`, `males: ${males}`, `females: [${pen.females.map(bird => bird.band).join(', ')}]`, `from: ${isoDay(pen.from)}`,
    `to: ${isoDay(pen.to)}`, `keeper: ${pen.keeper}`, `intends: ${pen.gives}`,
  ])
}

function writeHatch(chance: Chance, files: Map<string, string>, hatch: DrawnHatch): void {
  const [first] = hatch.pens
  const source = hatch.bought
    ? ['strain: holm-white', 'flock: {name: breeder-7, kinship: 25%}']
    : [hatch.pens.length === 1 ? `pen: ${first?.pen.id ?? ''}` : `pen: {${hatch.pens.map(({pen, eggs}) => `${pen.id}: ${eggs} eggs`).join(', ')}}`]
  const lines = hatch.banded.map(bird => chickLine(chance, files, hatch, bird))
  const fates = new Map<string, number>()
  for (const bird of hatch.unbanded) {
    const scored = chance.happens(0.8)
    const looks = scored ? `comb: ${combOf(bird)}, skin: ${skinOf(bird)}, left: ${isoDay(hatch.on + 50)} sold` : `left: ${isoDay(hatch.on + 6)} died`
    fates.set(looks, (fates.get(looks) ?? 0) + 1)
  }
  const tallies = [...fates].map(([looks, chicks], n) => `  - {chicks: ${chicks}, mark: basket ${n + 1}, ${looks}}`)
  files.set(`hatches/${hatch.id}.md`, page([
    ...source, `set: ${isoDay(hatch.set)}`, ...(hatch.bought ? [] : [`laid: ${isoDay(hatch.laid[0])}..${isoDay(hatch.laid[1])}`]), `eggs: ${hatch.eggs}`,
    ...(hatch.clear === null ? [] : [`clear: ${hatch.clear}`]), `dead-in-germ: ${hatch.deadInGerm}`, `dead-in-shell: ${hatch.deadInShell}`,
    ...(hatch.bad > 0 ? [`bad: ${hatch.bad}`] : []), `hatched: ${hatch.banded.length + hatch.unbanded.length + hatch.unlisted}`, `on: ${isoDay(hatch.on)}`,
    `machine: ${hatch.machine}`, 'chicks:', ...lines, ...(tallies.length > 0 ? ['tallies:', ...tallies] : []),
  ]))
}

/** The chick's line, and for one in twenty a file of its own beside it. */
function chickLine(chance: Chance, files: Map<string, string>, hatch: DrawnHatch, bird: DrawnBird): string {
  const parts = [`band: ${bird.band}`]
  if (!bird.unsexed) parts.push(chance.happens(0.02) ? `sex: [{is: unknown, on: ${isoDay(hatch.on + 20)}}, {is: ${bird.sex}, on: ${isoDay(hatch.on + 60)}}]` : `sex: ${bird.sex}`)
  const pen = hatch.penOf.get(bird)
  if (hatch.pens.length > 1 && pen !== undefined) parts.push(`pen: ${pen.id}`)
  if (hatch.damsKnown && bird.dam !== null) parts.push(`dam: ${bird.dam.band}`)
  if (alive(bird, hatch.on + 42)) {
    if (chance.happens(0.95)) parts.push(`comb: ${chance.happens(0.99) ? combOf(bird) : combOf(bird) === 'pea' ? 'single' : 'pea'}`)
    if (chance.happens(0.9)) parts.push(`skin: ${skinOf(bird)}`)
    if (chance.happens(0.85)) parts.push(`ground: ${groundOf(bird)}`)
    if (bird.sex === 'male' && !bird.unsexed && alive(bird, hatch.on + 150) && chance.happens(0.7)) parts.push(`spur: ${chance.happens(0.8) ? 'short' : 'long'}`)
  }
  const own: string[] = []
  const kept = bird.kept !== null && alive(bird, bird.kept) ? `kept: ${isoDay(bird.kept)} for breeding` : null
  const left = bird.left === null ? null : `left: ${isoDay(bird.left.on)} ${bird.left.how}`
  const laid = bird.firstEgg === null ? null : `first-egg: ${isoDay(bird.firstEgg)}`
  const told = [kept, laid, left].filter(line => line !== null)
  if (!hatch.bought && chance.happens(0.05)) {
    own.push(...told)
    if (alive(bird, hatch.on + 180)) {
      own.push('observations:', `  - {on: ${isoDay(hatch.on + 170)}, temperament: ${chance.oneOf(['calm', 'shy', 'bold'])}, vigour: ${chance.whole(2, 5)} of 5}`)
    }
    files.set(`birds/${bird.band}.md`, page([`band: ${bird.band}`, ...own], 'Seen in the yard *most* days, and first at the trough.'))
  } else parts.push(...told)
  return `  - {${parts.join(', ')}}`
}

/** Weigh days and scoring days of a season's chicks. */
function writeDays(chance: Chance, files: Map<string, string>, year: number, hatches: readonly DrawnHatch[]): void {
  const weights = ['band,on,weight']
  const loose = ['hatch,on,sex,weight']
  const scores = ['band,on,by,comb,skin,type,shell,struck']
  for (const hatch of hatches) {
    const weighed = hatch.on + 140 + chance.whole(-3, 3)
    for (const bird of hatch.banded) {
      const grams = (age: number) => Math.round((bird.sex === 'male' ? 2400 : 1900) * (age / 140) ** 0.8 * (1 + 0.07 * chance.normal()))
      if (alive(bird, weighed) && chance.happens(0.95)) weights.push(`${bird.band},${isoDay(weighed)},${grams(140)}`)
      if (alive(bird, hatch.on + 145) && chance.happens(0.05)) weights.push(`${bird.band},${isoDay(hatch.on + 145)},${(grams(145) / 1000).toFixed(2)} kg`)
      if (alive(bird, hatch.on + 84) && chance.happens(0.2)) weights.push(`${bird.band},${isoDay(hatch.on + 84)},${grams(84)}`)
      if (alive(bird, hatch.on + 55) && chance.happens(0.25)) scores.push(`${bird.band},${isoDay(hatch.on + 55)},${chance.oneOf(KEEPERS).signs},${combOf(bird)},${chance.happens(0.5) ? skinOf(bird) : ''},,,`)
      if (alive(bird, hatch.on + 30) && chance.happens(0.04)) scores.push(`${bird.band},${isoDay(hatch.on + 30)},inga,single,,,,too early`)
      if (alive(bird, hatch.on + 58) && chance.happens(0.03)) scores.push(`${bird.band},${isoDay(hatch.on + 58)},inga,single,,,,bad light`)
      if (alive(bird, hatch.on + 160) && chance.happens(0.3)) scores.push(`${bird.band},${isoDay(hatch.on + 160)},tern,,,${chance.whole(4, 10)},,`)
      if (bird.firstEgg !== null && alive(bird, hatch.on + 220) && chance.happens(0.5)) scores.push(`${bird.band},${isoDay(hatch.on + 215)},wadd,,,,${chance.oneOf(['white', 'tinted', 'brown'])},`)
    }
    if (chance.happens(0.3)) for (const sex of ['male', 'female']) loose.push(`${hatch.id},${isoDay(hatch.on + 28)},${sex},${chance.whole(280, 360)}`)
  }
  files.set(`measures/weights-${year}.csv`, `${weights.join('\n')}\n`)
  if (loose.length > 1) files.set(`measures/loose-${year}.csv`, `${loose.join('\n')}\n`)
  files.set(`scores/${year}.csv`, `${scores.join('\n')}\n`)
}

function eggTable(chance: Chance, pens: readonly DrawnPen[]): string {
  const rows = pens.flatMap(pen => Array.from({length: 8}, (_, week) => {
    const hens = pen.females.length
    return `${pen.id},${isoDay(pen.from + 3 + week * 7)},${chance.whole(Math.floor(hens / 2), hens)},${hens}`
  }))
  return `${['pen,on,eggs,hens', ...rows].join('\n')}\n`
}

/** What is written once a year: a show, a diary entry, care, and now and then a draft of the standard. */
function writeYear(chance: Chance, files: Map<string, string>, year: number, season: number, hatches: readonly DrawnHatch[]): void {
  const shown = `${year}-11-08`
  const old = hatches.flatMap(hatch => hatch.banded.filter(bird => bird.left === null && !bird.unsexed))
  const entries = chance.some(old, 6).map((bird, n) =>
    `  - {bird: ${bird.band}, class: ${bird.sex === 'male' ? 'cockerel' : 'pullet'}, judge: j${(n % 2) + 1}, result: ${n + 1} of 7, remark: ${chance.oneOf(['Good head.', 'A little narrow.', 'Fine leg.'])}}`)
  if (entries.length > 0) {
    files.set(`shows/${shown}-kelpgarth.md`, page([
      'name: Autumn show', `on: ${shown}`, 'judges: {j1: {name: A judge from Ternhouse, consent: yes}, j2: {name: A judge from Wadderness, consent: no}}', 'entries:', ...entries,
    ], 'A cold hall and a fair crowd.'))
  }
  files.set(`diary/${year}-06-01-the-hatch.md`, page([`on: ${year}-06-01`, `title: The hatches of ${year}`], [
    `We set ${hatches.length} lots this spring, all of them for ${stepOfSeason(season)}.`, '## What we saw',
    'The combs were **easier** to tell at six weeks than at four[^1].', '[^1]: In hand, from above.',
  ].join('\n\n')))
  files.set(`care/${year}-01-15-feed.md`, page(['care: feed', `on: ${year}-01-15`, 'with: layer meal', ...(hatches.length > 0 ? [`pens: [${year}-A]`] : [])]))
  if (season % 3 === 0) {
    const n = season / 3 + 1
    files.set(`standard/${n}.md`, page([
      `draft: ${n}`, `on: ${year}-12-01`, 'classification: Heavy, soft feather', 'weights: {cock: 3.2 kg, hen: 2.5 kg}', 'scale: {Type and carriage: 60, Colour: 40}',
      'clauses:', '  general-characteristics-male/comb: {trait: comb, mandatory: yes, if-missed: disqualifying}', '  colour/in-both-sexes: {trait: skin, mandatory: yes}', '  colour/ground: {trait: ground}',
    ], [
      '## General characteristics, male', `**Tail.** Of medium length, carried ${n > 1 ? 'well up' : 'up'}.`, '**Comb.** Pea, of three ridges.', '## General characteristics, female', 'As the male.',
      '## Colour', '**In both sexes.** Skin white.', '**Ground.** Silver.', '## Faults', '**Disqualifications.** Any comb but pea.',
    ].join('\n\n')))
  }
}
