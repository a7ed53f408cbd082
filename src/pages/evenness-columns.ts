/** What each column of the figures of trueness and evenness holds, in a few words: for the help of the command. */
import type {EvennessQuestion} from '../findings/evenness-figures.ts'

const FAMILY = {family_low: 'lower end of the 95% interval by sire families; empty under five of them', family_high: 'upper end'}
const VERDICT = {speaks_of: 'birds bred like these, or these chicks only where there are too few families', verdict: 'in plain words, by the interval or P of whatever it speaks of; by plan where a step was not mated inside the line'}

export const EVENNESS_COLUMN_WORDS: Readonly<Record<EvennessQuestion, Readonly<Record<string, string>>>> = {
  trend: {
    row: 'step, trend, steps apart (whether they differ at all), pen or seasons', what: 'true-bred, look (a required trait) or CV (a measured one)', trait: 'id', sex: 'male, female or all', step: 'of the chicks; of a trend the first and the last; the pen or the seasons',
    inter_se: 'mated inside the line: yes or no', in_trend: 'yes where the trend is worked from it', count: 'chicks right', total: 'chicks judged, or birds measured', value: 'count / total, or the coefficient of variation',
    low: 'lower end of the 95% interval, Wilson’s or McKay’s', high: 'upper end', exact_low: 'lower end by Clopper and Pearson', exact_high: 'upper end', families: 'sire families', ...FAMILY, left_out: 'of the step, and not judged or measured in a class of five',
    slope: 'change of the value a step', slope_low: 'lower end of its 95% interval', slope_high: 'upper end', statistic: 'z, S or F by the method', p: 'chance of as much with no trend, chicks taken one by one', family_p: 'the same by families',
    smallest_p: 'the least that so few steps can give', method: 'of value, trend or test', ...VERDICT,
  },
  change: {
    what: 'true-bred, look, evenness, variance ratio, CV ratio or grade', trait: 'id', sex: 'male, female or all', from_step: 'the earlier', to_step: 'the later', from_count: 'chicks right', from_total: 'chicks judged or graded, or birds in classes of five',
    to_count: 'likewise', to_total: 'likewise', from_families: 'sire families', to_families: 'likewise', sires_of_both: 'birds that may have sired chicks of both steps; what is said by families takes it that there are none', from: 'share; of evenness how far a bird strays from its class on average; SD, CV or median grade', to: 'likewise', change: 'to less from, or the ratio',
    low: 'lower end of its 95% interval', high: 'upper end', ...FAMILY, statistic: 'F; of grades how often a chick of the later step beats one of the earlier', p: 'chance of as much with no change; of evenness and grades by sire families where five in both', corrected_p: 'the same, corrected for all the measures, or all the grades, compared', method: 'by which it is worked', ...VERDICT,
  },
  scores: {
    what: 'grade, median, at the mark, two scorers, or book and judges', trait: 'id', step: 'of the chicks', sex: 'male, female, unknown or all', is: 'the mark or state; who the two scorers are; the judges’ headings', count: 'chicks with it; birds given the same grade',
    total: 'chicks graded; birds graded by both', share: 'count / total', low: 'lower end of the 95% interval', high: 'upper end', value: 'median mark or place of the state; kappa', value_low: 'lower end of kappa’s 95% interval', value_high: 'upper end',
    second_higher: 'birds that the second graded higher than the first, the judge than the book', second_lower: 'and lower', left_out: 'not graded, or not comparable', method: 'of the interval or of kappa',
  },
}
