import {describe, expect, it} from 'vitest'
import type {WantingOfBreeding} from '../../src/findings/ways-of-breeding.ts'
import {breedingWayWords} from '../../src/pages/way-words-of-breeding.ts'
import {bird, comb, weight} from './small-logbook.ts'

const locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']} as const, a = bird('24-003', 'male'), b = bird('24-010', 'female')
const HARM = {clause: null, trait: comb, sex: 'male', locus, allele: 0, harm: 'lethal', says: null} as const
const words = (way: WantingOfBreeding, earliest: unknown = {kind: 'day', day: 0}): string => breedingWayWords({...way, earliest})

describe('breedingWayWords(way)', () => {
  const SAID: readonly (readonly [WantingOfBreeding, string])[] = [
    [{kind: 'score', trait: comb, clause: null, birds: [a, b], unbanded: 3}, 'score comb: 24-003, 24-010 and 3 that wear no band'],
    [{kind: 'score', trait: comb, clause: null, birds: [], unbanded: 0}, 'score comb'],
    [{kind: 'score-rest', birds: [a], unbanded: 1, gone: 2, right: 3}, 'score the rest: 24-003 and 1 that wears no band, of whom at least 3 must be right (2 are gone and can be scored no more)'],
    [{kind: 'hold-clauses', clauses: ['male/gait']}, 'give male/gait a trait, and say what it may show'],
    [{kind: 'hold-clauses', clauses: ['male/gait'], orName: true}, 'give male/gait a trait, and say what it may show, or name in the requirement the clauses it is about'],
    [{kind: 'of-age', chicks: 1}, 'wait until 1 chick is of an age to be scored for all of it'],
    [{kind: 'chicks-true', more: 30, seasons: 1, reared: 50, without: [2024], sires: 0}, '30 more chicks, if every one is right, as 2024 then counts no more'],
    [{kind: 'chicks-true', more: null, seasons: 2, reared: 0, without: [], sires: 2}, 'more chicks that are right, of two more sires at least'],
    [{kind: 'weigh', trait: weight, sex: 'female', more: 3}, 'weigh 3 more birds of the females, reared together, for weight at 20 weeks'],
    [{kind: 'more-even', of: 'within-tenth', trait: weight, sex: 'male', have: 0.6, mark: 0.7, n: 20, birds: null, sires: 0}, 'bring the share within a tenth of the males in weight at 20 weeks from 60.0% to 70.0%'],
    [{kind: 'more-even', of: 'cv', trait: weight, sex: 'male', have: 0.09, mark: 0.1, n: 20, birds: null, sires: 2}, 'weigh males of two more sires, reared with the others, for weight at 20 weeks'],
    [{kind: 'give-target', trait: weight, sex: 'male'}, 'give weight at 20 weeks a target with a tolerance for males'],
    [{kind: 'name-classes', classes: ['giants']}, 'call giants cock, cockerel, hen or pullet'],
    [{kind: 'test-mate', trait: comb, locus, birds: [{bird: a, carries: 0.5, chicks: 7}, {bird: b, carries: 0.25, chicks: null}], others: 4}, 'test by mating, for P (comb), 24-003 (50.0%, 7 clean chicks), 24-010 (25.0%, no test mating is to be made for it) and 4 more after them'],
    [{kind: 'leave-out', trait: comb, locus, birds: [a], clean: 0.96}, 'leave 24-003 out of the breeding pens, for P (comb): the chance that none of the rest carries it would be 96.0%'],
    [{kind: 'put-others', trait: comb, locus, birds: [a], sexes: ['male'], choices: [{bird: a, carries: 0, chicks: 1}, {bird: b, carries: 0.25, chicks: 6}]}, 'put others in the place of 24-003, for P (comb), without whom no males would be left to breed from, such as 24-003 (free of it) and 24-010 (25.0%, 6 clean chicks)'],
    [{kind: 'put-others', trait: comb, locus, birds: [a, b], sexes: ['male', 'female'], choices: []}, 'put others in the place of 24-003 and 24-010, for P (comb), without whom no males or females would be left to breed from; of those living none may be free of it'],
    [{kind: 'score-breeders', trait: comb, locus, birds: [a, b]}, 'score or test 24-003 and 24-010 for comb'],
    [{kind: 'say-genes', traits: [comb, weight]}, 'say which genes comb and weight at 20 weeks come of, and which are wanted'],
    [{kind: 'say-genes', traits: []}, 'say in a trait which genes it comes of'],
    [{kind: 'keep-breeders'}, 'record which birds are bred from'],
    [{kind: 'mate-wider', figures: [{of: 'mean', have: 0.17, mark: 0.1}, {of: 'rate', have: 0.03, mark: 0.01}], least: 0.14}, 'mate birds that are less akin, each hen with the male least akin to her (chicks of 14.0% on average, so that males less akin are needed too), to bring mean F from 17.0% to 10.0% and the rise of F in a generation from 3.0% to 1.0%'],
    [{kind: 'mate-wider', figures: [{of: 'mean', have: 0.17, mark: 0.1}], least: null}, 'mate birds that are less akin, to bring mean F from 17.0% to 10.0%'],
    [{kind: 'know-descent', birds: [a]}, 'find out the descent of 24-003'],
    [{kind: 'breed-on'}, 'one more generation mated inside the breed'],
    [{kind: 'more-males', more: 2, choices: [a]}, 'two more males bred from, such as 24-003, the least akin of those there, at the least, for 4MN/(M + N) takes the birds to be no kin; it shows first in their chicks'],
    [{kind: 'more-sires', more: 1}, 'chicks of one more sire in a generation, before the families tell how far off a figure may be'],
    [{kind: 'mate-wider', figures: [{of: 'kinship', have: 0.18, mark: 0.1}, {of: 'size', have: 2.41, mark: 5}], least: null}, 'mate birds that are less akin, to bring the rise of mean kinship in a generation from 18.0% to 10.0% and the effective size from 2.4 to 5'],
    [{kind: 'more-lines', more: 1, males: []}, 'one more line of males bred from, and no living male is surely of another'],
    [{kind: 'ask-otherwise', harms: [HARM]}, 'ask for another look than comb (P), or drop the demand; ask a veterinarian, and the law, first'],
    [{kind: 'veterinary-word', harms: [HARM], traits: []}, 'a veterinarian’s paper on comb (P)'],
    [{kind: 'veterinary-word', harms: [], traits: [comb]}, 'a veterinarian’s paper on comb, or rules that say its genes'],
    [{kind: 'follow-chicks', chicks: 5}, 'write what became of 5 chicks'],
    [{kind: 'chicks-live', more: 27, age: 56}, '27 more chicks, if every one lives to 8 weeks'],
  ]

  it.each(SAID.map(([way, said]) => [said, way] as const))('says: %s', (said, way) => {
    expect(words(way)).toBe(said)
  })

  it('gives the rate of rearing where no season can be named', () => {
    expect(words({kind: 'chicks-true', more: 296, seasons: 2, reared: 58, without: [2024], sires: 0}, null)).toBe('296 more chicks, if every one is right, in two seasons, where 58 were reared in the latest')
    expect(words({kind: 'chicks-true', more: 96, seasons: 1, reared: 58, without: [2024], sires: 0}, null)).toBe('96 more chicks, if every one is right, in one season, where 58 were reared in the latest')
  })
})
