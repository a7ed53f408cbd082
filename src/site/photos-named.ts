/** The pictures that records name, in front matter or in their Markdown: only these are ever published. */
import type {Logbook, Photo} from '../logbook/book.ts'
import {imagesIn} from '../records/body-images.ts'
import {fileName} from '../records/file-name.ts'

export interface NamedPhoto {
  /** path inside `content/photos/` */
  readonly file: string
  /** the record that names it first, for the published name: `24-031`, `draft-5` */
  readonly of: string
}

/** Every picture once, in the order of the book. */
export function photosNamed(book: Logbook): readonly NamedPhoto[] {
  const named = new Map<string, NamedPhoto>()
  const add = (of: string, photos: readonly Photo[], ...texts: readonly string[]): void => {
    const files = [...photos.map(photo => photo.file), ...texts.flatMap(text => imagesIn(text).flatMap(image => (image.file === null ? [] : [image.file])))]
    for (const file of files) if (!named.has(file)) named.set(file, {file, of: fileName(of)})
  }
  add('project', [], book.project.body)
  for (const bird of book.birds) add(bird.id, bird.photos, bird.body)
  for (const draft of book.drafts) {
    add(`draft-${draft.number}`, draft.photos, draft.body, draft.origin ?? '', ...draft.sections.flatMap(section => [section.lead, ...section.clauses.map(clause => clause.text)]))
  }
  for (const entry of book.diary) add(`diary-${entry.id}`, entry.photos, entry.body)
  const others = {strain: book.strains, trait: book.traits, keeper: book.keepers, pen: book.pens, hatch: book.hatches, show: book.shows, care: book.care}
  for (const [kind, records] of Object.entries(others)) for (const {id, photos, body} of records) add(`${kind}-${id}`, photos ?? [], body)
  for (const [step, note] of book.stepNotes) add(`step-${step}`, note.photos ?? [], note.body)
  if (book.requirements) add('requirements', [], book.requirements.body)
  return [...named.values()]
}
