/** Where each thing stands in the site: paths from the site's root, steady from build to build. Templates turn them with `{{link path}}`. */
import type {Bird, CareEntry, DiaryEntry, Draft, Hatch, Keeper, Pen, Show, Step, Strain, Trait} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'

export const HOME = 'index.html'
export const LADDER = 'ladder.html'
/** where it tells whether to backcross again */
export const BACKCROSS = 'ladder.html#backcross'
export const BIRDS = 'birds.html'
export const PENS = 'pens.html'
export const HATCHES = 'hatches.html'
export const LAY = 'lay.html'
export const TRAITS = 'traits.html'
export const STRAINS = 'strains.html'
export const FOUNDERS = 'founders.html'
export const MALES = 'males.html'
export const ROTATION = 'rotation.html'
export const DOUBTS = 'doubts.html'
export const CHOOSING = 'choosing.html'
export const VIGOUR = 'vigour.html'
export const KEEPERS = 'keepers.html'
export const SHOWS = 'shows.html'
export const STANDARD = 'standard.html'
export const CLAUSES = 'clauses.html'
export const SCORE_SHEET = 'score-sheet.html'
export const DOSSIER = 'dossier.html'
/** as PDFs, when those are asked for */
export const STANDARD_PDF = 'standard.pdf'
export const DOSSIER_PDF = 'dossier.pdf'
export const DIARY = 'diary.html'
export const CARE = 'care.html'
export const METHODS = 'methods.html'
export const DOWNLOADS = 'downloads.html'
export const DRAFT_HISTORY = 'standard/changes.html'
export const RECORD_FORMATS = 'record-formats.html'
export const PROBLEM_MANUAL = 'problems.html'

export const SUMMARIES = 'summaries.html'
/** A step that is called like a year stands apart from the season. */
export const summaryPath = ({of, name}: {readonly of: 'season' | 'step'; readonly name: string}): string =>
  `summaries/${of === 'step' && /^\d+$/.test(fileName(name)) ? 'steps/' : ''}${fileName(name)}.html`

export const stepPath = (label: Step['label']): string => `steps/${fileName(label)}.html`
export const birdsByStepPath = (label: Step['label'], part = 1): string => `birds/by-step/${fileName(label)}${part === 1 ? '' : `-${part}`}.html`
export const birdPath = (bird: Bird): string => `birds/${bird.id}.html`
export const penPath = (pen: Pen): string => `pens/${fileName(pen.id)}.html`
export const hatchPath = (hatch: Hatch): string => `hatches/${fileName(hatch.id)}.html`
export const traitPath = (trait: Trait): string => `traits/${fileName(trait.id)}.html`
export const strainPath = (strain: Strain): string => `strains/${fileName(strain.id)}.html`
/** Places on a page begin with a letter. */
export const keeperAnchor = (keeper: Keeper): string => `is-${fileName(keeper.id)}`
/** where `CHOOSING` tells of a step, for the steps of `choosingSteps` */
export const choosingAnchor = (label: Step['label']): string => `step-${fileName(label)}`
export const careAnchor = (entry: CareEntry): string => `on-${fileName(entry.id)}`
export const showPath = (show: Show): string => `shows/${fileName(show.id)}.html`
/** a clause of the latest draft, by its anchor there */
export const clauseLink = (anchor: string): string => `${STANDARD}#${anchor}`
export const draftPath = (draft: Draft): string => `standard/${draft.number}.html`
export const diaryPath = (entry: DiaryEntry): string => `diary/${fileName(entry.id)}.html`
export const carePath = (entry: CareEntry): string => `${CARE}#${careAnchor(entry)}`
