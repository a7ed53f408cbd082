import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {hatchesPage, type HatchesView} from '../../src/pages/hatches.ts'
import {setAsideWords} from '../../src/pages/set-aside-words.ts'
import {hatchPage, type HatchView} from '../../src/pages/hatch.ts'
import {date, hatch, logbook} from '../pages/small-logbook.ts'

const WHY = 'The incubator stood at 35 °C'
const lost = hatch('2024-03', {on: date('2024-04-24'), eggs: 24, clear: 4, hatched: 0, setAside: WHY}), good = hatch('2024-01', {on: date('2024-04-01'), eggs: 20, clear: 2, hatched: 15})

describe('settings set aside, in words', () => {
  it('are told with their eggs and the reason', () => {
    expect(setAsideWords([good])).toEqual([])
    expect(setAsideWords([good, lost])).toEqual([`Set aside by the keeper, and in no share: hatch 2024-03, 24 eggs (${WHY}).`])
    expect(setAsideWords([lost, {...lost, id: '2024-05', eggs: null, setAside: 'The power failed'}])).toEqual([`Set aside by the keeper, and in no share: two settings, 24 eggs: 2024-03 (${WHY}) and 2024-05 (The power failed).`])
  })

  it('stand on the page of hatches and on their own', () => {
    const findings = study(logbook('2025-01-01', {hatches: [good, lost]})), view = hatchesPage(findings).view as HatchesView
    expect(view.lead).toContain('on the ladder 20 eggs set, hatch of set 75.0%')
    expect(view.lead).toContain(WHY)
    expect(view.groups[0]?.table.notes).toEqual(setAsideWords([lost]))
    expect(view.seasons?.notes).toEqual([])
    expect(view.groups[0]?.table.rows.map(({words}) => words[0]?.join(' ').replaceAll('\u00a0', ' '))).toEqual(['1 Apr 2024', '24 Apr 2024 (set aside)'])
    const own = findings.hatchResults.hatches.map(result => hatchPage(result, findings, new Set()).view as HatchView)
    expect(own[1]?.notes.join(' ')).toContain('Set aside by its keeper')
    expect(own[1]?.counts?.rows).toContainEqual(['Eggs set', '24'])
  })
})
