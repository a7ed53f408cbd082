/** How every figure of the site is worked: question, definition, edges, source, and an example made by the figure's own code. */
import {METHODS as METHODS_PATH} from './links.ts'
import {carriersInStep} from './methods/carriers-in-step.ts'
import {changesMethod} from './methods/changes.ts'
import {choosingMalesMethods} from './methods/choosing-males.ts'
import {chromosomeMethods} from './methods/chromosomes.ts'
import {clausesMethod} from './methods/clauses.ts'
import {coverageView, type CoverageView} from './methods/coverage.ts'
import {descentMethods} from './methods/descent.ts'
import {doubtfulDescentMethods} from './methods/doubtful-descent.ts'
import {evennessOfStepsMethods} from './methods/evenness-of-steps.ts'
import {evidenceMethods} from './methods/evidence.ts'
import {foundersLeftMethods} from './methods/founders-left.ts'
import {growth} from './methods/growth.ts'
import {hatchRates} from './methods/hatch.ts'
import {heredityBreedMethods} from './methods/heredity-breed.ts'
import {heredityPlanningMethods} from './methods/heredity-planning.ts'
import {heredityMethods} from './methods/heredity.ts'
import {inbreedingMethods} from './methods/inbreeding.ts'
import {lifeAndLayMethods} from './methods/life-and-lay.ts'
import type {Method} from './methods/method.ts'
import {oldBloodMethods} from './methods/old-blood.ts'
import {rateMethods} from './methods/rate.ts'
import {share, stateShares} from './methods/share.ts'
import {evenness, meanAndSpread, withinTenth} from './methods/spread.ts'
import {showMethods} from './methods/shows.ts'
import {scoringMethods} from './methods/scoring.ts'
import {trueBredRate} from './methods/true-bred.ts'
import {vigourMethods} from './methods/vigour.ts'
import type {Page} from './page.ts'

/** The entries in the order of the page, under the subjects of its table of contents. */
export const METHOD_CHAPTERS: readonly {readonly title: string; readonly methods: readonly Method[]}[] = [
  {title: 'Shares, evenness and grades', methods: [share, stateShares, trueBredRate, carriersInStep, meanAndSpread, evenness, withinTenth, ...evennessOfStepsMethods, growth, ...scoringMethods]},
  {title: 'Hatch, life and lay', methods: [hatchRates, ...lifeAndLayMethods]},
  {title: 'Descent and inbreeding', methods: [...descentMethods, ...inbreedingMethods, ...doubtfulDescentMethods, ...chromosomeMethods]},
  {title: 'Founders, males and pens', methods: [...foundersLeftMethods, ...oldBloodMethods, ...choosingMalesMethods, ...rateMethods]},
  {title: 'Heredity', methods: [...heredityMethods, ...heredityBreedMethods, ...heredityPlanningMethods]},
  {title: 'Choosing and vigour', methods: [...vigourMethods]},
  {title: 'Shows', methods: [...showMethods]},
  {title: 'Evidence', methods: [clausesMethod, changesMethod, ...evidenceMethods]},
]

export const METHODS: readonly Method[] = METHOD_CHAPTERS.flatMap(({methods}) => methods)

export interface MethodsView {
  readonly chapters: readonly {readonly title: string; readonly methods: readonly {readonly id: string; readonly title: string}[]}[]
  readonly methods: readonly (Omit<Method, 'example'> & {readonly given: string; readonly gives: string})[]
  readonly coverage: CoverageView
}

export function methodsPage(): Page {
  const view: MethodsView = {
    chapters: METHOD_CHAPTERS.map(({title, methods}) => ({title, methods: methods.map(({id, title: name}) => ({id, title: name}))})),
    methods: METHODS.map(({example, ...method}) => ({...method, given: example.given, gives: example.gives()})),
    coverage: coverageView(),
  }
  return {
    path: METHODS_PATH, template: 'methods', title: 'Methods', section: 'methods', view,
    search: {kind: 'methods', words: METHODS.map(method => method.title).join(' ')},
  }
}

