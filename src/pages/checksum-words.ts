/** Which book a paper was made from: the day of its records and their checksum, to be read out and held against the folder later. */
import type {Logbook} from '../logbook/book.ts'
import {shortChecksum} from '../records/checksum.ts'
import {dayWords} from './dates.ts'

/** `Records to 30 October 2025, checksum ab12 cd34 ef56 7890`; a line can end in the middle of the digits and nowhere else, for the narrow vane of a paper does not hold them all */
export const recordsWords = ({asOf, checksum}: Pick<Logbook, 'asOf' | 'checksum'>): string => `Records to ${dayWords(asOf)}, checksum ${shortChecksum(checksum).replace(/(\S+) (\S+)( ?)/g, '$1\u00a0$2$3')}`

/** What the checksum is of and how it is held against a folder, with all its digits in groups, so that a line can end between them. */
export const checksumSentence = ({checksum}: Pick<Logbook, 'checksum'>): string =>
  `The checksum is the SHA-256 of all record files, photographs and papers left out, and “pinfeather checksum” works it again from the folder: ${(checksum.match(/.{1,8}/g) ?? []).join(' ')}.`
