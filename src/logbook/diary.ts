/** The diary, oldest first. */
import {inside} from '../records/problem.ts'
import type {Bench} from './bench.ts'
import type {DiaryEntry} from './book.ts'
import type {Photographs} from './photographs.ts'

export function linkDiary({records}: Bench, photographs: Photographs): readonly DiaryEntry[] {
  const entries = records.diary.map(({id, data, body, at}): DiaryEntry =>
    ({at, body, id, on: data.on, title: data.title, photos: photographs.of(data.photos, inside(at, 'photos'))}))
  return entries.sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1))
}
