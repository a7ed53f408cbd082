/** The closed list of rules that hold between files, in the order of the manual. */
import type {Rule} from './rule.ts'
import * as afterAsOf from './after-as-of.ts'
import * as bandInDoubt from './band-in-doubt.ts'
import * as bandTwice from './band-twice.ts'
import * as chancesDoNotSum from './chances-do-not-sum.ts'
import * as classOfOtherSex from './class-of-other-sex.ts'
import * as clauseUnknown from './clause-unknown.ts'
import * as farFromTarget from './far-from-target.ts'
import * as fileMisnamed from './file-misnamed.ts'
import * as hatchBeforePen from './hatch-before-pen.ts'
import * as hatchCounts from './hatch-counts.ts'
import * as inTwoPens from './in-two-pens.ts'
import * as incubationOdd from './incubation-odd.ts'
import * as laidAfterSet from './laid-after-set.ts'
import * as leftBeforeHatched from './left-before-hatched.ts'
import * as loopInDescent from './loop-in-descent.ts'
import * as maleLaid from './male-laid.ts'
import * as noMaleThen from './no-male-then.ts'
import * as noOrigin from './no-origin.ts'
import * as noProject from './no-project.ts'
import * as noTarget from './no-target.ts'
import * as notInPen from './not-in-pen.ts'
import * as parentDead from './parent-dead.ts'
import * as parentTooYoung from './parent-too-young.ts'
import * as photoWithoutWords from './photo-without-words.ts'
import * as recordsDisagree from './records-disagree.ts'
import * as sameName from './same-name.ts'
import * as scoredAfterLeaving from './scored-after-leaving.ts'
import * as seenBeforeHatched from './seen-before-hatched.ts'
import * as stepContradicted from './step-contradicted.ts'
import * as tallyOverdrawn from './tally-overdrawn.ts'
import * as tooManyChicks from './too-many-chicks.ts'
import * as tooManyEggs from './too-many-eggs.ts'
import * as twiceInPen from './twice-in-pen.ts'
import * as twoOrigins from './two-origins.ts'
import * as unitMixed from './unit-mixed.ts'
import * as unknownBand from './unknown-band.ts'
import * as unknownHatch from './unknown-hatch.ts'
import * as unknownJudge from './unknown-judge.ts'
import * as unknownKeeper from './unknown-keeper.ts'
import * as unknownLocus from './unknown-locus.ts'
import * as unknownPen from './unknown-pen.ts'
import * as unknownPhoto from './unknown-photo.ts'
import * as unknownState from './unknown-state.ts'
import * as unknownStep from './unknown-step.ts'
import * as unknownStrain from './unknown-strain.ts'
import * as unknownTally from './unknown-tally.ts'
import * as unknownTrait from './unknown-trait.ts'
import * as unlikelyWeight from './unlikely-weight.ts'
import * as weighedTwice from './weighed-twice.ts'
import * as wrongParentSex from './wrong-parent-sex.ts'
import * as yearFarAhead from './year-far-ahead.ts'

export const RULES: readonly Rule[] = [
  noProject, sameName,
  unknownStrain, unknownTrait, unknownKeeper, unknownBand, unknownPen, unknownHatch, unknownTally, unknownJudge, unknownPhoto, unknownStep, unknownState, unknownLocus,
  noTarget, unitMixed, clauseUnknown,
  fileMisnamed, bandTwice, bandInDoubt, noOrigin, twoOrigins, recordsDisagree,
  loopInDescent, parentTooYoung, parentDead, wrongParentSex, notInPen, chancesDoNotSum, stepContradicted,
  hatchBeforePen, noMaleThen, laidAfterSet, incubationOdd, hatchCounts, tooManyChicks, tallyOverdrawn,
  leftBeforeHatched, seenBeforeHatched, scoredAfterLeaving, maleLaid, inTwoPens, twiceInPen, tooManyEggs, unlikelyWeight, farFromTarget, weighedTwice,
  classOfOtherSex, afterAsOf, yearFarAhead, photoWithoutWords,
]
