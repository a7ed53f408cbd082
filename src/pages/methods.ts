/** How every figure of the site is worked: question, definition, edges, source, and an example made by the figure's own code. */
import {METHODS as METHODS_PATH} from './links.ts'
import {choosingMalesMethods} from './methods/choosing-males.ts'
import {chromosomeMethods} from './methods/chromosomes.ts'
import {descentMethods} from './methods/descent.ts'
import {doubtfulDescentMethods} from './methods/doubtful-descent.ts'
import {evennessOfStepsMethods} from './methods/evenness-of-steps.ts'
import {evidenceMethods} from './methods/evidence.ts'
import {foundersLeftMethods} from './methods/founders-left.ts'
import {hatchRates} from './methods/hatch.ts'
import {heredityBreedMethods} from './methods/heredity-breed.ts'
import {heredityPlanningMethods} from './methods/heredity-planning.ts'
import {heredityMethods} from './methods/heredity.ts'
import {inbreedingMethods} from './methods/inbreeding.ts'
import type {Method} from './methods/method.ts'
import {oldBloodMethods} from './methods/old-blood.ts'
import {rateMethods} from './methods/rate.ts'
import {share, stateShares} from './methods/share.ts'
import {evenness, meanAndSpread, withinTenth} from './methods/spread.ts'
import {scoringMethods} from './methods/scoring.ts'
import {trueBredRate} from './methods/true-bred.ts'
import {vigourMethods} from './methods/vigour.ts'
import type {Page} from './page.ts'

export const METHODS: readonly Method[] = [
  share, stateShares, trueBredRate, meanAndSpread, evenness, withinTenth, ...evennessOfStepsMethods, hatchRates, ...scoringMethods, ...descentMethods,
  ...inbreedingMethods, ...doubtfulDescentMethods, ...chromosomeMethods, ...foundersLeftMethods, ...oldBloodMethods,
  ...choosingMalesMethods, ...rateMethods, ...heredityMethods, ...heredityBreedMethods, ...heredityPlanningMethods, ...vigourMethods, ...evidenceMethods,
]

export interface MethodsView {
  readonly methods: readonly (Omit<Method, 'example'> & {readonly given: string; readonly gives: string})[]
}

export function methodsPage(): Page {
  const view: MethodsView = {methods: METHODS.map(({example, ...method}) => ({...method, given: example.given, gives: example.gives()}))}
  return {
    path: METHODS_PATH, template: 'methods', title: 'Methods', section: 'methods', view,
    search: {kind: 'methods', words: METHODS.map(method => method.title).join(' ')},
  }
}

