import {analysisOfVariance, type AnalysisOfVariance} from './analysis-of-variance.ts'
import {median} from './median.ts'
import {selectionIntensity} from './selection-intensity.ts'

/**
 * How far does each bird stray from the middle of its own class, as a part of it?
 *
 *     d = |x − median| / (median · i)        i the expected mean of the upper half of n normal values, 0.798 for many
 *
 * so that of normal values the mean of d is their coefficient of variation, whatever the size of the class: small classes would otherwise look more even
 * than they are, because their middle follows their birds. In a class of an odd number one bird is the median and strays by nothing whatever the spread;
 * it is left out. (The root √(n/(n − 1)) in place of 1/i makes a class of five, its median left out, look 16 % less even than one of thirty.)
 *
 * @param values of one class (one sex, reared together), 2 or more, all above 0
 * @returns the deviations as shares, in the order given; one fewer than the values when these are odd in number
 * @throws RangeError when there are fewer than 2 values, or one that is not above 0
 * @see Hines & O'Hara Hines 2000, Biometrics 56:451–454 (structural zeros; from memory). Scaling by the expected mean deviation: own, held by simulation.
 * @example relativeDeviations([90, 100, 120])  // 0.1182, 0.2363
 */
export function relativeDeviations(values: readonly number[]): number[] {
  return strayings(values).filter(away => away !== null)
}

/** The same, bird by bird in the order given; null of the one that is the median and left out. */
export function strayings(values: readonly number[]): (number | null)[] {
  if (values.length < 2) throw new RangeError(`a class has 2 values or more, not ${values.length}`)
  for (const value of values) if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`a measurement is above 0, not ${value}`)
  const middle = median(values), usual = selectionIntensity(values.length >> 1, values.length)
  const left = values.length % 2 === 1 ? values.indexOf(middle) : -1
  return values.map((value, place) => (place === left ? null : Math.abs(value - middle) / (middle * usual)))
}

/**
 * Are the birds of one step more even than those of another, when each is held against its own class only?
 *
 *     W = F of a one-way analysis of variance on the relative deviations of each step
 *
 * Brown and Forsythe's test on deviations that a difference between hatches, or between cocks and hens, cannot touch.
 *
 * @param steps the classes of each step, and the values of each class; classes of fewer than 2 are passed over
 * @returns as `analysisOfVariance`, of the deviations
 * @throws RangeError when a value is not above 0
 * @see Brown & Forsythe 1974, J. Am. Stat. Assoc. 69:364–367; on relative deviations within classes: own, its error held by simulation
 * @example spreadOfSteps([[[90, 101, 110, 130], [180, 200, 220]], [[98, 100, 102], [196, 201, 204]]])  // kind 'compared', f 5.4627, p 0.0476
 */
export function spreadOfSteps(steps: readonly (readonly (readonly number[])[])[]): AnalysisOfVariance {
  return analysisOfVariance(steps.map(classes => classes.filter(values => values.length >= 2).flatMap(relativeDeviations)))
}
