import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {compose} from '../../src/pages/compose.ts'
import {BIRDS} from '../../src/pages/links.ts'
import type {BirdsView} from '../../src/pages/birds.ts'
import {renderSite} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {smallBook} from './small-logbook.ts'

const composed = compose(study(smallBook()))
const view = composed.pages.find(page => page.path === BIRDS)?.view as BirdsView

describe('the index of birds', () => {
  it('jumps to every group, each counted, those living before those gone', () => {
    const places = view.jumps.flatMap(jump => jump.places)
    expect(view.jumps.map(({head}) => head)).toEqual(['Living', 'No longer here'])
    expect(places.map(({id}) => id)).toEqual(view.groups.map(({id}) => id))
    expect(places.map(({count}) => Number.parseInt(count, 10))).toEqual(view.groups.map(({table}) => table.rows.length))
  })

  it('gives F of the living, and of them alone', () => {
    const living = view.groups.filter(({title}) => title === 'Breeding' || title.startsWith('Living'))
    expect(living.every(({table}) => table.f === 8 && table.rows.every(({f}) => /^(≥ )?\d+\.\d$/.test(f ?? '')))).toBe(true)
    expect(view.groups.filter(group => !living.includes(group)).every(({table}) => table.f === 0 && table.rows.every(({f}) => f === null))).toBe(true)
  })

  it('gives what a bird does now and its step right after its band, where a phone shows them', async () => {
    const site = new Map(await renderSite({...composed, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates('no-folder').files}))
    const html = String(site.get(BIRDS))
    expect(html).toContain('<th scope=col>Band<th scope=col>Now<th scope=col>Step')
    const [row] = view.groups.flatMap(({table}) => table.rows)
    expect(html).toContain(`>${row?.band ?? ''}</a><td>${row?.now ?? ''}<td>${row?.step ?? ''}<`)
  })
})
