/** Times the genotypes of one drawn flock at one locus, in a process of its own: `heredity-once.ts <birds> <share of hens in doubt>`. */
import {genotypeProbabilities} from '../../src/heredity/genotype-probabilities.ts'
import {drawPedigree} from './draw-pedigree.ts'
import {dropGenes} from './drop-genes.ts'

const [birds = 0, doubtful = 0] = process.argv.slice(2).map(Number)
const {flock} = dropGenes(20190211, drawPedigree(20190211, {birds, doubtful}), {dominant: 0.5, scored: 0.8, wrong: 0.01})
const before = process.cpuUsage()
const found = genotypeProbabilities(flock)
let exact = 0
for (let animal = 0; animal < birds; animal++) {
  found.at(animal, 0)
  if (found.isExact(animal, 0)) exact++
}
const {user, system} = process.cpuUsage(before)
process.stdout.write(JSON.stringify({processor: (user + system) / 1000, peakMemory: process.resourceUsage().maxRSS * 1024, exact: exact / birds, sweeps: found.sweeps, change: found.change}))
