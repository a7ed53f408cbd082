/** Every kind of Markdown record, in the order of the reference page. */
import {birdKind} from './schema/bird.ts'
import {careKind} from './schema/care.ts'
import {diaryKind} from './schema/diary.ts'
import {draftKind} from './schema/draft.ts'
import {hatchKind} from './schema/hatch.ts'
import {keeperKind} from './schema/keeper.ts'
import {locusKind} from './schema/locus.ts'
import {penKind} from './schema/pen.ts'
import {projectKind} from './schema/project.ts'
import {requirementsKind} from './schema/requirements.ts'
import {showKind} from './schema/show.ts'
import {stepKind} from './schema/step.ts'
import {strainKind} from './schema/strain.ts'
import {traitKind} from './schema/trait.ts'

export const KINDS = {
  project: projectKind, strain: strainKind, trait: traitKind, locus: locusKind, keeper: keeperKind, bird: birdKind, pen: penKind, hatch: hatchKind,
  show: showKind, draft: draftKind, requirements: requirementsKind, care: careKind, diary: diaryKind, step: stepKind,
} as const
export type KindId = keyof typeof KINDS
