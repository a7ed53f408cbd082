/**
 * A PDF without what tells one making of it from another: the moment it was made becomes a day of the records, and the program that
 * printed it, which names the machine it ran on, becomes ours. Every word is put in the place of one as long, so that no object moves and
 * the table of where each begins holds. ISO 32000-1, 7.9.4 (dates) and 14.3.3 (the information dictionary).
 */
import {isoDay, type Day} from '../records/dates.ts'

const DATES = /(\/(?:CreationDate|ModDate) ?\(D:)\d{14}([+-]\d\d'\d\d')?/g
const OURS = '/Creator (Pinfeather)'
const CREATOR = /\/Creator \(((?:\\.|[^\\()])*)\)/

export function settledPdf(pdf: Uint8Array, on: Day): Uint8Array {
  const day = `${isoDay(on).replaceAll('-', '')}000000`
  const text = Buffer.from(pdf).toString('latin1')
    .replace(DATES, (_, before: string, zone?: string) => `${before}${day}${zone ? "+00'00'" : ''}`)
    .replace(CREATOR, whole => (whole.length < OURS.length ? whole : OURS.padEnd(whole.length)))
  return Buffer.from(text, 'latin1')
}
