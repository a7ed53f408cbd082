/** Mean F and mean kinship of every step in one chart, with the project's limits, its caption, words and table. */
import {hasRows} from '../charts/chart-spec.ts'
import {closenessByStep} from '../charts/closeness-by-step.ts'
import type {Findings} from '../findings/study.ts'
import {limitsShort, listWords, NOTHING, percent, percentSign} from './numbers.ts'
import type {Cell, Figure} from './page.ts'

/** Null while no bird of a step is banded. */
export function closenessFigure({closeness, closenessLimits, book: {project}}: Findings, head: string): Figure | null {
  const rows = closeness.map(({step, mean, meanLow, meanHigh, kinship}, place) => ({
    label: step, inbreeding: mean, range: percent(meanLow) === percent(meanHigh) ? null : {low: meanLow, high: meanHigh}, kinship, allowed: closenessLimits[place]?.allowed ?? null,
  }))
  if (!hasRows(rows)) return null
  const {matingInbreeding: ofMating, inbreedingPerGeneration: perGeneration} = project.limits
  const limits = [
    ...(ofMating === null ? [] : [`Dotted: the project’s limit for a mating, ${percentSign(ofMating)}.`]),
    ...(perGeneration !== null && rows.some(({allowed}) => allowed !== null) ? [`Tick: the F that a step might have had at the project’s ${percentSign(perGeneration)} a generation, from the step before it; an egg above it has risen faster.`] : []),
  ]
  return {
    kind: 'figure', id: 'closeness', name: 'inbreeding-and-kinship-by-step', head, title: 'Inbreeding and kinship by step',
    caption: ['Egg: mean F of the banded birds, %, its line where parents are in doubt. Ring: their mean kinship, where F goes if they are mated at random. A backcross sets F back, so only steps mated inside the line tell of a rise.', ...limits].join(' '),
    description: `Mean F and mean kinship: ${listWords(rows.map(({label, inbreeding, kinship}) => `${percent(inbreeding)} and ${percent(kinship)} in ${label}`))} per cent.`,
    spec: closenessByStep(rows, ofMating),
    table: {
      columns: [
        {head: 'Step'}, {head: 'Birds', number: true}, {head: 'F, %', number: true}, {head: 'By who the parents are', number: true}, {head: 'Kinship, %', number: true},
      ],
      rows: closeness.map(({step, birds, mean, meanLow, meanHigh, kinship}): readonly Cell[] => [
        step, String(birds), percent(mean), percent(meanLow) === percent(meanHigh) ? NOTHING : limitsShort({low: meanLow, high: meanHigh}), percent(kinship),
      ]),
    },
  }
}
