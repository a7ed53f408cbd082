/**
 * `pinfeather publish`: the whole way, in order.
 *
 *     folder ──read──▶ records ──link──▶ logbook ──study──▶ findings ──compose──▶ pages ──render──▶ files ──write──▶ site
 *
 * Pages are set one by one as they are written, into a folder beside the old site; it takes the old one's place when the last is there.
 */
import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {compose} from '../pages/compose.ts'
import type {Day} from '../records/dates.ts'
import {atomFeed} from '../site/feed.ts'
import {noPdfWords, pdfsOf} from '../site/pdf.ts'
import {photosNamed} from '../site/photos-named.ts'
import {publishPhotos} from '../site/photos.ts'
import {renderSite} from '../site/render.ts'
import {TemplateFault} from '../site/templates.ts'
import {readTemplates} from '../site/templates-folder.ts'
import {putBackOld, refusalOf, refusalWords, replaceFolder} from '../site/write.ts'
import {inspectReport} from './inspect-report.ts'
import {openBook} from './open-book.ts'
import {progressIn} from './progress.ts'
import {committeeFiles, committeeFolder, committeeRefusal, committeeWords, leftFromBefore} from './publish-for-committee.ts'
import {folderRefusal, isFolder} from './records-folder.ts'
import type {ExitCode, World} from './world.ts'

export interface PublishOptions {
  readonly folder: string
  readonly to: string
  readonly asOf: Day | undefined
  /** the standard and the dossier as PDFs too, where a Chromium is installed */
  readonly pdf?: boolean
  readonly quiet: boolean
}

export async function publish({folder, to, asOf, pdf, quiet}: PublishOptions, world: World): Promise<ExitCode> {
  const refusal = refusalOf(to, folder)
  if (!refusal && putBackOld(to)) world.err(`A run that was cut off had left the site of ${to} hidden; it is back in its place.\n`)
  const refused = folderRefusal(folder) ?? (refusal && `${refusalWords(refusal)}.`)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const progress = progressIn(world, quiet)
  const {book, confidential, findings, problems, allProblems, files} = openBook(folder, asOf, progress)
  const outcome = `Nothing was published; ${isFolder(to) ? `${to} is as it was` : `${to} was not made`}.`
  if (book === null || findings === null) {
    progress.end()
    world.err(inspectReport(problems, {folder, files, colour: world.colour.err, outcome}))
    return 1
  }
  const refusedBeside = confidential && committeeRefusal(to, folder)
  if (refusedBeside !== null) {
    progress.end()
    world.err(`${refusedBeside} ${outcome}\n`)
    return 2
  }
  progress.phase('composing')
  const {frame, pages, downloads, feed} = compose(findings)
  progress.phase('picturing')
  const photos = await publishPhotos(photosNamed(book), file => bytesOf(join(folder, 'photos', file)))
  if (photos.missing.length > 0) {
    progress.end()
    world.err(`${photos.missing.map(file => `photos/${file}`).join(', ')} cannot be opened; look whether you may read it. ${outcome}\n`)
    return 1
  }
  progress.phase('rendering')
  const templates = readTemplates(join(folder, 'templates'))
  const feedFile = frame.url === null ? null : atomFeed(feed, {breed: frame.breed, url: frame.url})
  const said: string[] = []
  const printing = (rest?: string) => async (sheets: readonly string[]) => {
    const made = await pdfsOf(sheets, {on: book.asOf, paper: book.project.paper})
    if (made.kind === 'made') return made.pdfs
    said.push(noPdfWords(made, rest))
    return null
  }
  let written, forCommittee
  try {
    const site = await renderSite({
      pages, downloads: feedFile ? [...downloads, feedFile] : downloads, frame, photos, templates: templates.files,
      progress: (done, total) => progress.at(done, total), ...(pdf ? {print: printing()} : {}),
    })
    forCommittee = confidential && await committeeFiles(findings, confidential, {frame, photos, templates: templates.files, ...(pdf && said.length === 0 ? {print: printing('The site has its PDFs; this is of the dossier for the committee, which is there as a page.')} : {})})
    progress.phase('writing')
    written = replaceFolder(to, site, {content: folder})
  } catch (fault) {
    if (!(fault instanceof TemplateFault) || templates.own.length === 0) throw fault
    progress.end()
    world.err(`${fault.message}\nThe project has templates of its own (${templates.own.join(', ')}); mend them, or take them away to use ours. ${outcome}\n`)
    return 1
  }
  const warnings = allProblems()
  progress.end()
  if (written.kind !== 'written') {
    world.err(`${refusalWords(written)}.\n`)
    return 2
  }
  const beside = forCommittee && replaceFolder(committeeFolder(to), forCommittee, {content: folder})
  if (warnings.length > 0) world.err(inspectReport(warnings, {folder, files, colour: world.colour.err}))
  for (const words of said) world.err(`${words}\n`)
  for (const file of photos.unreadable) world.err(`photos/${file} is neither a photograph nor a drawing that can be read, and was left out.\n`)
  for (const file of templates.strangers) world.err(`templates/${file} replaces no template of ours and was left out; is its name right?\n`)
  const left = confidential ? null : leftFromBefore(to)
  if (left !== null) world.err(`${left}\n`)
  if (!quiet) world.out(`${pages.length} pages and ${written.files - pages.length} other files${written.kept > 0 ? `, and ${written.kept} of your own kept` : ''}. Open ${join(to, frame.home)} in a browser.\n`)
  if (beside && beside.kind !== 'written') {
    world.err(`The site is published, but not the dossier for the committee: ${refusalWords(beside)}.\n`)
    return 2
  }
  if (!quiet && confidential && forCommittee) world.out(`${committeeWords(book, confidential, {place: committeeFolder(to), files: [...forCommittee.keys()]})}\n`)
  return 0
}

function bytesOf(path: string): Uint8Array | null {
  try {
    return readFileSync(path)
  } catch {
    return null
  }
}
