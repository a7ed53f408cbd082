/** Pictures that carry words where cameras and editors leave them: in EXIF, XMP, comments, text chunks and behind the end. */
import sharp from 'sharp'

export interface PhotoMarks {
  readonly exif: string
  readonly xmp: string
  readonly comment: string
  readonly behind: string
}

const drawing = (colour: string) => sharp({create: {width: 1800, height: 1200, channels: 3, background: colour}})

/** A JPEG with a serial number, a position, an XMP block, a comment segment, and bytes after its end. */
export async function markedJpeg(marks: PhotoMarks): Promise<Buffer> {
  const plain = await drawing('#7a8f6a')
    .withExif({
      IFD0: {Artist: marks.exif, Copyright: marks.exif, ImageDescription: marks.exif},
      IFD2: {BodySerialNumber: marks.exif, UserComment: marks.exif},
      IFD3: {GPSLatitudeRef: 'N', GPSLatitude: '60/1 9/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '1/1 8/1 0/1'},
    })
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description><note>${marks.xmp}</note></rdf:Description></rdf:RDF></x:xmpmeta>`)
    .jpeg().toBuffer()
  const words = Buffer.from(marks.comment, 'latin1')
  const segment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, words.length + 2]), words])
  return Buffer.concat([plain.subarray(0, 2), segment, plain.subarray(2), Buffer.from(marks.behind, 'latin1')])
}

/** A PNG whose text chunk holds a word; its checksum is right. */
export async function markedPng(words: string): Promise<Buffer> {
  const plain = await drawing('#c9b48a').png().toBuffer()
  const data = Buffer.from(`Comment\0${words}`, 'latin1')
  const body = Buffer.concat([Buffer.from('tEXt', 'latin1'), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc(body))
  const afterHeader = 8 + 25 // the signature and the IHDR chunk
  return Buffer.concat([plain.subarray(0, afterHeader), length, body, sum, plain.subarray(afterHeader)])
}

/** CRC-32 of a PNG chunk. @see PNG specification, third edition, annex D */
function crc(bytes: Buffer): number {
  let rest = 0xffffffff
  for (const byte of bytes) {
    rest ^= byte
    for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1
  }
  return (rest ^ 0xffffffff) >>> 0
}
