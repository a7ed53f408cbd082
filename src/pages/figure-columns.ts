/** What each column of a table of figures holds, in a few words: for the help of the command and the page of downloads. */
import type {FigureQuestion} from '../findings/figures.ts'
import type {HeredityQuestion} from '../findings/heredity-figures.ts'

type Words = Readonly<Record<string, string>>

const LIMITS: Words = {low: 'lower end of the 95% interval', high: 'upper end'}
const RATE = (name: string, words: string): Words => ({[name]: words, [`${name}_low`]: 'lower end of its 95% interval', [`${name}_high`]: 'upper end'})
const F_RANGE: Words = {F_low: 'least F, by who the parents may be', F_high: 'most'}

export const COLUMN_WORDS: Readonly<Record<FigureQuestion, Words>> = {
  birds: {
    band: 'as worn last', sex: 'male, female or unknown', step: 'by descent', hatched: 'day, month or year, as far as known', sire: 'band, or every candidate with its chance', dam: 'likewise', F: 'inbreeding, mean over the possible parents',
    ...F_RANGE, F_z: 'the same on the Z, cocks only', equivalent_generations: 'generations of ancestors known, halves and quarters counted', id: 'the name of its record', hatch: 'where it hatched', strain: 'of a founder',
    recurrent_share: 'share of the strain crossed back to', left: 'day', left_how: 'sold, died and so on', at_least: 'yes where a grandparent or nearer is not in the book, so that F is at least what is told',
  },
  shares: {step: 'of the chicks', trait: 'id', state: 'look', sex: 'male, female, unknown or all', count: 'chicks with it', total: 'chicks scored', share: 'count / total', ...LIMITS},
  spread: {
    step: 'of the birds', trait: 'id', sex: 'male or female', n: 'birds counted', mean: 'in the trait’s unit', sd: 'standard deviation within birds reared alike', cv: 'coefficient of variation', within10: 'share within a tenth of the mean',
    cv_low: 'lower end of its 95% interval', cv_high: 'upper end', classes: 'groups reared alike', left_out: 'measured and not counted',
  },
  hatches: {
    hatch: 'id', pen: 'pens joined by +', step: 'of the chicks', eggs: 'set', fertile: 'eggs less clear ones', hatched: 'chicks', ...RATE('fertility', 'fertile / eggs'), ...RATE('hatch_of_fertile', 'hatched / fertile'), ...RATE('hatch_of_set', 'hatched / eggs'),
    season: 'year', how: 'machine or broody hen', set_aside: 'why it is in no share of pen, step or season',
  },
  strains: {
    band: 'empty in the rows of steps', unknown: 'share from parents not in the book', id: 'the name of its record', step: 'by descent', strain_heterozygosity: 'share of genes with copies of two strains',
    recurrent_spread: 'standard deviation of the true share of the strain crossed back to',
  },
  'true-bred': {
    step: 'of the chicks', inter_se: 'mated inside the line: yes or no', passes: 'chicks showing all they could', fails: 'chicks failing one or more', part_scored: 'not fully scored', lost: 'gone before scoring age', too_young: 'not of age yet', unlisted: 'hatched and not on record',
    rate: 'passes / (passes + fails)', ...LIMITS, if_all_fail: 'were all part scored to fail', if_all_pass: 'were they to pass', sires: 'cocks behind them',
  },
  kinship: {
    a: 'band', b: 'band', sex_a: 'male, female or unknown', sex_b: 'likewise', kinship: 'F that chicks of the two would have', low: 'least, by who their parents may be', high: 'most', id_a: 'the name of its record', id_b: 'likewise',
    at_least: 'yes where a parent of either is not in the book',
  },
  founders: {
    figure: 'founder, or the name of a figure of them all', band: 'of a founder', strain: 'id', share: 'of the genes of the birds bred from', cocks: 'living males that descend, or may, from it', hens: 'living females', unsexed: 'living, sex not known',
    value: 'of the figure named; mean kinship is a fraction', id: 'the name of its record',
  },
  inbreeding: {
    step: 'of the birds', inter_se: 'mated inside the line: yes or no', birds: 'banded', doubtful: 'with parents in doubt', at_least: 'with a grandparent or nearer not in the book', F: 'mean', ...F_RANGE, highest_F: 'most that one bird may have', highest: 'that bird',
    kinship: 'mean among them, each with itself', F_z: 'on the Z, cocks only', strain_heterozygosity: 'share of genes with copies of two strains', equivalent_generations: 'known, mean', rate_since: 'step that the rate counts from',
    rate: 'share lost of what was not yet inbred, the founders’ kinship left out', own_rate: 'a generation, from each bird’s own F', realised_size: 'birds mated at random that would lose as much', realised_size_se: 'its standard error',
  },
  clans: {
    system: 'way of mating', generation: 'season ahead', F: 'mean of the chicks to be expected', kinship: 'mean of two chicks', rate: 'share lost since the season before', year: 'of the chicks', passes_limit: 'year in which that way passes the limit for one mating',
  },
}

/** Of a column that is named after a strain of the book. */
function ofStrain(name: string): string {
  if (name.startsWith('Z ')) return 'share on the Z'
  return name.startsWith('dam line ') ? 'share of the mother’s line' : 'expected share of that strain, by its id'
}

export function columnWords(question: FigureQuestion, column: string): string {
  return COLUMN_WORDS[question][column] ?? (question === 'strains' ? ofStrain(column) : '')
}

const HOW = 'exact, or approximate where the flock is too wide for that'

export const HEREDITY_COLUMN_WORDS: Readonly<Record<HeredityQuestion, Words>> = {
  genotypes: {band: 'as worn last', genotype: 'each that it may have, the likeliest first', probability: 'over a bird they make 1', how: HOW},
  forecast: {
    what: 'never hatches, beware, look, looks together or genotype', of: 'locus or trait', sex: 'of the chicks', is: 'the look or genotype; empty where no rule says or the sex cannot show it', share: 'of that sex’s chicks that hatch; of what never hatches, of all embryos',
    how: HOW,
  },
  'test-mating': {
    clean_chicks: 'chicks looked at, none of which is scored as showing it', still_carrier: 'chance that the bird carries it all the same, from all that is known; misscoring and penetrance are included', carrier_missed: 'chance that a carrier gives so many clean chicks; misscoring and penetrance are included', clears: 'yes from the number on that keeps to the limit', how: HOW,
  },
  'hatch-size': {
    at_least: 'chicks wanted', chance: 'to get them', share_wanted: 'of the chicks that hatch', chicks: 'of scoring age needed; empty above 2000', eggs: 'to set, the flock’s own rates known no better than its counts', eggs_at_mean: 'as if the mean rates were the true ones',
    egg_to_chick: 'mean share of eggs that make a chick of scoring age', counted: 'what these rates rest on', how: HOW,
  },
}
