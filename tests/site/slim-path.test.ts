import {describe, expect, it} from 'vitest'
import {extentOf, movedPath, placesApart} from '../../src/site/slim-path.ts'

describe('movedPath(path, x, y)', () => {
  it.each([
    ['M-3.87,-3.87h7.75v7.75h-7.75Z', 'M6.13,16.13h7.75v7.75h-7.75z'],
    ['M3,0A3,3,0,1,1,-3,0A3,3,0,1,1,3,0', 'M13,20a3,3,0,1,1-6,0,3,3,0,1,1,6,0'],
    ['M0,-7C3,-7,5,0,5,2Z', 'M10,13c3,0,5,7,5,9z'],
    ['M0,0L5,0L5,4L.5,-.25', 'M10,20h5v4l-4.5-4.25'],
    ['M0,0L1,1,3,4', 'M10,20l1,1,2,3'],
    ['M1,1h2ZM5,5l1,0', 'M11,21h2zM15,25h1'],
    ['M1,1H4V9', 'M11,21h3v8'],
  ])('says %s moved in steps', (path, moved) => {
    expect(movedPath(path, 10, 20)).toBe(moved)
  })

  it('goes on from where a closed path began', () => {
    expect(movedPath('M1,1h2v2Zl1,1L9,9', 0, 0)).toBe('M1,1h2v2zl1,1,7,7')
  })

  it('leaves alone what it cannot read', () => {
    for (const path of ['M1e-7,0h1', 'M1', 'M0,0C1,1', 'M0,0h1Z2', 'M0,0R1,1']) expect(movedPath(path, 1, 1)).toBeNull()
  })

  it('comes out where it did, whatever is moved there and back', () => {
    const path = 'M4.5,1.25h7v-2.5l1.5-3c1,1,2,2,3.25,4q1,1,2,0a2,3,0,1,1-4,0z'
    expect(movedPath(movedPath(path, 31.07, -8.93) ?? '', -31.07, 8.93)).toBe(path)
  })
})

describe('extentOf(path, stroke) and placesApart(one, other)', () => {
  const square = extentOf('M10,10h4v4h-4z', 0)

  it('tells how far a path reaches, with half its stroke', () => {
    expect(square).toEqual({left: 10, right: 14, top: 10, bottom: 14})
    expect(extentOf('M10,10h4', 2)).toEqual({left: 9, right: 15, top: 9, bottom: 11})
    expect(extentOf('M13,20a3,3,0,1,1-6,0,3,3,0,1,1,6,0', 0)).toEqual({left: 7, right: 13, top: 17, bottom: 23})
  })

  it('does not say how far an arc reaches that is not half an ellipse', () => {
    expect(extentOf('M0,0a9,9,0,1,1,2,0', 0)).toBeNull()
  })

  it('takes for apart only what does not even touch', () => {
    if (!square) throw new Error('the square has no extent')
    const at = (left: number, top: number) => ({left, right: left + 4, top, bottom: top + 4})
    expect(placesApart(square, at(14.01, 10))).toBe(true)
    expect(placesApart(square, at(10, 5.99))).toBe(true)
    expect(placesApart(square, at(14, 10))).toBe(false)
    expect(placesApart(square, at(8, 8))).toBe(false)
  })
})
