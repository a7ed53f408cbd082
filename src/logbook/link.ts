/**
 * records → logbook. Every name in a record becomes the thing itself, and every fault between files becomes a slip.
 *
 *     strains, traits, keepers ─▶ hatches ─▶ birds (bands settled) ─▶ pens ─▶ who came from whom ─▶ parents first ─▶ steps and shares
 *                                                                        └▶ weighings, looks, shows, drafts, care, diary
 *
 * Linking goes on past faults as far as it can, so that one run shows everything there is to mend.
 */
import type {Day} from '../records/dates.ts'
import type {Slip} from '../records/problem.ts'
import type {Reading} from '../records/records.ts'
import {asOfView} from './as-of-view.ts'
import {benchOf, type Bench} from './bench.ts'
import {linkBirds} from './birds.ts'
import {checkBodyPictures} from './body-pictures.ts'
import type {Logbook, Project} from './book.ts'
import {linkCare} from './care.ts'
import {latestDay} from './dated-facts.ts'
import {inOrderOfDescent, placeByDescent} from './descent.ts'
import {linkDiary} from './diary.ts'
import {linkDrafts} from './draft.ts'
import {checkDraftBody} from './draft-body.ts'
import {linkEggCounts, linkFeedings} from './egg-counts.ts'
import {hatchShells} from './hatch-shells.ts'
import {fillHatches} from './hatches.ts'
import {noProject} from './inspect/no-project.ts'
import {RULES} from './inspect/rules.ts'
import {linkFounderKin} from './founder-kin.ts'
import {linkKeepers} from './keepers.ts'
import {latestDraft} from './latest-draft.ts'
import {layingOf} from './laying.ts'
import type {Linked} from './linked.ts'
import {confidentialOf, type Confidential} from './confidential.ts'
import {judgesOf} from './judges.ts'
import {linkLooks} from './looks.ts'
import {parentUses} from './parent-uses.ts'
import {linkPens} from './pens.ts'
import {givePhotographs, linkPhotographs} from './photographs.ts'
import {linkProject} from './project.ts'
import {rearingOf} from './rearing.ts'
import {linkRequirements} from './requirements.ts'
import {inferSexes} from './sexes.ts'
import {linkShows, showsInOrder} from './shows.ts'
import {linkStepNotes} from './step-notes.ts'
import {stepsOf} from './steps.ts'
import {linkStrains} from './strains.ts'
import {tellableFiles} from './tellable-files.ts'
import {gatherTellings} from './tellings.ts'
import {linkTraits} from './traits.ts'
import {linkWeighings} from './weighings.ts'

export interface LinkOptions {
  /** the day asked for on the command line: what came later is left aside. Default: the project's as-of, else the latest date in the records */
  readonly asOf?: Day | undefined
}

export interface Link {
  /** null when no project holds the records together */
  readonly book: Logbook | null
  readonly slips: readonly Slip[]
  /** for the committee's dossier alone; null where none is asked for */
  readonly confidential: Confidential | null
}

export function link(reading: Reading, {asOf}: LinkOptions = {}): Link {
  const slips: Slip[] = []
  const bench = benchOf(reading, slip => slips.push(slip))
  const [record] = bench.records.project
  if (!record) {
    if (!bench.isFaulty('project.md')) bench.note(noProject())
    return {book: null, slips, confidential: null}
  }
  const linked = linkAll(bench, strains => linkProject(record, strains), record.data['as-of']?.first)
  checkBodyPictures(reading, bench.note)
  checkDraftBody(reading, latestDraft(linked), bench.note)
  for (const rule of RULES) rule.check?.(linked)
  return {book: asOf === undefined ? linked.book : asOfView(linked.book, asOf), slips, confidential: linked.confidential}
}

function linkAll(bench: Bench, projectOf: (strains: ReturnType<typeof linkStrains>) => Project, ownAsOf: Day | undefined): Linked {
  const {records, checksum} = bench
  const strains = linkStrains(bench)
  const traits = linkTraits(bench)
  strains.readTraits(traits)
  const keepers = linkKeepers(bench), judges = judgesOf(showsInOrder(bench))
  const photographs = linkPhotographs(bench)
  const project = projectOf(strains)

  const hatches = hatchShells(bench, strains, keepers)
  const birds = linkBirds(gatherTellings(bench, hatches), {strains, keepers, photographs, traits, hatches}, bench)
  const pens = linkPens(bench, birds, keepers)
  const matings = fillHatches(hatches, {birds, pens, strains, keepers, bench, incubationDays: project.incubationDays, spermStoreDays: project.spermStoreDays})

  inferSexes(birds.birds, pens.all)
  const {birds: inOrder, looped} = inOrderOfDescent(birds, bench)
  linkFounderKin(birds, strains.all, bench)
  const steps = stepsOf(project, strains.all, records.step)
  placeByDescent(inOrder, hatches.all, steps)

  const drafts = linkDrafts(bench, traits, photographs)
  const looseWeighings = linkWeighings(bench, birds, hatches, traits)
  const sheets = linkLooks(bench, birds, hatches, traits, keepers, drafts)
  const book: Logbook = {
    project, asOf: ownAsOf ?? latestDay(records) ?? 0, strains: strains.all, traits: traits.all, loci: traits.loci.all, linkages: traits.loci.linkages, birds: inOrder, pens: pens.all, hatches: hatches.all,
    looseWeighings, eggCounts: linkEggCounts(bench, birds, pens), feedings: linkFeedings(bench, hatches, pens), shows: linkShows(bench, birds, keepers, judges, drafts), sheets,
    drafts, requirements: linkRequirements(bench, traits, keepers, drafts.at(-1)), care: linkCare(bench, birds, pens, hatches),
    diary: linkDiary(bench, photographs), stepNotes: linkStepNotes(records), later: 0, checksum, keepers: keepers.finish(),
    tellableFiles: tellableFiles(bench, keepers.strangers()),
  }
  // keepers have their public names by now
  for (const hatch of hatches.all) hatch.rearing = rearingOf(hatch)
  givePhotographs(photographs, records, [...book.strains, ...book.traits, ...book.pens, ...book.hatches, ...book.shows, ...book.care, ...book.stepNotes.values()])
  return {
    bench, book, tellings: birds.tellings, staysOf: pens.staysOf, steps, uses: parentUses(book, birds.tellings, (hatch, tally) => records.hatch[hatches.all.indexOf(hatch)]?.data.tallies?.[tally]), ownAsOf: ownAsOf ?? null, doubtful: new Set([...birds.twice, ...looped]),
    records: {
      hatch: new Map(hatches.all.flatMap((hatch, index) => (records.hatch[index] ? [[hatch, records.hatch[index]] as const] : []))),
      pen: new Map(pens.all.flatMap((pen, index) => (records.pen[index] ? [[pen, records.pen[index]] as const] : []))),
    },
    matings, confidential: confidentialOf(records, {keepers: keepers.forCommittee, judges: judges.forCommittee}),
    missedBands: birds.missed, namedBirds: birds.named,
    layingOf: hatch => layingOf(hatch, project.incubationDays),
  }
}
