/** Times descent on one drawn pedigree, in a process of its own: `descent-once.ts <birds> <share of hens in doubt> <living birds, the last hatched>`. */
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {drawPedigree} from './draw-pedigree.ts'

const [birds = 0, doubtful = 0, living = 0] = process.argv.slice(2).map(Number)
const pedigree = drawPedigree(20190211, {birds, doubtful})
const begun = performance.now()
const {inbreeding, among} = coancestry(pedigree)
const worked = performance.now()
const rows = among(Array.from({length: living}, (_, index) => birds - living + index))
const ended = performance.now()
const last = inbreeding.slice(-1000)
process.stdout.write(JSON.stringify({
  inbreeding: worked - begun, kinship: ended - worked, peakMemory: process.resourceUsage().maxRSS * 1024, pairs: rows.length ** 2, meanF: last.reduce((sum, {mean}) => sum + mean, 0) / last.length,
}))
