import {describe, expect, it} from 'vitest'
import {slimSprite} from '../../src/site/slim-sprite.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {sampleSite, textAt} from './sample-site.ts'

const sprite = String(readTemplates(null).files.get('partials/sprite.hbs'))

describe('slimSprite(sprite)', () => {
  it('keeps the symbols a page uses, and the patterns these use', () => {
    const slim = slimSprite(sprite)('<use href="#egg-open"/>')
    expect(slim).toContain('id=egg-open')
    const banded = '<svg><defs><pattern id="bands"><rect/></pattern></defs><symbol id="a"><rect fill="url(#bands)"/></symbol><symbol id="b"><rect/></symbol></svg>'
    expect(slimSprite(banded)('<use href="#a"/>')).toContain('id=bands')
    expect(slimSprite(banded)('<use href="#b"/>')).not.toContain('id=bands')
    for (const id of ['egg-met', 'barred', 'pencilled']) expect(slim).not.toContain(`id=${id} `)
  })

  it('keeps the patterns a drawing fills with, by address or by class', () => {
    expect(slimSprite(sprite)('<path fill="url(#pencilled)"/>')).toContain('id=pencilled')
    expect(slimSprite(sprite)('<rect class="barred"/>')).toContain('id=barred')
  })

  it('keeps a path that a page draws with, and no empty definitions', () => {
    const slim = slimSprite(sprite)('<use class="egg" href="#egg-at" x="1" y="10"/>')
    expect(slim).toContain('<path id=egg-at d="')
    expect(slim).not.toContain('id=egg-axis')
    expect(slimSprite(sprite)('<use href="#egg-met"/>')).not.toContain('<defs>')
  })

  it('is not there at all on a page that draws on none of it', async () => {
    expect(slimSprite(sprite)('<a href="#matter">Matter</a>')).toBe('')
    expect(textAt(await sampleSite({template: 'Nothing drawn.', view: {}}), 'page.html')).not.toContain('<svg')
  })

  it('leaves nothing that a page asks for unresolved', async () => {
    const uses = ['egg-met', 'egg-waived'].map(id => `<svg viewBox="0 0 1 1"><use href="#${id}"/></svg>`).join('')
    const html = textAt(await sampleSite({template: uses, view: {}}), 'page.html')
    for (const [, id] of html.matchAll(/<use href="#([^"]+)"/g)) expect(html).toContain(`<symbol id=${id ?? ''} `)
    expect(html).not.toContain('<symbol id=egg-open')
  })
})
