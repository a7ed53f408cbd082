/** What a bird's file may be called: any of its bands, as it stands or as a file's name can hold it, with or without a hatch year. */
import {yearOf, type PartialDate} from '../records/dates.ts'
import {fileName} from '../records/file-name.ts'

/** @param hatched the years that may stand behind the band; any, where nobody knows the day. Capital letters make no other file on some disks, so they make none here. */
export function isNamedAfter(name: string, band: string, hatched: PartialDate | null = null): boolean {
  const given = name.toLowerCase()
  return [band, fileName(band)].some(plain => {
    if (!given.startsWith(plain.toLowerCase())) return false
    const year = /^-(\d{4})$/.exec(given.slice(plain.length))?.[1]
    if (year === undefined) return given.length === plain.length
    return hatched === null || (Number(year) >= yearOf(hatched.first) && Number(year) <= yearOf(hatched.last))
  })
}
