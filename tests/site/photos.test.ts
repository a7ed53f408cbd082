import {createHash} from 'node:crypto'
import sharp from 'sharp'
import {describe, expect, it} from 'vitest'
import {cleanDrawing} from '../../src/site/drawing.ts'
import {isInside, publishPhotos} from '../../src/site/photos.ts'

const SERIAL = 'CANARY-SERIAL-4711', COPYRIGHT = 'CANARY-COPYRIGHT', XMP = 'CANARY-XMP', LATITUDE = '57/1 12/1 34567/1000'

/** A photograph as a camera writes it: position, serial number, copyright, XMP, and turned on its side. */
async function photograph(width = 1600, height = 1200, orientation?: number): Promise<Buffer> {
  const pixels = Buffer.alloc(width * height * 3)
  for (let index = 0; index < pixels.length; index += 1) pixels[index] = (index * 7 + (index >> 8)) % 256
  const image = sharp(pixels, {raw: {width, height, channels: 3}}).jpeg({quality: 90})
    .withExif({
      IFD0: {Copyright: COPYRIGHT, Make: 'CANARY-MAKE', Model: 'CANARY-MODEL'},
      IFD2: {BodySerialNumber: SERIAL},
      IFD3: {GPSLatitudeRef: 'N', GPSLatitude: LATITUDE},
    })
    .withXmp(`<?xpacket begin="" id="x"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description>${XMP}</rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`)
  return (orientation === undefined ? image : image.withMetadata({orientation})).toBuffer()
}

describe('publishPhotos(named, read)', () => {
  it('leaves no trace of what the camera wrote', async () => {
    const original = await photograph()
    for (const canary of [SERIAL, COPYRIGHT, XMP, 'CANARY-MAKE']) expect(original.includes(canary)).toBe(true)
    const exif = (await sharp(original).metadata()).exif
    expect(exif?.length).toBeGreaterThan(100)
    const {files} = await publishPhotos([{file: 'my house.jpg', of: '24-031'}], () => original)
    expect(files.size).toBe(2)
    for (const [path, content] of files) {
      expect(path).toMatch(/^photos\/24-031-[0-9a-f]{8}(-small)?\.jpg$/)
      const bytes = Buffer.from(content)
      expect(bytes.includes('CANARY')).toBe(false)
      for (const block of ['Exif', 'http://ns.adobe.com', 'xpacket', 'Photoshop', 'ICC_PROFILE']) expect(bytes.includes(block)).toBe(false)
      const left = await sharp(bytes).metadata()
      expect([left.exif, left.xmp, left.iptc, left.icc, left.orientation]).toEqual([undefined, undefined, undefined, undefined, undefined])
    }
  })

  it('gives a larger and a smaller copy, never the original', async () => {
    const original = await photograph()
    const {pictures, files} = await publishPhotos([{file: 'a.jpg', of: '24-031'}], () => original)
    const picture = pictures.get('a.jpg')
    expect(picture).toMatchObject({width: 640, height: 480, small: {width: 400, height: 300}})
    for (const content of files.values()) expect(Buffer.from(content).equals(original)).toBe(false)
  })

  it('turns a picture upright before it forgets which way up it was', async () => {
    const sideways = await photograph(1600, 1200, 6)
    const {pictures} = await publishPhotos([{file: 'a.jpg', of: 'x'}], () => sideways)
    expect(pictures.get('a.jpg')).toMatchObject({width: 640, height: 853})
  })

  it('does not make a small picture larger', async () => {
    const small = await photograph(300, 200)
    const {pictures} = await publishPhotos([{file: 'a.jpg', of: 'x'}], () => small)
    expect(pictures.get('a.jpg')).toMatchObject({width: 300, height: 200, small: null})
  })

  it('gives equal bytes for equal files', async () => {
    const original = await photograph(700, 500)
    const once = await publishPhotos([{file: 'a.jpg', of: 'x'}], () => original)
    const twice = await publishPhotos([{file: 'other name.jpg', of: 'x'}], () => original)
    expect([...once.files.keys()]).toEqual([...twice.files.keys()])
    expect([...once.files.values()].map(content => Buffer.from(content).toString('hex'))).toEqual([...twice.files.values()].map(content => Buffer.from(content).toString('hex')))
  })

  it('names a picture after the file it was made from and how, not after the bytes that came out', async () => {
    const original = await photograph(700, 500)
    const {pictures} = await publishPhotos([{file: 'a.jpg', of: 'x'}], () => original)
    // worked apart: the settings as JSON, then the file, through SHA-256
    const hash = createHash('sha256').update('{"large":640,"small":400,"quality":66,"ground":"#e8ede6","quantisationTable":3}').update(original).digest('hex').slice(0, 8)
    expect(pictures.get('a.jpg')?.path).toBe(`photos/x-${hash}.jpg`)
  })

  it('says which are missing and which cannot be read', async () => {
    const {missing, unreadable, files} = await publishPhotos(
      [{file: 'gone.jpg', of: 'x'}, {file: 'text.jpg', of: 'x'}, {file: 'bad.svg', of: 'x'}, {file: '../project.md', of: 'x'}],
      file => (file === 'text.jpg' ? Buffer.from('not a picture') : file === 'bad.svg' ? Buffer.from('<svg><g></svg>') : file === 'gone.jpg' ? null : Buffer.from('x')))
    expect(missing).toEqual(['gone.jpg', '../project.md'])
    expect(unreadable).toEqual(['text.jpg', 'bad.svg'])
    expect(files.size).toBe(0)
  })

  it('never looks outside the photos folder', () => {
    for (const file of ['../a.jpg', 'a/../../b.jpg', '/etc/passwd', 'C:\\a.jpg', '..\\a.jpg']) expect(isInside(file)).toBe(false)
    for (const file of ['a.jpg', 'hens/a..b.jpg', 'a b.jpg']) expect(isInside(file)).toBe(true)
  })
})

describe('cleanDrawing(text)', () => {
  const wrap = (inside: string, attributes = ''): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 48 36"${attributes}>${inside}</svg>`

  it('keeps what draws', () => {
    const drawing = wrap('<defs><linearGradient id="g"><stop offset="0" stop-color="#fff"/></linearGradient></defs><path fill="url(#g)" d="M0 0h4"/><text x="1">hen</text>')
    expect(cleanDrawing(drawing)).toEqual({svg: drawing, width: 48, height: 36})
  })

  it.each([
    ['scripts', '<script>alert("CANARY")</script>'],
    ['handlers', '<path d="M0 0" onload="CANARY"/>'],
    ['comments', '<!-- CANARY -->'],
    ['metadata', '<metadata><rdf:RDF xmlns:rdf="x"><dc:creator>CANARY</dc:creator></rdf:RDF></metadata>'],
    ['titles', '<title>CANARY</title><desc>CANARY</desc>'],
    ['style sheets', '<style>@import url(http://x/CANARY)</style>'],
    ['foreign objects', '<foreignObject><body xmlns="http://www.w3.org/1999/xhtml">CANARY</body></foreignObject>'],
    ['pictures inside', '<image href="http://x/CANARY.png"/>'],
    ['links', '<a href="javascript:CANARY"><path d="M0 0"/></a>'],
    ['references elsewhere', '<use href="http://x/CANARY#a"/><path fill="url(http://x/CANARY)" d="M0 0"/>'],
    ['references hidden by entities', '<path fill="&#117;rl(http://x/CANARY)" d="M0 0"/>'],
    ['words of a drawing program', '<g inkscape:label="CANARY" data-name="CANARY" id="a"><path d="M0 0"/></g>'],
    ['instructions', '<?xml-stylesheet href="CANARY"?>'],
    ['style attributes that fetch', '<path style="fill:url(http://x/CANARY);stroke:red" d="M0 0"/>'],
  ])('drops %s', (_, inside) => {
    const drawing = cleanDrawing(wrap(inside + '<path d="M1 1"/>'))
    expect(drawing?.svg).toContain('<path d="M1 1"/>')
    expect(drawing?.svg).not.toContain('CANARY')
  })

  it('turns harmless declarations of a style attribute into attributes', () => {
    expect(cleanDrawing(wrap('<path style="fill:#fff; -inkscape-x:1; stroke-width:2px" d="M0 0"/>'))?.svg).toContain('<path fill="#fff" stroke-width="2px" d="M0 0"/>')
  })

  it.each(['', 'hen', '<svg>', '<svg></svg>', '<svg viewBox="0 0 1 1"><g></svg>', '<svg viewBox="0 0 1 1"/><svg viewBox="0 0 1 1"/>',
    '<!DOCTYPE svg [<!ENTITY x "y">]><svg viewBox="0 0 1 1"/>', '<html viewBox="0 0 1 1"/>', '<svg viewBox="0 0 1 1" a=b/>'])('refuses %j', text => {
    expect(cleanDrawing(text)).toBeNull()
  })
})
