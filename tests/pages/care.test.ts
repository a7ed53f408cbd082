import {describe, expect, it} from 'vitest'
import {carePage, type CareView} from '../../src/pages/care.ts'
import {shownBook} from './shown-logbook.ts'
import {weekOld} from './small-logbook.ts'

describe('the care book', () => {
  const view = carePage(shownBook()).view as CareView

  it('puts the newest entry first and says what each touched', () => {
    expect(view.entries.map(({when, title}) => `${when}: ${title}`)).toEqual(['20 October 2025: Feed', '2 to 7 May 2024: Treatment'])
    expect(view.entries[0]?.touched.map(({text}) => text)).toEqual(['hatch 2024-01', '24-003'])
  })

  it('says until when eggs are withheld, and warns while the time is running', () => {
    expect(view.entries[1]?.text).toContain('Eggs withheld until 21 May 2024.')
    expect(view.running).toEqual(['No eggs eaten or sold until 5 November 2025.'])
  })

  it('sends the reader to a veterinarian where medicine is told of', () => {
    expect(view.medicine).toBe(true)
    expect((carePage({...shownBook(), care: []}).view as CareView).medicine).toBe(false)
  })

  it('says in words that there is nothing yet', () => {
    expect(carePage(weekOld()).view).toMatchObject({lead: 'Nothing has been written down about feed, housing or health yet.', entries: []})
  })
})
