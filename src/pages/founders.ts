/** Founders: what is left of each among the birds bred from, on how many the breed really stands, whose line is ending, and how often the donor's gene is still there. */
import {hasRows} from '../charts/chart-spec.ts'
import {founderShares} from '../charts/founder-shares.ts'
import type {DonorGene} from '../findings/donor-gene.ts'
import type {Founders, FounderShare} from '../findings/founders.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import type {Stat} from './hatch.ts'
import {birdPath, FOUNDERS, MALES, strainPath, traitPath} from './links.ts'
import {counted, figured, listWords, percent, percentSign, rounded, saying, sentence} from './numbers.ts'
import type {Cell, Figure, Page, Table} from './page.ts'
import {birdWord} from './sex-words.ts'

export interface FoundersView {
  readonly lead: string
  /** why nothing more can be said yet; else empty */
  readonly wanting: string
  readonly figure: Figure | null
  readonly shareWords: readonly string[]
  readonly gone: {readonly words: string; readonly birds: readonly {readonly text: string; readonly link: string}[]} | null
  readonly stats: readonly Stat[]
  readonly statWords: readonly string[]
  readonly strains: Table | null
  readonly assumed: {readonly words: string; readonly table: Table} | null
  readonly genes: readonly {readonly trait: string; readonly link: string; readonly words: readonly string[]}[]
  readonly geneWords: string
  readonly ending: readonly {readonly band: string; readonly link: string; readonly words: string}[]
  readonly oneSex: string
  readonly endingWords: string
  readonly males: string
}

/** Bars drawn at most; the table has every founder. */
const BARS = 24

const bandCell = (bird: Bird): Cell => ({text: bird.band, link: birdPath(bird)})

/** `the 26 birds of the new breed that are bred from` */
function groupWords({of, birds}: Founders): string {
  const many = birds.length !== 1
  return of === 'breeders' ? `the ${figured(birds.length, 'bird')} of the new breed that ${many ? 'are' : 'is'} bred from`
    : `the ${figured(birds.length, 'living bird')} of the new breed, none of which is put to breed yet`
}

function shareFigure({founders: list, unknown, birds}: Founders, {book}: Findings): Figure | null {
  const left = list.filter(({share}) => share > 0)
  const names = [...(book.project.recurrent ? [book.project.recurrent] : []), ...book.strains.filter(strain => strain !== book.project.recurrent)]
    .filter(strain => left.some(each => each.strain === strain)).map(({name}) => name)
  const rows = left.slice(0, BARS).map(({bird, strain, share}) => ({label: bird.band, strain: strain?.name ?? null, share, words: percentSign(share)}))
  if (!hasRows(rows)) return null
  const more = left.length - rows.length
  return {
    kind: 'figure', id: 'shares', name: 'founder-shares', head: 'Figure 1.', title: 'What is left of each founder',
    caption: `Expected share of each founder’s genes in the ${figured(birds.length, 'bird')}, of all genes but those on the Z.${more > 0 ? ` ${sentence(counted(more, 'more founder'))} with less ${more === 1 ? 'stands' : 'stand'} in the table.` : ''}`,
    description: `${listWords(rows.slice(0, 5).map(({label, words}) => `${label} ${words}`))}${rows.length > 5 ? ', and so on' : ''}.`,
    spec: founderShares(rows, names),
    table: {
      columns: [{head: 'Founder'}, {head: 'Strain'}, {head: 'Share, %', number: true}, {head: 'Living males', number: true}, {head: 'Living females', number: true}],
      rows: [
        ...left.map(({bird, strain, share, cocks, hens, unsexed}): readonly Cell[] => [bandCell(bird), strain?.name ?? 'not known', `${isNearlyLost({share, cocks, hens, unsexed}) ? '† ' : ''}${percent(share)}`, String(cocks), String(hens)]),
        ...(unknown.count > 0 ? [[`${figured(unknown.count, 'parent')} not in the book`, '', percent(unknown.share), '', '']] : []),
      ],
    },
  }
}

/** Under 2% of the genes, or not two living descendants; the mark is ours. */
const isNearlyLost = ({share, cocks, hens, unsexed}: Pick<FounderShare, 'share' | 'cocks' | 'hens' | 'unsexed'>): boolean => share > 0 && (share < 0.02 || cocks + hens + unsexed < 2)

function shareWords({founders: list, unknown}: Founders): readonly string[] {
  const [first] = list, left = list.filter(({share}) => share > 0)
  if (!first || left.length === 0) return []
  const half = left.findIndex((_, index) => left.slice(0, index + 1).reduce((sum, {share}) => sum + share, 0) >= 0.5 - 1e-12) + 1
  const nearly = left.filter(isNearlyLost)
  const most = left.filter(({share}) => percent(share) === percent(first.share)).map(({bird}) => bird.band)
  return [
    `${most.length > 3 ? `${sentence(counted(most.length, 'founder'))} have left most, alike` : `${listWords(most)} ${most.length === 1 ? 'has' : 'have each'} left most`}: ${percentSign(first.share)}.${half > 0 ? ` Half of all genes come from ${counted(half, 'founder')}.` : ''} A founder’s share says what to expect; which of its genes came through is chance.`,
    ...(nearly.length > 0 ? [`† Nearly lost, with under 2% of the genes or not two living descendants: ${listWords(nearly.map(({bird}) => bird.band))}.`] : []),
    ...(unknown.count > 0 ? [`${sentence(counted(unknown.count, 'parent'))} outside the book ${unknown.count === 1 ? 'gave' : 'gave together'} ${percentSign(unknown.share)}, each counted as a founder of its own, which is the most there can have been.`] : []),
    'The last two columns count living birds of the new breed that descend, or may descend, from it.',
  ]
}

function gone({founders: list}: Founders): FoundersView['gone'] {
  const lost = list.filter(({share}) => share === 0), none = lost.filter(({cocks, hens, unsexed}) => cocks + hens + unsexed === 0)
  if (lost.length === 0) return null
  const kept = lost.length - none.length
  return {
    words: `Nothing is left of ${counted(lost.length, 'founder')} among these birds.${kept > 0 ? ` ${sentence(counted(kept, 'of them has', 'of them have'))} living descendants that are not bred from, so ${kept === 1 ? 'it' : 'they'} could come back.` : ` No living bird of the new breed descends from ${lost.length === 1 ? 'it' : 'them'}.`}`,
    birds: lost.map(({bird}) => ({text: bird.band, link: birdPath(bird)})),
  }
}

function stats({founders: list, effectiveFounders, effectiveAncestors: {low, high}, founderGenomes, meanKinship}: Founders): readonly Stat[] {
  const left = list.filter(({share}) => share > 0).length
  const stat = (title: string, value: string, unit: string, words: string): Stat => ({title, value, unit, candle: null, words})
  const fa = rounded(low, 1) === rounded(high, 1) ? rounded(low, 1) : `${rounded(low, 1)}–${rounded(high, 1)}`
  return [
    stat('Effective founders', rounded(effectiveFounders, 1), '', `As many with equal shares would be worth the ${left} there are. Evening out the shares brings it up.`),
    stat('Effective ancestors', fa, '', 'The same, counting also that the line has passed through few birds since. Well below the first, it tells of a narrow place on the way.'),
    stat('Founder genomes', rounded(founderGenomes, 1), '', 'Unrelated birds that would hold as much variety as is left. What chance has lost is lost; only other blood brings it back.'),
    stat('Mean kinship', percent(meanKinship), '%', 'Of these birds, each with itself too: what F comes to when they are mated with no regard to kin.'),
  ]
}

function statWords({unknown}: Founders, {kinship: {since, autosome}}: Findings): readonly string[] {
  return [
    since === autosome ? 'No kinship of the founders is stated, so all four take them as no kin; if they were, all four flatter.'
      : 'Founders stated to be kin are counted apart, so the first two numbers flatter: read the table by strain beside them. The last two count that kinship in.',
    ...(unknown.count > 0 ? [`Each of the ${figured(unknown.count, 'parent')} outside the book counts as a founder of its own in the effective numbers, here and by strain, and not among the founders left.`] : []),
  ]
}

function strainTable({strains, founders: list}: Founders): Table | null {
  if (strains.length === 0) return null
  const of = (strain: FounderShare['strain']) => list.filter(each => each.strain === strain && each.share > 0).length
  return {
    caption: 'By strain', columns: [{head: 'Strain'}, {head: 'Share, %', number: true}, {head: 'Founders left', number: true}, {head: 'Effective founders', number: true}],
    rows: strains.map(({strain, share, effectiveFounders}): readonly Cell[] => [{text: strain.name, link: strainPath(strain)}, percent(share), String(of(strain)), rounded(effectiveFounders, 1)]),
  }
}

function assumedView({assumedKinship}: Findings): FoundersView['assumed'] {
  if (assumedKinship === null || assumedKinship.at.length === 0) return null
  const {strain, at, birds} = assumedKinship, stated = at.find(each => each.stated), low = at[0], high = at.at(-1)
  // where F comes out the same, nothing leans on it
  if (!low || !high || percent(low.mean) === percent(high.mean)) return null
  const course = low !== high ? ` From ${percentSign(low.kinship)} to ${percentSign(high.kinship)} mean F of the ${figured(birds.length, 'bird')} goes from ${percentSign(low.mean)} to ${percentSign(high.mean)}.` : ''
  return {
    words: `How closely kin the first birds of ${strain.name} were nobody knows; ${!stated || stated.kinship === 0 ? 'no kinship is stated, so this book takes none' : `this book takes ${percentSign(stated.kinship)}, as its record states`}. The figures lean on it.${course} What your own matings add is in all of them alike.`,
    table: {
      columns: [{head: 'Kinship assumed, %', number: true}, {head: 'Mean F, %', number: true}, {head: 'In the record'}],
      rows: at.map(({kinship, mean, stated: own}): readonly Cell[] => [percent(kinship), percent(mean), own ? (kinship === 0 ? 'none stated' : 'as stated') : '–']),
    },
  }
}

function geneWords({strain, state, showsInOne, onZ, donors, drawn, still, copies, carriers, trait}: DonorGene, birds: number): readonly string[] {
  const look = `${trait.name.toLowerCase()} ${state}`
  if (drawn.length === 0) return [`No chick of ${strain.name} has brought in ${look} yet.`]
  const say = saying(donors.length, drawn.length, still.length)
  return [
    `${sentence(say(donors.length, 'bird'))} of ${strain.name} had ${say(drawn.length, 'crossed chick')} that may have got the gene for ${look}, each a copy of its own. A way down to the ${birds} birds is still open from ${say(still.length, 'of them', 'of them')}.`,
    copies === 0 ? 'No copy of it is left among these birds.'
      : `So the gene stands on ${counted(copies, 'copy that was', 'copies that were')} drawn apart, at most${copies < still.length ? ', two a donor bird being all there are' : ''}; ${ofAll(carriers, birds)} may carry it.${copies < 4 ? ' That is few: keep a son and a daughter from every way that is left.' : ''}`,
    `Assumed: ${showsInOne ? `one copy shows, so a bird scored otherwise than ${state} is taken to have none, its scoring to be right` : 'nothing is ruled out by looks, since the records do not say that one copy shows'}; a bird that may carry it counts as if it did${onZ ? '; a hen gives her Z to her sons alone' : ''}.`,
  ]
}

const ofAll = (count: number, all: number): string => (count === all ? `all ${all} of them` : `${count} of the ${all}`)

function ending({endingLines}: Founders, findings: Findings): FoundersView['ending'] {
  const {book: {project, asOf}, census} = findings, alive = new Set(census.alive)
  return endingLines.map(({bird, sons, daughters}) => {
    const [wanted, other] = bird.sex === 'male' ? ['son', 'daughter'] : ['daughter', 'son'], rest = bird.sex === 'male' ? daughters : sons
    const young = birdWord({sex: bird.sex, hatched: {first: asOf, last: asOf, text: ''}}, project.species, asOf)
    const state = `${birdWord(bird, project.species, asOf)}, no living ${wanted}${rest > 0 ? `; ${counted(rest, `living ${other}`)}` : `, nor a ${other}`}.`
    return {band: bird.band, link: birdPath(bird), words: `${sentence(state)} ${alive.has(bird) ? `Keep a ${young} from ${bird.sex === 'male' ? 'him' : 'her'}.` : rest > 0 ? `${bird.sex === 'male' ? 'He' : 'She'} is gone; the line goes on through the ${other}${rest === 1 ? '' : 's'} alone.` : 'The line has ended.'}`}
  })
}

function oneSex({founders: list}: Founders): string {
  const only = (has: 'cocks' | 'hens', not: 'cocks' | 'hens') => list.filter(each => each[has] > 0 && each[not] === 0).map(({bird}) => bird.band)
  const males = only('cocks', 'hens'), females = only('hens', 'cocks')
  return [
    ...(males.length > 0 ? [`Only males descend from ${listWords(males)}.`] : []), ...(females.length > 0 ? [`Only females descend from ${listWords(females)}.`] : []),
    ...(males.length + females.length === 0 && list.some(({share}) => share > 0) ? ['Every founder that has anything left has living descendants of both sexes.'] : []),
  ].join(' ')
}

function wanting({book}: Findings): string {
  const birds = book.birds.filter(bird => bird.parentage.kind === 'founder').length
  if (birds === 0) return 'No bird is in the book yet.'
  return book.hatches.length === 0 ? `${sentence(counted(birds, 'founder'))} on record and no hatch so far. Once chicks of the first cross live, what each founder has left in them stands here.`
    : 'No bird of the new breed is living by the records, so nothing of the founders can be weighed.'
}

export function foundersPage(findings: Findings): Page {
  const {founders, donorGenes} = findings
  const left = founders?.founders.filter(({share}) => share > 0).length ?? 0
  const view: FoundersView = {
    lead: founders === null ? 'What is left of the birds the breed was begun with.' : `${sentence(counted(left, 'founder'))} ${left === 1 ? 'stands' : 'stand'} behind ${groupWords(founders)}.`,
    wanting: founders === null ? wanting(findings) : '',
    figure: founders && shareFigure(founders, findings), shareWords: founders ? shareWords(founders) : [], gone: founders && gone(founders), stats: founders ? stats(founders) : [],
    statWords: founders ? statWords(founders, findings) : [],
    strains: founders && strainTable(founders), assumed: assumedView(findings),
    genes: founders ? donorGenes.map(gene => ({trait: gene.trait.name, link: traitPath(gene.trait), words: geneWords(gene, founders.birds.length)})) : [],
    geneWords: founders && donorGenes.length === 0 ? 'No required trait is on record that a donor strain is stated to be true for and the strain crossed back to is not.' : '',
    ending: founders ? ending(founders, findings) : [], oneSex: founders ? oneSex(founders) : '',
    endingWords: founders && founders.endingLines.length === 0 ? 'Every male that bred the step the breed stands at has a living son, and every female a living daughter.' : 'Of those that bred the step the breed stands at, males without a living son and females without a living daughter.',
    males: MALES,
  }
  return {path: FOUNDERS, template: 'founders', title: 'Founders', section: 'birds', view, search: {kind: 'index', words: 'founders effective founders ancestors genomes mean kinship lines donor gene copies'}}
}
