import {describe, expect, it} from 'vitest'
import {imagesIn} from '../../src/records/body-images.ts'

describe('imagesIn(text)', () => {
  it('lists pictures of every way of writing them with their words and place, and none that are only shown as code', () => {
    const text = '![](photos/a.jpg) and ![b][r]\n\n[r]: ./photos/b.jpg\n[r]: other.jpg\n\n`![no](photos/c.jpg)` <img SRC="photos/d.jpg" alt=\'a > b\' />'
    const images = imagesIn(text)
    expect(images.map(({url, file, alt, isTag}) => ({url, file, alt, isTag}))).toEqual([
      {url: 'photos/a.jpg', file: 'a.jpg', alt: '', isTag: false}, {url: './photos/b.jpg', file: 'b.jpg', alt: 'b', isTag: false},
      {url: 'photos/d.jpg', file: 'd.jpg', alt: 'a > b', isTag: true},
    ])
    expect(images.map(({range}) => text.slice(...range))).toEqual(['![](photos/a.jpg)', '![b][r]', '<img SRC="photos/d.jpg" alt=\'a > b\' />'])
  })
})
