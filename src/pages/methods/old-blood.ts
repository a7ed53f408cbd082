import {withKinship} from '../../findings/assumed-kinship.ts'
import {mostCopies} from '../../findings/donor-gene.ts'
import {baseShares} from '../../pedigree/base-shares.ts'
import {coancestry} from '../../pedigree/coancestry.ts'
import type {Base} from '../../pedigree/pedigree.ts'
import {shareSpread} from '../../pedigree/share-spread.ts'
import {strainHeterozygosity} from '../../pedigree/strain-heterozygosity.ts'
import {countWord, listWords, percentSign} from '../numbers.ts'
import {exampleFlock} from './example-flock.ts'
import type {Method} from './method.ts'

/** Crossed chicks of two donor hens, each with the hens it may be of: three of the first, one of the second, one of either. */
const CROSSED = [['first'], ['first'], ['first'], ['second'], ['first', 'second']] as const

const copies: Method = {
  id: 'gene-copies',
  title: 'Copies of the donor’s gene still in the flock',
  question: 'Every bird shows the look we brought in. On how many drawings from the donors does that rest?',
  definition: 'A copy is drawn whenever a donor bird has a crossed chick. It is still there when a way leads from that chick to one of the birds bred from, from parent to possible parent, through birds none of which is denied the gene by its counted look. Two chicks of one donor may have drawn the same copy, and a donor has two: so no donor bird gives more than two, a hen at a place on the Z one. Few copies mean that what lies around the gene is the same piece in nearly every bird.',
  formula: 'copies ≤ Σ over donor birds of min(2, crossed chicks with a way that is open)',
  letters: [],
  edges: `- The number is what there can be **at most**: a bird that may carry the gene counts as if it did.
- Where one copy shows, a bird scored otherwise is taken to have none. Where two are needed, or the records do not say, looks rule out nothing.
- A chick that may be of several donor birds is one copy, given to whichever leaves most copies.
- A hen gives a gene on the Z to her sons alone.`,
  source: 'Worked out for these pages.',
  example: {
    given: 'Two donor hens: three crossed chicks of the first, one of the second and one of either have a way to the flock. Elsewhere than on the Z, and on it:',
    gives: () => `${listWords([2, 1].map(each => countWord(mostCopies(CROSSED, () => each))))} copies at most.`.replace(/^./, letter => letter.toUpperCase()),
  },
}

const STRAIN: Base = {inbreeding: 0.06, kinship: 0.03, within: null}
const [OLD, NEW] = [0, 1] as const
const line = exampleFlock([
  {name: 'cock', base: OLD}, {name: 'hen', base: OLD}, {name: 'donor', base: NEW}, {name: 'F1', sire: 'cock', dam: 'donor'}, {name: 'other', sire: 'cock', dam: 'hen'}, {name: 'chick', sire: 'other', dam: 'F1'},
], [STRAIN, {inbreeding: 0, kinship: 0, within: null}])

const assumed: Method = {
  id: 'assumed-kinship',
  title: 'What if the old strain is closer kin?',
  question: 'Nobody has the old strain’s pedigrees. How much do our figures lean on what we believe of it?',
  definition: 'F of the same birds, worked again with the founders of the recurrent strain taken as strangers, at a kinship of 5% and of 10%, beside what the strain’s record states. Everything else stays as it is. Where the mean F hardly moves, the belief matters little; what our own matings add is in all of them.',
  formula: 'mean F at K(two founders of the strain) = 0, 5% and 10%',
  letters: [],
  edges: `- A flock within the strain that states more kinship than its strain keeps it, where it is more; two birds that state theirs keep it.
- A kinship that could not be, above ½ (1 + F) of the strain, is not tried.
- Birds from outside, of which nothing but the strain is known, lean on it in the same way.`,
  source: 'Which kinships are tried is ours; they are no estimate of any strain’s.',
  example: {
    given: 'A cock of a strain with a stated kinship of 3% was mated to a hen of it and to a donor hen; F of the chick of his son by the one and his daughter by the other, with the strain’s founders as strangers, as stated, at 5% and at 10%:',
    gives: () => `${listWords([0, STRAIN.kinship, 0.05, 0.1].map(kinship => percentSign(coancestry(withKinship(line.pedigree, OLD, kinship)).inbreeding[line.of('chick')]?.mean ?? NaN)))}.`,
  },
}

const PLAIN: Base = {inbreeding: 0, kinship: 0, within: null}
const backcrossed = exampleFlock([
  {name: 'donor', sex: 'female', base: NEW}, ...[1, 2, 3].map(turn => ({name: `cock ${turn}`, sex: 'male', base: OLD} as const)),
  {name: 'F1', sex: 'female', sire: 'cock 1', dam: 'donor'}, {name: 'brother', sex: 'male', sire: 'cock 2', dam: 'F1'}, {name: 'sister', sex: 'female', sire: 'cock 2', dam: 'F1'},
  {name: 'inside', sire: 'brother', dam: 'sister'}, {name: 'back', sire: 'cock 3', dam: 'sister'},
], [PLAIN, PLAIN])

const nextBackcross: Method = {
  id: 'next-backcross',
  title: 'A further backcross, or not',
  question: 'Should I backcross again?',
  definition: 'Two kinds of chicks are reckoned as if they had been bred: of any cock with any hen of the step the breed stands at, and of any bird of it with a new bird of the recurrent strain. Side by side stand the strain’s share and how far the true share strays from it, F, and how many genes have their copies from two strains. Beside them stands how often each wanted look was counted, in this step and in the latest backcross. Whether it is worth it is for the breeder to say.',
  formula: 'share after = ½ (share + 1)        F after = K(a bird of the step, a bird of the strain)',
  letters: [['K', 'kinship; that of the strain’s founders, for a bird not bred here']],
  edges: `- Reckoned for the birds of the step that are bred from, else for all of it that live.
- With the birds of the strain that live here F is given apart; they may be kin.
- A donor gene that every bird has twice, every chick of a backcross has once.
- What looks hide cannot be told from looks, so no look of the next chicks is forecast.`,
  source: 'As for the shares, their spread, F and H, by the same functions.',
  example: {
    given: 'From brother and sister of a first backcross, strangers otherwise: mated together, then the sister to a new cock of the strain.',
    gives: () => {
      const share = baseShares(backcrossed.pedigree, 'autosome', OLD), spread = shareSpread(backcrossed.pedigree, OLD), vigour = strainHeterozygosity(backcrossed.pedigree), {inbreeding} = coancestry(backcrossed.pedigree)
      const of = (name: string): string => {
        const bird = backcrossed.of(name)
        return `share ${percentSign(share[bird] ?? NaN)}, give or take ${percentSign(spread[bird] ?? NaN)}, F ${percentSign(inbreeding[bird]?.mean ?? NaN)}, H ${percentSign(vigour[bird] ?? NaN)}`
      }
      return `Inside the line ${of('inside')}; backcrossed ${of('back')}.`
    },
  },
}

export const oldBloodMethods: readonly Method[] = [copies, assumed, nextBackcross]
