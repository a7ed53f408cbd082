import {reaches} from '../../findings/evidence-found.ts'
import {FIXED_AT} from '../../findings/fixation.ts'
import type {RequirementKind} from '../../logbook/book.ts'
import {percentSign} from '../numbers.ts'
import type {Method} from './method.ts'

/** How each kind of requirement is decided, in a sentence. A kind without its sentence does not compile. */
export const HOW_DECIDED = {
  'years-bred': '**Years bred:** the seasons with a hatch on the ladder; years without one, up to the last that is over, are named as gaps. With `in-a-row` only the seasons since the last gap count.',
  'inter-se-generations': '**Generations inter se:** behind each bird shown in the latest year with a show (from the day named on, where one is), the generations on the shortest way back to a bird from outside the breed: none where a parent is from outside, else one more than the parent that has fewer. The bird with the fewest decides. Where none was shown, the living breeders are asked.',
  'independent-keepers': '**Independent breeders:** keepers with a hatch of the breed in each of the last seasons asked for; the last is the latest with a hatch, or the year that is over. A hatch at nobody knows whose helps nobody.',
  'breeders-alive': '**Breeding stock alive:** living breeders of the breed by sex, of the classes, ages and varieties asked for, birds of the pure strains left aside.',
  'shown-per-class': '**Shown in every class:** different birds shown in each class named, else in each the standard gives a weight for; over all shows, or at so many single ones as `shows` says. The class is the one written, else that of the bird’s sex and age. Disqualified entries do not count.',
  'shows-and-judges': '**Shows and judges:** shows with an entry, and judges who placed one, each once; a show of which no judge is on record is named.',
  'show-result': '**Show results:** no entry disqualified and, where points or a least grade are asked, none below. An entry without them leaves it untold; the order of `grades` is the requirement’s own.',
  'true-to-type': '**True to type:** of all chicks of matings inside the breed in the last seasons (two, where no number is named) that were reared to the scoring age, kept or not, the share that shows every look asked for: those of the clauses named, else of the mandatory clauses of the latest draft, each as the clause has it of that sex and variety; else the required traits, which is the true-bred rate. Against clauses a chick counts once it is of an age for all of them; culls that were off count. Met: it would be reached though every chick not fully scored, and every one that hatched and was never listed, failed; not yet: it would not be though they all passed; else it cannot be told, as where nobody was scored for a clause. What a clause accepts for a time does not meet it, and scores made while it read otherwise count and are told. `judged-on: cautious` or an `interval` lets the lower limit decide: by sire families, which five or more must have, or by Clopper and Pearson. The season named is the first by which as many chicks as are wanting could be reared at the rate of the latest, were every one right.',
  'fixed': `**Fixed traits:** at each locus of the trait named, of those of the clauses named, or of every required trait, the chance that not one living breeder carries an allele that is not wanted, all together, against the share asked, ${percentSign(FIXED_AT)} where none is named; over 99.9% counts as certain. A bird that could show the trait and was neither scored nor tested leaves it untold; so does a trait without rules for its genes. Named as the way are sure carriers to leave out, and those most worth testing, with the clean chicks that leave one chance in a hundred.`,
  'even-weight': '**Even weights:** in each sex asked about, in the latest step, the coefficient of variation against `at-most`, the share within a tenth of the mean against `at-least`, and the share inside the target and its tolerance, or inside what a clause named allows, against `inside-at-least`. The figure itself decides, or with `judged-on: cautious` the end of its interval that speaks against the breed. A sex of which nobody, or too few, were weighed leaves it untold.',
  'written-standard': '**Written standard:** in the latest draft every section asked for, else those its manner needs, else male, female, colour, weights, points and faults; none of its sections and clauses empty; points that make 100. Mandatory clauses are counted, and those that no trait shows are named.',
  'distinct': '**Distinct:** in how many characters of the keeper’s table the breed differs from each neighbour. The nearest neighbour decides. A cell that is not filled in tells nothing: where it could make the number, it cannot be told.',
  'name-free': '**Name free:** a paper that holds, or the keeper’s own statement.',
  'history': '**History:** a founder of every strain crossed in on record, and as many steps with chicks as are asked, one where no number is.',
  'photographs': '**Photographs:** a dated picture of each sex, young and grown, in each variety of the latest draft where it has several. The age is the bird’s on the day of the picture.',
  'statements': '**Statements:** keepers who signed a paper that holds on the day, each once; every keeper on record where no number is asked. Papers that do not say whose they are leave it untold.',
  'veterinary': '**Veterinary statement:** a veterinarian’s paper that holds on the day and is no older than the requirement allows.',
  'welfare': '**Welfare:** three things, all of which must hold. No required trait, and no clause named or mandatory, asks for a look that every bird has only with an allele that a lethal rule or caution names (not yet), or that a caution about the bird’s good names (untold until a paper shows that it is borne). Where a floor is asked (`at-least`), that share of the chicks of the latest step, or of the last `seasons`, lives to `to-age`, eight weeks where none is named; those of which nothing is written count as dead before it is met. And a paper that holds, or the keeper’s own statement. Of a look without rules for its genes nothing is told. Local law and a veterinarian go before all of it.',
  'inbreeding': '**Inbreeding:** whichever are asked of: the mean F of the living breeders against `at-most`; the rise of F in a generation, and the effective size, of the latest step mated inside the breed that has them, against `rate-at-most` and `size-at-least`; and the lines of males among the breeding cocks, each followed from sire to sire to a founder, against `male-lines`. A figure on the right side tells nothing where possible parents would take it across, or a grandparent is not in the book. `judged-on: cautious` reads rate and size at the end of the 95% interval of the birds’ own rates. Males to add are forecast from 4MN/(M + N), and what wider pairings give from each hen with the least akin of the males bred from.',
  'identity': '**Identity:** of the living birds, the share banded and the share whose both parents are certain; both must reach what is asked.',
  'consecutive-shows': '**Shown in consecutive years:** the longest run of years with a show. A year in which every show on record was officially cancelled does not break it and does not count. What is wanting is reckoned from the run that still goes on.',
  'birds-per-show': '**Birds at a show:** shows with as many birds of the breed, by as many keepers, as are asked; disqualified birds do not count, nor does a keeper who is not on record for that day.',
} as const satisfies Record<RequirementKind, string>

const verdict = (have: number, asked: number | null): string => ({true: 'met', false: 'not yet', null: 'cannot be told'})[String(reaches(have, asked)) as 'true' | 'false' | 'null']

const requirements: Method = {
  id: 'requirements',
  title: 'Requirements and evidence',
  question: 'What has been reached of what the association asks?',
  definition: `The requirements are the keeper’s own records, to be written from the association’s current rules. Each is held against the records and is **met**, **not yet** met, **cannot be told**, or **waived** by whoever may waive it. The association’s own reading decides; this only lays the records beside its words.

${Object.values(HOW_DECIDED).map(line => `- ${line}`).join('\n')}

Whatever the kind: \`from\` leaves out what is of before a day, \`within\` what is older than the rule allows at the book’s day, \`by\` what came after the day by which it must be reached; what is left out is counted. A date that is not known to the day counts only where every day it may mean does. \`ages\` are as shows have them: young in the calendar year of hatching, grown after it (common practice, no source). A waiver holds to the last day it names. The shortest way is reckoned from the book’s day: the next season is that year’s where nothing has hatched in it and eggs set that day still would, else the next; a bird of one season is bred from in the next (common practice, no source).`,
  formula: null, letters: [],
  edges: '- A requirement that names no figure to reach cannot be told, whatever the records show.\n- A number exactly on the mark is met.\n- A paper without an end holds; one that ended the day before does not.\n- What was not scored, shown or written down is never met; where it could make the difference, it cannot be told.\n- Of a waived requirement the figures stand all the same.',
  source: 'Kinds of requirement gathered from what associations publish; common practice, no single source. The rules of your association go before.',
  example: {given: 'Five seasons where five are asked, four where five are asked, and five where no number is named:', gives: () => `${verdict(5, 5)}, ${verdict(4, 5)}, ${verdict(5, null)}.`},
}

export const evidenceMethods: readonly Method[] = [requirements]
