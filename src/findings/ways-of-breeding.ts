/** What is wanting in type, evenness, descent and welfare, as plain data; `ways.ts` joins it to the rest. */
import type {Bird, Clause, Locus, Trait} from '../logbook/book.ts'
import type {HarmAsked} from './shown-of-breeding.ts'

export type WantingOfBreeding =
  /** living birds to score, banded or not, of a trait that nobody was scored for */
  | {readonly kind: 'score'; readonly trait: Trait; readonly clause: Clause | null; readonly birds: readonly Bird[]; readonly unbanded: number}
  /** those not fully scored, of which so many at the least must be right; `gone`: they left and can be scored no more */
  | {readonly kind: 'score-rest'; readonly birds: readonly Bird[]; readonly unbanded: number; readonly gone: number; readonly right: number}
  /** clauses to give a trait and what it may show; `orName`: or the requirement may name the clauses that it is about */
  | {readonly kind: 'hold-clauses'; readonly clauses: readonly string[]; readonly orName?: true}
  /** chicks that are not of an age to be judged */
  | {readonly kind: 'of-age'; readonly chicks: number}
  /** further chicks, all of them right, null where no number that can be named is enough; in so many seasons, of which each has `reared` at today's rate; `without` the seasons that count no more by then; of so many sire families more */
  | {readonly kind: 'chicks-true'; readonly more: number | null; readonly seasons: number; readonly reared: number; readonly without: readonly number[]; readonly sires: number}
  /** birds of a sex to weigh at an age, reared together, before a spread can be told */
  | {readonly kind: 'weigh'; readonly trait: Trait; readonly sex: 'male' | 'female'; readonly more: number}
  /** a sex that is not even enough; `birds`: so many in all, spread as these, would settle it, null where none would; `sires`: so many more are wanted before families can tell, 0 where they can */
  | {readonly kind: 'more-even'; readonly of: 'cv' | 'within-tenth' | 'inside'; readonly trait: Trait; readonly sex: 'male' | 'female'; readonly have: number; readonly mark: number; readonly n: number; readonly birds: number | null; readonly sires: number}
  /** the trait has no target for the sex, or one without a tolerance */
  | {readonly kind: 'give-target'; readonly trait: Trait; readonly sex: 'male' | 'female'}
  | {readonly kind: 'name-classes'; readonly classes: readonly string[]}
  /** birds to mate to one that tells, with so many clean chicks each; null: no mating is to be made for it, or none tells; and so many others after them that may carry it */
  | {readonly kind: 'test-mate'; readonly trait: Trait; readonly locus: Locus; readonly birds: readonly BirdToTest[]; readonly others: number}
  /** carriers to leave out of the breeding pens; `clean`: the chance without the first of them that none carries it */
  | {readonly kind: 'leave-out'; readonly trait: Trait; readonly locus: Locus; readonly birds: readonly Bird[]; readonly clean: number | null}
  /** carriers to leave out, where that leaves no breeder of a sex; birds to put in their place that are not bred from, the likeliest to be without it first, with the clean chicks to clear each */
  | {readonly kind: 'put-others'; readonly trait: Trait; readonly locus: Locus; readonly birds: readonly Bird[]; readonly sexes: readonly ('male' | 'female')[]; readonly choices: readonly BirdToTest[]}
  /** breeders that could show the trait and were neither scored nor tested */
  | {readonly kind: 'score-breeders'; readonly trait: Trait; readonly locus: Locus; readonly birds: readonly Bird[]}
  /** traits of which no rule says what they come of; none: the requirement names none and none is required */
  | {readonly kind: 'say-genes'; readonly traits: readonly Trait[]}
  | {readonly kind: 'keep-breeders'}
  /** less related pairings: mean F, or the rise of F or kinship, is above the mark, or the effective size under it; `least`: mean F of chicks if every hen bred from goes to the least akin of the males bred from, no pair that may lose chicks among them */
  | {readonly kind: 'mate-wider'; readonly figures: readonly {readonly of: 'mean' | 'rate' | 'kinship' | 'size'; readonly have: number; readonly mark: number}[]; readonly least: number | null}
  /** breeders whose parents or grandparents to find out */
  | {readonly kind: 'know-descent'; readonly birds: readonly Bird[]}
  /** generations mated inside before a rate can be told */
  | {readonly kind: 'breed-on'}
  /** chicks of so many more sires in a generation, before its families can tell how far off a figure may be */
  | {readonly kind: 'more-sires'; readonly more: number}
  /** males more to breed from, by the count of breeders were they no kin; those of the flock that are least akin to the breeders first; null: with so few females no number is enough */
  | {readonly kind: 'more-males'; readonly more: number | null; readonly choices: readonly Bird[]}
  /** lines of males that are wanting; living males of lines that no breeding male is of */
  | {readonly kind: 'more-lines'; readonly more: number; readonly males: readonly Bird[]}
  /** a look that cannot be had without an allele that kills or harms */
  | {readonly kind: 'ask-otherwise'; readonly harms: readonly HarmAsked[]}
  /** of what harms by a caution, and of traits asked for of which no rule says their genes */
  | {readonly kind: 'veterinary-word'; readonly harms: readonly HarmAsked[]; readonly traits: readonly Trait[]}
  /** chicks of which to write what became of them */
  | {readonly kind: 'follow-chicks'; readonly chicks: number}
  /** chicks more to live, each to the age, null where no number is enough */
  | {readonly kind: 'chicks-live'; readonly more: number | null; readonly age: number}

export interface BirdToTest {
  readonly bird: Bird
  readonly carries: number
  readonly chicks: number | null
}
