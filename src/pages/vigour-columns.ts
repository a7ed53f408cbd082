/** What each column of the figures of inbreeding, choosing and crosses holds, in a few words: for the help of the command. */
import type {VigourQuestion} from '../findings/vigour-figures.ts'

const LIMITS = {low: 'lower end of its 95% interval', high: 'upper end'}

const FAMILIES = {families: 'sire families of the line that has fewest', speaks_of: 'birds bred like these, families drawn whole; these chicks only under five families'}

export const VIGOUR_COLUMN_WORDS: Readonly<Record<VigourQuestion, Readonly<Record<string, string>>>> = {
  depression: {
    outcome: 'hatch, livability to eight weeks, weight or eggs', trait: 'id, of weights', effect_of: 'F or strain heterozygosity, of chick or dam', with: 'ten points more F, or ten less heterozygosity, the others held', change: 'in points of a share, else in the unit', ...LIMITS,
    unit: 'points, or that of the values', verdict: 'harm with the number of tests taken in; harm that may be chance; less than others found; no harm; or that the records cannot tell: then low is the largest loss not excluded', why: 'there is none', p: 'chance of as much with no effect', p_corrected: 'the same with the number of tests taken in, by Holm', tests: 'made in all',
    count: 'hatched or lived', n: 'eggs, chicks, birds or hens that came into it', groups: 'hatches; of what is measured pairs', pairs: 'distinct pairs, or sets of possible pairs; each tells of F once', mean: 'of all that came into it', left_out: 'on record and not used: not counted, parents not known, gone or too young, without contemporaries', seasons: 'held: each has a level of its own',
    extra_spread: 'between hatches or pairs, whichever is wider, as times what chance gives', method: 'of change and limits', published_low: 'what others found for ten points of F', published_high: 'likewise', published: 'by whom',
  },
  selection: {
    what: 'kept (against all), differential, response, move, realised heritability, heritability or recovery', step: 'chosen in; empty for all together', to: 'step of the chicks', trait: 'id', state: 'look', sex: 'or which parents',
    value: 'share of the kept with the look; kept less the rest; S; R; the means’ move; heritability; the way from donor to recurrent strain', ...LIMITS, expected: 'by a blind choice; by strain shares', unit: 'of the value; empty for shares', count: 'kept with the look, birds bred from, of the next step, steps or families',
    total: 'kept', all: 'birds or chicks compared with', p: 'chance of as much by a blind choice, or with no response', p_corrected: 'the same with the number of tests taken in, by Holm', tests: 'made in all, of all steps together or of single ones', left_out: 'looked at, and without mates to be held against', ...FAMILIES, verdict: 'or why there is no value',
    method: 'of value and limits', birds: 'in classes that hold all; else measured',
  },
  crosses: {
    one: 'line: a step or strain', other: 'the other', trait: 'id', heterosis: 'cross less mid-parent, of mid-parent', ...LIMITS, p: 'chance of as much with none', difference: 'cross less mid-parent, in the unit', mid_parent: 'mean of the two lines', unit: 'of the trait',
    cross_birds: 'in classes that hold all three; else measured', one_birds: 'likewise', other_birds: 'likewise', classes: 'of one sex reared alike that hold all three', ...FAMILIES, method: 'of the limits', why: 'there is no value',
  },
}
