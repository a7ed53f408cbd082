/**
 * What the keepers noted by hand beside the drawn facts: bands lost and changed, sexes put right, reasons, dated remarks. Keyed by band or
 * by the name of the pen or hatch; `line` goes into the chick's line of its hatch, `record` into the bird's own file.
 */
import type {Entries} from './front-matter-text.ts'

export interface Notes {
  readonly line?: Entries
  readonly record?: Entries
}

/** The tail as read from the folding rule, with a word beside it. */
const tail = (on: string, degrees: number, note?: string): Entries => ({on, by: 'inga', 'tail-angle': `${degrees} degrees`, note})

export const BIRDS: Readonly<Record<string, Notes>> = {
  // founders
  'H19-01': {record: {
    observations: [
      {on: '2020-01-18', health: 'two points of the comb frozen, black'},
      {on: '2020-03-06', health: 'healed, the points gone'},
      {on: '2020-11-02', temperament: 'quiet', note: 'Moulting late, and thin with it.'},
    ],
    private: {from: 'the old cooper', paid: 'two sacks of barley'},
  }},
  'H19-02': {record: {observations: [{on: '2021-05-02', vigour: '4 of 5', note: 'Treads well. Comb worse than his brother.'}], kin: [{with: 'H19-01', kinship: '12.5%'}]}},
  'H19-13': {record: {observations: [{on: '2021-04-13', note: 'Moved from B to H with two days in a coop between.'}]}},
  'F18-02': {record: {observations: [{on: '2020-05-10', note: "Broody again. Given nine of the pen's own eggs."}, {on: '2020-05-31', note: 'Eight chicks. Would not have us near.'}]}},
  'F18-03': {record: {observations: [{on: '2019-10-27', note: 'Over the net twice in the first week.'}]}},
  'H20-02': {record: {
    flock: {name: 'holm-south', kinship: '6%'},
    observations: [{on: '2021-03-06', fertility: 'good'}, {on: '2022-03-20', fertility: 'nine clear of twenty-two', health: 'lame on the left foot'}],
  }},
  'H20-05': {record: {flock: {name: 'holm-south', kinship: '6%'}}},
  'H20-11': {record: {kin: [{with: 'H20-12', kinship: '25%'}]}},
  'H23-02': {record: {flock: {name: 'east-shore', kinship: '25%'}, observations: [{on: '2024-11-09', note: 'Lent himself to the trial with a good grace. Single comb, five points, and white all through.'}]}},
  'G21-01': {record: {observations: [{on: '2023-04-30', temperament: 'flew at the bucket', note: 'Barred, upright, long in the leg.'}], private: {owner: 'goes home in November if he is spared'}}},

  // first cross
  '20-024': {record: {kept: '2020-10-19 for breeding, the only cockerel of weight, brassy as they all are'}},
  '20-010': {record: {observations: [{on: '2021-02-20', note: 'Small. Lays every other day and never missed.'}]}},

  // first cross back
  '21-012': {record: {bands: [{band: 'Y-7', from: '2021-04', to: '2021-06'}, {band: '21-012', from: '2021-06'}]}},
  '21-111': {record: {
    kept: '2021-10-25 for breeding, deep, quiet, and clean silver as far as we could see', left: '2022-10-08 culled, brassy',
    observations: [{on: '2022-05-02', note: 'Four chicks with buff down out of silver hens. It is he or it is nobody.'}, {on: '2022-06-18', by: 'rasmus', note: 'In full sun the saddle is straw.'}],
  }},

  // second cross back
  '22-002': {record: {observations: [tail('2023-05-28', 36)]}},
  '22-007': {record: {observations: [tail('2023-05-28', 40)]}},
  '22-013': {record: {observations: [tail('2023-05-28', 48, 'Too much, but look at the rest of her.')]}},
  '22-019': {line: {sex: [{is: 'unknown', on: '2022-05-22'}, {is: 'female', on: '2022-07-02'}]}},
  '22-025': {record: {kept: '2022-10-19 for breeding, best type of the year, out of the gold hatch but silver herself'}},
  '22-106': {record: {left: '2023-04-18 sold, her last eggs in the machine'}},
  '22-112': {line: {sire: {'H20-02': '80%', 'H20-05': '20%'}}, record: {observations: [{on: '2022-09-03', note: "Walks like H20-02, and has his narrow white lobe. We call her his."}]}},

  // third cross back
  '23-004': {record: {left: '2025-02 sold, running to fat', observations: [tail('2023-11-05', 41), {on: '2024-09-29', health: 'tired after the show, ate by evening'}]}},
  '23-020': {record: {bands: [{band: '23-020', to: '2024-06 lost'}, {band: 'G-4', from: '2024-06'}]}},
  '23-021': {record: {
    kept: '2023-10-25 for breeding, the best male so far in all but the comb',
    left: '2025-04-12 given, to the school',
    observations: [tail('2023-11-19', 38), {on: '2024-05-12', fertility: 'one clear in ten'}],
  }},
  '23-110': {record: {photos: [{file: 'cockerel-23.png', on: '2023-08-31', view: 'left', alt: 'A cockerel from the left: white with striped hackle and black tail, pea comb, the tail carried high at more than fifty degrees.', caption: 'At five months. The tail is too high and the rest is what we wanted.'}]}},
  '23-117': {record: {kept: '2023-10-19 for breeding, stands square, the first without a pinched saddle', observations: [tail('2024-05-19', 48)]}},
  '23-119': {line: {family: 'long-eggs'}},
  '23-123': {line: {family: 'long-eggs'}},
  '23-126': {line: {family: 'long-eggs'}},

  // first mating inside the line
  '24-003': {
    record: {
      kept: '2024-10-12 for breeding, good keel, a neat comb, moved well',
      bands: [{band: 'Y-7', from: '2024-03', to: '2024-05'}, {band: '24-003', from: '2024-05'}],
      left: '2025-07-17 died, egg-bound, found too late',
      observations: [{on: '2025-02-09', comb: 'pea', note: 'Seven chicks to the single-combed cock, all pea.'}],
    },
  },
  '24-005': {line: {left: undefined}},
  '24-007': {record: {left: '2025-02-18 sold, carries single', observations: [{on: '2025-02-09', note: 'Four single of six chicks.'}]}},
  '24-008': {record: {
    kept: '2024-10-09 for breeding, deepest keel of her year, neat comb',
    observations: [{on: '2025-02-09', note: 'Six chicks to the single-combed cock, all pea.'}, tail('2025-05-25', 39), {on: '2025-09-03', 'egg-weight': '58 g'}],
    photos: [{file: 'hen-24.png', on: '2025-09-03', view: 'left', alt: 'A hen from the left: white, hackle striped with black, black tail at about forty degrees, three rows of beading for a comb.', caption: '24-008 at eighteen months, before the moult.'}],
  }},
  '24-012': {record: {kept: '2024-10-02 for breeding if he proves true; weight and back', left: '2025-02-17 culled, carries single: 5 of 7 chicks'}},
  '24-025': {record: {left: '2025-09-12 culled, carries single and yellow', kept: '2024-10-12 for breeding, best type of his hatch, comb coarse, no time to try him', observations: [tail('2025-05-31', 46), {on: '2025-08-30', note: 'A single and a yellow among his chicks. He carries both.'}]}},
  '24-030': {record: {
    kept: '2024-11-09 for breeding if he proves true; three clean ridges and the best back we have had',
    observations: [{on: '2025-02-16', note: 'Ten chicks to single-combed hens, all pea.'}, tail('2025-05-25', 43), {on: '2025-10-05', weight: '3.3 kg', temperament: 'can be carried under one arm'}],
    photos: [{file: 'cock-24.png', on: '2025-09-03', view: 'left', alt: 'A cock from the left: white, black striped hackle, black tail at forty-five degrees, low pea comb, level back.', caption: '24-030 at fifteen months. A June chick from under a hen.'}],
  }},
  '24-034': {record: {'first-egg': '2024-11-20', left: '2025-02-18 sold, carries single', observations: [{on: '2025-02-09', note: 'Four single of five chicks.'}]}},
  '24-035': {line: {sex: [{is: 'male', on: '2024-08-25'}, {is: 'female', on: '2024-11-18', because: 'laid'}]}, record: {left: '2025-09-12 sold, carries single', observations: [{on: '2024-11-18', note: 'The cockerel in the end coop has laid an egg.'}]}},
  '24-202': {record: {observations: [{on: '2025-02-16', note: 'Nine chicks to single-combed hens, all pea.'}]}},
  '24-209': {record: {kept: '2024-10-19 for breeding, on the tail and the comb, heavy', observations: [{on: '2025-09-27', note: 'Came home from the show with a torn nail, cleaned, healed.'}]}},

  // second mating inside the line
  '25-101': {record: {photos: [{file: 'pullet-25.png', on: '2025-09-13', view: 'right', alt: 'A pullet from the right: white, striped hackle, black tail not quite furnished, a very small comb.', caption: '25-101 at five and a half months.'}]}},
  '25-008': {record: {photos: [{file: 'cockerel-25.png', on: '2025-09-13', view: 'right', alt: 'A cockerel from the right: white, striped hackle, black tail at about forty-five degrees, neat pea comb.', caption: '25-008 at five months.'}]}},
}

/** Had the bird left by that day, by a keeper's own note? */
export function goneBy(band: string, day: string): boolean {
  const left = BIRDS[band]?.record?.left
  return typeof left === 'string' && left < day
}

/** Birds that no hatch lists under this band: banded later, or found. */
export const OTHER_BIRDS: Readonly<Record<string, Entries>> = {
  '24-040': {
    band: '24-040', 'out-of': {hatch: '2024-03', mark: 'left toe'}, sex: 'female', 'first-egg': '2024-11',
    kept: '2024-10-19 for eggs, and because she would not be caught on the day the others were sold',
    left: '2025-06 given, to the school',
  },
  'U-1': {band: 'U-1', 'same-as': '24-005', left: '2024-10-12 culled, surplus', observations: [{on: '2024-09-01', note: 'Came in with the geese. No band, torn left nail: 24-005, lost in July.'}]},
}

/** More front matter for pens; a key here takes the place of the drawn one. */
export const PENS: Readonly<Record<string, Entries>> = {
  '2023-B': {females: ['22-112', '22-024', '22-115', '22-025', '22-103', {band: '22-106', to: '2023-04-17'}]},
  '2024-C': {private: {where: 'behind the chapel wall'}},
}

/** More front matter for hatches; a key here takes the place of the drawn one. */
export const HATCHES: Readonly<Record<string, Entries>> = {
  '2020-03': {set: '2020-05', on: '2020-05'},
  '2023-03': {'set-aside': 'I1 had stood at 35 °C'},
  '2022-06': {private: {paid: 'too much, with the boat'}},
}

/** Unbanded chicks that were banded after all, by the drawn chick's name: the mark they were known by until then. */
export const BANDED_LATER: Readonly<Record<string, string>> = {'2024-03 unbanded 2': 'left toe'}
