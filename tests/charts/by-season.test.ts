import {describe, expect, it} from 'vitest'
import {bySeason} from '../../src/charts/by-season.ts'
import {renderChart} from '../../src/charts/render.ts'

const drawn = (...rows: readonly (readonly [string, number | null, number, number])[]) => {
  const [first, ...more] = rows.map(([label, share, low, high]) => ({label, share, interval: share === null ? null : {low, high}}))
  if (!first) throw new Error('nothing to draw')
  return renderChart(bySeason([first, ...more]), {id: 'seasons', title: 'Seasons', description: 'Two seasons.'})
}

describe('a share season by season', () => {
  it('is drawn from half on where all of it lies above, and else from nought', async () => {
    const high = await drawn(['2024', 0.8, 0.6, 0.95], ['2025', 0.9, 0.7, 1])
    expect(high).toContain('>50<')
    expect(high).not.toContain('>25<')
    expect(await drawn(['2024', 0.8, 0.4, 0.95])).toContain('>25<')
  })
  it('says where there is nothing to draw in a row', async () => expect(await drawn(['2024', 0.8, 0.6, 0.95], ['2025', null, 0, 1])).toContain('none'))
})
