/**
 * A PDF without what tells one making of it from another: the moment it was made becomes a day of the records, and the program that
 * printed it, which names the machine it ran on, becomes ours; its elements, numbered from wherever Chromium had come to, are numbered
 * from one in the order they had. Every word is put in the place of one as long, so that no object moves and
 * the table of where each begins holds. ISO 32000-1, 7.9.4 (dates) and 14.3.3 (the information dictionary), 14.7.2 (element identifiers, whose
 * tree is sorted).
 */
import {isoDay, type Day} from '../records/dates.ts'

const DATES = /(\/(?:CreationDate|ModDate) ?\(D:)\d{14}([+-]\d\d'\d\d')?/g
const OURS = '/Creator (Pinfeather)'
const CREATOR = /\/Creator \((?:\\.|[^\\()])*\)/
const ELEMENT = /\(node(\d{8})\)/g

export function settledPdf(pdf: Uint8Array, on: Day): Uint8Array {
  const day = `${isoDay(on).replaceAll('-', '')}000000`
  const before = Buffer.from(pdf).toString('latin1')
  const numbers = new Map([...new Set([...before.matchAll(ELEMENT)].map(([, number = '']) => number))].sort().map((number, place) => [number, String(place + 1).padStart(8, '0')]))
  const after = before
    .replace(ELEMENT, (_, number: string) => `(node${numbers.get(number) ?? number})`)
    .replace(DATES, (_, key: string, zone?: string) => `${key}${day}${zone ? "+00'00'" : ''}`)
    .replace(CREATOR, whole => (whole.length < OURS.length ? whole : OURS.padEnd(whole.length)))
  return Buffer.from(after, 'latin1')
}
