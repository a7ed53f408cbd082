import {reaches} from '../../findings/evidence-found.ts'
import {FIXED_AT} from '../../findings/fixation.ts'
import type {RequirementKind} from '../../logbook/book.ts'
import {percentSign} from '../numbers.ts'
import type {Method} from './method.ts'

/** How each kind of requirement is decided, in a sentence. A kind without its sentence does not compile. */
export const HOW_DECIDED = {
  'years-bred': '**Years bred:** the seasons with a hatch on the ladder; years between with none are named.',
  'inter-se-generations': '**Generations inter se:** the most generations mated inside the breed that any step with chicks has reached.',
  'independent-keepers': '**Independent breeders:** keepers with a hatch of the breed in each of the last seasons asked for.',
  'breeders-alive': '**Breeding stock alive:** living breeders of the breed by sex, birds of the pure strains left aside.',
  'shown-per-class': '**Shown in every class:** different birds shown in each class the standard gives a weight for; disqualified entries do not count.',
  'shows-and-judges': '**Shows and judges:** shows with an entry, and judges who placed one, each once.',
  'show-result': '**Show results:** no entry disqualified and, where points are asked, none below them.',
  'true-to-type': '**True to type:** the true-bred rate of chicks from matings inside the breed in the last seasons. The rate itself decides, not its lower limit, unless the requirement’s `interval` says that the limit has to reach it: by sire families, which five or more must have, or by Clopper and Pearson. The families’ interval is printed where there is one.',
  'fixed': `**Fixed traits:** at each locus of the trait named, or of every required trait, the chance that not one living breeder carries an allele that is not wanted, all together, against the share asked, ${percentSign(FIXED_AT)} where none is named; over 99.9% counts as certain. A bird that could show the trait and was neither scored nor tested leaves it untold; so does a trait without rules for its genes.`,
  'even-weight': '**Even weights:** the coefficient of variation of each sex in the latest step that has one, held against the most that is asked; or the share within a tenth against the least.',
  'written-standard': '**Written standard:** every section of the latest draft filled, no clause empty, and points that make 100.',
  'distinct': '**Distinct:** in how many characters of the keeper’s table the breed differs from each neighbour. The nearest neighbour decides; an empty cell is no difference.',
  'name-free': '**Name free:** a paper that holds, or the keeper’s own statement.',
  'history': '**History:** founders and at least one step on record.',
  'photographs': '**Photographs:** birds of the breed with a photograph, by sex.',
  'statements': '**Statements:** how many signed papers hold on the day.',
  'veterinary': '**Veterinary statement:** a veterinarian’s paper that holds on the day.',
  'welfare': '**Welfare:** a paper that holds, or the keeper’s own statement.',
  'inbreeding': '**Inbreeding:** the mean F of the living breeders against the most that is asked; the highest and their mean kinship stand beside it. Where possible parents would take it past that, or a grandparent is not in the book, a mean below it tells nothing.',
  'identity': '**Identity:** of the living birds, the share banded and the share whose both parents are certain; both must reach what is asked.',
  'consecutive-shows': '**Shown in consecutive years:** the longest run of years with a show. A year in which every show was officially cancelled does not break it and does not count.',
  'birds-per-show': '**Birds at a show:** shows with as many birds of the breed, by as many keepers, as are asked; disqualified birds do not count.',
} as const satisfies Record<RequirementKind, string>

const verdict = (have: number, asked: number | null): string => ({true: 'met', false: 'not yet', null: 'cannot be told'})[String(reaches(have, asked)) as 'true' | 'false' | 'null']

const requirements: Method = {
  id: 'requirements',
  title: 'Requirements and evidence',
  question: 'What has been reached of what the association asks?',
  definition: `The requirements are the keeper’s own records, to be written from the association’s current rules. Each is held against the records and is **met**, **not yet** met, **cannot be told**, or **waived** by whoever may waive it. The association’s own reading decides; this only lays the records beside its words.

${Object.values(HOW_DECIDED).map(line => `- ${line}`).join('\n')}`,
  formula: null, letters: [],
  edges: '- A requirement that names no figure to reach cannot be told, whatever the records show.\n- A number exactly on the mark is met.\n- A paper without an end holds; one that ended the day before does not.',
  source: 'Kinds of requirement gathered from what associations publish; common practice, no single source. The rules of your association go before.',
  example: {given: 'Five seasons where five are asked, four where five are asked, and five where no number is named:', gives: () => `${verdict(5, 5)}, ${verdict(4, 5)}, ${verdict(5, null)}.`},
}

export const evidenceMethods: readonly Method[] = [requirements]
