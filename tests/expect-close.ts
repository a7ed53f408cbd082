import {expect} from 'vitest'

/**
 * Expects a number within a stated absolute tolerance of another; the failure prints what was asked, got, expected, and how far apart they lie.
 *
 * @param tolerance absolute, above 0; 0 for exactly equal. For a relative one multiply by the expected value
 * @param inputs what the function was asked, for the failure's first line
 */
export function expectClose(got: number, expected: number, tolerance: number, inputs: unknown = ''): void {
  const difference = got - expected
  const close = got === expected || Math.abs(difference) <= tolerance
  expect(close, `${typeof inputs === 'string' ? inputs : JSON.stringify(inputs)}\n  got        ${got}\n  expected   ${expected}\n  difference ${difference}, tolerance ${tolerance}`).toBe(true)
}
