import {baseShares} from '../../pedigree/base-shares.ts'
import {coancestry} from '../../pedigree/coancestry.ts'
import {donorSegment} from '../../pedigree/donor-segment.ts'
import type {Base} from '../../pedigree/pedigree.ts'
import {shareSpread} from '../../pedigree/share-spread.ts'
import {strainHeterozygosity} from '../../pedigree/strain-heterozygosity.ts'
import {percentSign, rounded} from '../numbers.ts'
import {exampleFlock} from './example-flock.ts'
import type {Method} from './method.ts'

const sibs = exampleFlock([
  {name: 'cock', sex: 'male'}, {name: 'hen', sex: 'female'}, {name: 'other cock', sex: 'male'}, {name: 'other hen', sex: 'female'},
  {name: 'son', sex: 'male', sire: 'cock', dam: 'hen'}, {name: 'by one sire', sex: 'female', sire: 'cock', dam: 'other hen'}, {name: 'by one dam', sex: 'female', sire: 'other cock', dam: 'hen'},
])

function onBoth(one: string, other: string): string {
  const [a, b] = [sibs.of(one), sibs.of(other)]
  return `${percentSign(coancestry(sibs.pedigree, 'Z').between(a, b))} on the Z and ${percentSign(coancestry(sibs.pedigree).between(a, b))} elsewhere`
}

const onZ: Method = {
  id: 'z-inbreeding',
  title: 'Inbreeding on the Z',
  question: 'Many colour genes sit on the Z. How inbred is a cock there?',
  definition: 'A cock has two copies of the Z, one of each parent; a hen has one, her sire’s. So a hen hands on her father’s Z, never her mother’s, and a cock’s F on the Z follows other ways than elsewhere. A hen with her one copy has none.',
  formula: 'K(cock, b) = ½ K(sire, b) + ½ K(dam, b)        K(hen, b) = K(her sire, b)        K(hen, hen) = 1',
  letters: [],
  edges: '- A bird of unknown sex is taken as half of each.\n- Kinships stated of founders are taken to hold on the Z as well.',
  source: 'Fernando and Grossman 1990, Theoretical and Applied Genetics 80:75 (from memory).',
  example: {
    given: 'A cockerel of half sibs: his dam a daughter of his grandsire by another hen; then of half sibs by one dam.',
    gives: () => `By one sire ${onBoth('son', 'by one sire')}; by one dam ${onBoth('son', 'by one dam')}.`,
  },
}

const STRAINS: readonly Base[] = [{inbreeding: 0, kinship: 0, within: null}, {inbreeding: 0, kinship: 0, within: null}]
const [RECURRENT, DONOR] = [0, 1] as const
const ladder = exampleFlock([
  {name: 'donor hen', sex: 'female', base: DONOR}, ...[1, 2, 3, 4].map(turn => ({name: `cock ${turn}`, sex: 'male', base: RECURRENT} as const)),
  {name: 'F1 son', sex: 'male', sire: 'cock 1', dam: 'donor hen'}, {name: 'F1', sex: 'female', sire: 'cock 1', dam: 'donor hen'},
  {name: 'F2', sire: 'F1 son', dam: 'F1'},
  {name: 'BC1', sex: 'female', sire: 'cock 2', dam: 'F1'}, {name: 'BC2', sex: 'female', sire: 'cock 3', dam: 'BC1'}, {name: 'BC3', sex: 'female', sire: 'cock 4', dam: 'BC2'},
], STRAINS)

function donorIn(name: string): string {
  const of = (transmission: 'autosome' | 'Z' | 'dam line') => percentSign(baseShares(ladder.pedigree, transmission, DONOR)[ladder.of(name)] ?? NaN)
  return `${of('autosome')} of the autosomes, ${of('Z')} of the Z, ${of('dam line')} of the mother’s line`
}

const byChromosome: Method = {
  id: 'shares-by-chromosome',
  title: 'Strain shares on the autosomes, the Z and the mother’s line',
  question: 'Is a bird that is 7/8 of our strain so in every part?',
  definition: 'No. The halving of every backcross holds for the autosomes. On the Z a daughter has wholly what her sire has: with cocks of the recurrent strain over hens of the donor’s line, she has lost the donor’s Z at once. The mother’s line (the mitochondria, and the W of hens) goes whole from hen to chick and never changes while hens of that line are bred from. The three are shown apart.',
  formula: 'autosomes: (sire + dam) / 2        Z: a cock (sire + dam) / 2, a hen her sire’s        mother’s line: the dam’s',
  letters: [],
  edges: '- A bird of unknown sex is half of each on the Z.\n- Parents in doubt: the mean over them, each with its chance.',
  source: 'Follows from how the chromosomes are handed down; for the autosomes university lessons on backcrossing.',
  example: {given: 'A donor hen under a cock of the recurrent strain; what is left of the donor in their son, their daughter and her daughter by another such cock:', gives: () => `${['F1 son', 'F1', 'BC1'].map(donorIn).join('; ')}.`},
}

const spread: Method = {
  id: 'share-spread',
  title: 'How far a share strays from its expectation',
  question: 'Expected 87.5%. How much may a single bird really have?',
  definition: 'Genes come in long pieces, so chicks of one mating differ widely about the expected share. The standard deviation is worked exactly from the descent of each bird and the lengths of the fowl’s autosomes, with crossovers independent of each other. About two birds in three lie within one standard deviation.',
  formula: 'variance = mean over all pairs of places of P(of the strain at both) − (expected share)²',
  letters: [],
  edges: '- The lengths are those of the 28 mapped autosomes; the ten smallest have no map worth the name, about 2% of the genes.\n- Birds chosen by their looks are not drawn by chance: around the chosen gene they hold more.\n- Doubt about parents adds to the spread.',
  source: 'Hill 1993, Journal of Heredity 84:212, and Stam and Zeven 1981, Euphytica 30:227, for backcrosses (from memory); for any descent worked out for these pages. Map: Groenen et al. 2009, Genome Research 19:510; Elferink et al. 2010, BMC Genetics 11:11; the length of each chromosome from memory and rounded.',
  example: {
    given: 'Standard deviation of the recurrent share in BC1, BC2 and BC3:',
    gives: () => {
      const found = shareSpread(ladder.pedigree, RECURRENT)
      return `${['BC1', 'BC2', 'BC3'].map(name => percentSign(found[ladder.of(name)] ?? NaN)).join(', ')}.`
    },
  },
}

const vigour: Method = {
  id: 'heterozygosity',
  title: 'Strain heterozygosity: H',
  question: 'How much of the vigour of the cross is left?',
  definition: '**H** is the chance that the two copies of a gene come from different strains. The vigour of a cross follows it: all of it in the F1, half in the first backcross and in the F2, less with every further backcross.',
  formula: 'H = 1 − F, with every strain taken as one single copy of each gene',
  letters: [],
  edges: '- An expectation, as F is. Inter se it stays as it is, but for what kin matings take.\n- A parent of no stated strain counts as of a strain of its own.',
  source: 'Dickerson 1973, Animal Breeding and Genetics Symposium (vigour in proportion to H; from memory).',
  example: {
    given: 'F1, F2, BC1, BC2 and BC3:',
    gives: () => {
      const found = strainHeterozygosity(ladder.pedigree)
      return `${['F1', 'F2', 'BC1', 'BC2', 'BC3'].map(name => percentSign(found[ladder.of(name)] ?? NaN)).join(', ')}.`
    },
  },
}

const segment: Method = {
  id: 'donor-segment',
  title: 'What stays around the chosen gene',
  question: 'We chose the donor’s gene at every backcross. How much of the donor came along with it?',
  definition: 'Neighbours of the chosen gene come with it until a crossover parts them. The piece of the donor’s chromosome that is left on either side is longer than the expected share makes one think, and shrinks slowly.',
  formula: 'expected length on one side = (1 − e^(−n × x)) / n        morgans',
  letters: [['n', 'backcrosses, from the F1’s on'], ['x', 'morgans from the gene to that end of the chromosome']],
  edges: '- Crossovers are taken as independent of each other.\n- With no backcross the whole arm is left. Inter se matings after it do not count.',
  source: 'Hanson 1959, Genetics 44:833; Stam and Zeven 1981, Euphytica 30:227 (both from memory).',
  example: {
    given: 'A gene in the middle of a chromosome of 100 centimorgans, after six backcrosses, both sides together:',
    gives: () => `${rounded(200 * donorSegment(6, 0.5), 1)} centimorgans.`,
  },
}

export const chromosomeMethods: readonly Method[] = [onZ, byChromosome, spread, vigour, segment]
