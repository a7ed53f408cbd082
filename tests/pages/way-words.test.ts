import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {shownWords} from '../../src/pages/evidence-words.ts'
import {waySentence} from '../../src/pages/way-words.ts'
import {evidenceOf, gapsBook} from '../findings/gaps-book.ts'

/** What the flock of known gaps is told: the requirement, what is shown, and the way. */
const SAID: readonly (readonly [string, string, string])[] = [
  ['kind: years-bred, at-least: 5, in-a-row: yes', 'Four seasons, 2021, 2023, 2024 and 2025, with no hatch in 2022. Since the last gap three seasons count. In 2021 nothing but crosses hatched.', 'two more seasons with a hatch, none missed, in 2027 at the earliest'],
  ['kind: years-bred, at-least: 4', 'Four seasons, 2021, 2023, 2024 and 2025, with no hatch in 2022. In 2021 nothing but crosses hatched.', ''],
  ['kind: inter-se-generations, at-least: 3', 'One generation inside the breed at the least, of 3 birds shown in 2025; the most are three. The shortest way back goes from 23-003 by 21-001 to H-1. Short of it: 23-003 and 24-001.', 'show or breed from birds that have enough behind them, such as 25-001 and 25-002'],
  ['kind: inter-se-generations, at-least: 4', 'One generation inside the breed at the least, of 3 birds shown in 2025; the most are three. The shortest way back goes from 23-003 by 21-001 to H-1.', 'one more generation mated inside the breed, in 2026 at the earliest: 23-003, 24-001 and 25-002 fall short'],
  ['kind: independent-keepers, at-least: 2, seasons: 2', 'One: The keeper in the north, with a hatch in 2024 and 2025. Consent to be named is on record from this keeper. The keeper in the south had none in 2025.', 'one more keeper with a hatch in each of two seasons, in 2027 at the earliest'],
  ['kind: breeders-alive, males: 2, females: 3', '1 male and 1 female on 15 November 2025.', 'one more male and two more females to breed from (living and not in a pen now: 5 males, 4 females)'],
  ['kind: shown-per-class, per-class: 1', 'Cock 1, cockerel 1, hen 0, pullet 1. Short of it: hen.', 'one more bird shown as hen (4 living could be), in 2025 at the earliest'],
  ['kind: shown-per-class, per-class: 2, shows: 1', 'Cock 1, cockerel 0, hen 0, pullet 1 at Third show, the best of the shows. Short of it: cock, cockerel, hen and pullet. No show has as many in each.', 'one show with two each of cock, cockerel, hen and pullet (living that could be: cock 5, cockerel 1, hen 4 and pullet 1), in 2026 at the earliest'],
  ['kind: shows-and-judges, at-least: 3, judges: 2', 'Two shows under one judge, 2023 and 2025.', 'one more show and one more judge'],
  ['kind: show-result', '4 entries, 1 disqualified; 0 firsts, 0 awards; the least points 91. In the way: 23-003.', 'ask from which day on shows count, for what was given to 23-003 stays on record'],
  ['kind: show-result, within: 100 days', '3 entries, 1 disqualified; 0 firsts, 0 awards; the least points 93. In the way: 23-003. One record is older than the rule allows and does not count: it is of 4 November 2023.', 'wait until what was given to 23-003 no longer counts, on 13 January 2026 at the earliest'],
  ['kind: show-result, at-least: 90, classes: [pullet]', '1 entry, none disqualified; 0 firsts, 0 awards; no points on record. Of one entry no points are on record.', 'write down the points that the judge gave 25-002'],
  ['kind: show-result, least-grade: good, grades: [fair, good], classes: [pullet]', '1 entry, none disqualified; 0 firsts, 0 awards; no grade on record. Of one entry no grade of those asked about is on record.', 'write down the grades that the judge gave 25-002'],
  ['kind: show-result, least-grade: good, classes: [pullet]', '1 entry, none disqualified; 0 firsts, 0 awards; no grade on record. Of one entry no grade of those asked about is on record.', 'write the judges’ grades under grades, from the least, and the least that will do as one of them'],
  ['kind: consecutive-shows, at-least: 4', 'Shown in 2023 and 2025; the longest run is two years, 2023 and 2025. The shows of 2024 were officially cancelled, which breaks no run and adds nothing to it.', 'two more years with a show, one after the other, in 2027 at the earliest'],
  ['kind: birds-per-show, at-least: 3, exhibitors: 2', 'None of two shows had as many; the most were two birds of one keeper, at Third show of 4 October 2025.', 'one more show with three birds and two keepers'],
  ['kind: written-standard', 'Draft 1, 2 clauses, no section on the female or weights, no words in Neck, 100 points. Two clauses are mandatory. Of these nobody can score male/neck: no trait shows it.', 'write the sections on the female and weights and put words into Neck'],
  ['kind: distinct, at-least: 3', 'From Holm White in two characters (Comb and Tail); from Fell Buff in one character (Skin). Not filled in: beside Holm White Egg; beside Fell Buff Egg.', 'fill in Egg beside Holm White, which must differ; one more character that differs from Fell Buff, and Egg filled in and differing'],
  ['kind: name-free', 'The records hold nothing on it.', 'a paper that shows it, or your own statement'],
  ['kind: history, at-least: 6', 'Founders: 1 Fell Buff and 1 Holm White; 4 steps, 12 chicks hatched, 2 breeders living.', 'two more steps with chicks'],
  ['kind: photographs, males: 2', '2 photographs of 2 birds: 1 male and 1 female; 1 dated. Of three of the four kinds that are wanted there is no dated one.', 'write the date of the photographs of 24-002; dated photographs of a grown male, a young female and a grown female; photographs of one more male'],
  ['kind: statements', 'Statement of the north (The keeper in the north), 1 March 2025. Signed by one keeper. None yet of The keeper in the south or keeper A.', 'two more signed papers, of The keeper in the south and keeper A'],
  ['kind: veterinary', 'Visit, 12 August 2024, held until 12 August 2025. None holds now.', 'a new paper in place of that of 12 August 2024, which counted until 12 August 2025'],
  ['kind: identity, at-least: 95%', 'Living birds banded: 11 of 11 (100.0%, 74.1 to 100.0); both parents certain: 11 of 11 (100.0%, 74.1 to 100.0).', ''],
  ['kind: years-bred, at-least: 6, by: 2026', 'Four seasons, 2021, 2023, 2024 and 2025, with no hatch in 2022. In 2021 nothing but crosses hatched.', 'two more seasons with a hatch, in 2027 at the earliest. That is after 2026, by when it must be reached'],
  ['kind: years-bred, at-least: 3, from: 2023', 'Three seasons, 2023 to 2025, with hatches in each. One record is from before 2023 and does not count.', ''],
  ['kind: history, at-least: 6, by: 2025-10', 'Founders: 1 Fell Buff and 1 Holm White; 4 steps, 12 chicks hatched, 2 breeders living. It had to be reached by October 2025, and was not.', 'two more steps with chicks. That is after October 2025, by when it must be reached'],
  ['kind: years-bred, at-least: 3, inside: yes', 'Three seasons, 2023 to 2025, with hatches in each. In 2021 nothing but crosses hatched, which do not count.', ''],
  ['kind: consecutive-shows, at-least: 2, varieties: [Light]', 'Of 3 entries the class, age or variety that is asked about is not on record; nothing else was shown yet.', 'two more years with a show, one after the other, in 2026 at the earliest'],
  ['kind: inter-se-generations, at-least: 1, within: 1 day', 'Two generations inside the breed at the least, of 2 living breeders, as none that counts was shown, and so has each. The shortest way back goes from 24-001 by 23-001, 21-001 to H-1. Four records are older than the rule allows and do not count, the latest of 4 October 2025.', ''],
  ['kind: show-result, from: 2026', 'The records hold nothing on it that counts. Four records are from before 2026 and do not count.', 'one more show'],
  ['kind: years-bred', 'Four seasons, 2021, 2023, 2024 and 2025, with no hatch in 2022. In 2021 nothing but crosses hatched.', 'write in the requirement how much is asked'],
]

describe('evidence and the way to it, in words', () => {
  const book = gapsBook(SAID.map(([line]) => line)), {items} = study(book).evidence

  it.each(SAID.map((said, index) => [...said, index] as const))('%s', (_, shown, way, index) => {
    const item = items[index]
    expect(item && [shownWords(item, book), waySentence(item, book.asOf)]).toEqual([shown, way === '' ? '' : `Shortest way: ${way}.`])
  })

  it('names nobody who has not agreed, in public, and in what is made for the committee who agreed to that', () => {
    const [item] = evidenceOf(['kind: statements'])
    expect(item && waySentence(item, book.asOf)).not.toContain('Nobody To Be Named')
    const naming = {isConfidential: true, keeper: () => 'Somebody', region: () => null, isNamed: () => true, judge: (called: string) => called}
    expect(item && waySentence(item, book.asOf, naming)).toBe('Shortest way: two more signed papers, of Somebody and Somebody.')
  })
})
