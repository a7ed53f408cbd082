import {readFileSync} from 'node:fs'
import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {filesOf} from '../folders/files-of.ts'
import {METHODS, methodsPage, type MethodsView} from '../../src/pages/methods.ts'

/** What each worked example must say. The numbers come from the source named; the words around them are ours. */
const EXPECTED: Readonly<Record<string, string>> = {
  // by hand 40, 44 and 50 of five; Wilson's formula worked apart in Python 3 for 3/5
  clauses: '3 of 5 (60.0%, 23.1 to 88.2). Unscored: 1.',
  'draft-changes': '“Of medium length, ~~well up~~ **carried at 45 degrees**; sickles curved.” The range is narrower.',
  // Newcombe 1998, Stat. Med. 17:857–872, table I, method 3: 81/263 0.2553 to 0.3662, 0/20 0 to 0.1611; method 5: 0.2527 to 0.3676, 0 to 0.1684
  share: '81 of 263 is 30.8% (25.5 to 36.6); 0 of 20 is 0.0% (0.0 to 16.1). By Clopper and Pearson 25.3 to 36.8 and 0.0 to 16.8.',
  // Wilson's formula worked apart in Python 3 for 59 of 62: 0.8671 to 0.9834
  'state-shares': '59 of 62 is 95.2% (86.7 to 98.3).',
  // Wilson's formula worked apart in Python 3: 59/66 0.797 to 0.948, 63/66 0.875 to 0.984
  'true-bred': '59 of 62 (95.2%, 86.7 to 98.3). With the 4 all failing: 59 of 66 (89.4%, 79.7 to 94.8). With the 4 all passing: 63 of 66 (95.5%, 87.5 to 98.4).',
  // by hand: of two carriers' white chicks two in three carry, 5 × 2/3
  'carriers-in-step': '3.3 of 5.',
  // by hand: 57 days are 8 weeks by ratio, 133 within 10 of 140, 366 nearest 364; mean 2430/3, SD √((90² + 40² + 130²)/2)
  growth: 'They stand at 8 weeks, 20 weeks and 52 weeks. Mean 810 g, SD 115 g.',
  // mean 622/3, SD √(92.67/2), by hand
  mean: 'mean 207.3 g, SD 6.8 g.',
  // by hand: variances 1 and 4, SD √2.5, CV² (0.1² + 0.1²)/2; together mean 15, SD √(160/5). Vangel's formula for 8.6 % of 27, by hand.
  evenness: '6 birds, SD 1.58, CV 10.0% on 4 degrees of freedom. Thrown together, the same six would show a CV of 37.7%. CV 8.6% (6.8 to 11.8).',
  // by hand: 945 and 1155 lie exactly on the limits
  'within-tenth': '3 of 4 lie within a tenth: the last one is a gram outside.',
  // z and P by an independent working of Cochran's formula; US EPA QA/G-9S, data example: S 22, P 0.092, slope 1
  trend: 'z 2.68, P 0.007. S 22, P 0.092, 1.0 a step.',
  // Newcombe 1998, Stat. Med. 17:873–890, table II (from memory); F 5.4627, P 0.0476 and the ranks worked apart in Python 3; √(0.08² / 0.12²) by hand, McKay's bend beyond the digits shown
  change: '20.0 points (5.2 to 33.4). P 0.048. 0.67 times. Higher in 75.0%, P 0.667, shift 1.0.',
  // by hand: seen 17/20, chance 14/25
  grades: 'κ 0.66.',
  // Wilson's formula worked apart in Python 3 for 43/48, 37/43 and 37/48
  hatch: 'Fertility 43 of 48 (89.6%, 77.8 to 95.5); hatch of fertile 37 of 43 (86.0%, 72.7 to 93.4); hatch of set 37 of 48 (77.1%, 63.5 to 86.7).',
  // Newcombe 1998, Stat. Med. 17:873–890, table II (a); Wilson's formula for 46/50 worked apart in Python 3; the families as in the test of familyShare
  'hatch-compared': '20.0 points (5.2 to 33.4). 92.0%, of these eggs 81.2 to 96.8, of eggs bred like these 59.7 to 98.9.',
  'kept-alike': 'no: season, machine.',
  // Kaplan & Meier 1958, their own example (from memory): 7/8, 7/10, 21/40, 21/80
  livability: '87.5%, 70.0%, 52.5% and 26.3%.',
  // as printed at thebigbookproject.org, “Hen-day vs. hen-housed egg production”: 92% and 91.08%
  lay: 'Hen-day 92.0%, hen-housed 91.1%.',
  // by hand: (6 − 1) + (1 + 5 − 0.4) kg; 10600/84
  feed: '10.60 kg eaten, 126 g a bird a day.',
  'against-standard': 'Inside from 2160 to 2640 g, both counted as inside.',
  // 2e(1 − e) = 0.06 has the root e = 0.0310, by hand; Wilson's formula for 6/100 likewise
  misscoring: '6 of 100 (6.0%, 2.8 to 12.5) differ, so one scoring is wrong with a chance of 3.1%.',
  'least-uniform': 'Comb, 59 of 62 (95.2%, 86.7 to 98.3), before skin, 61 of 62 (98.4%, 91.4 to 99.7).',
  steps: 'F2 is a cross, one generation inter se; BC1 is one backcross, no generations inter se; BC3F2 is three backcrosses, one generation inter se.',
  // Allard 1960: 1 − (1/2)^(n+1)
  'strain-share': '50.0%, 75.0%, 87.5%, 93.8%.',
  parents: 'Each is the sire with a chance of 50.0%.',
  // Wright 1922; Falconer & Mackay 1996, ch. 5: ¼, ⅛, ¼ and 1/16
  inbreeding: '25.0%, 12.5%, 25.0%, 6.3%.',
  // Mrode, table 2.1: relationships 0.6875 and 1.125, halved
  kinship: '34.4% and 56.3%.',
  // by hand: K of the two founders; ½ (5% + 5%)
  base: '5.0% and 5.0%.',
  // by hand: ½ · ¼
  'doubtful-parents': 'F is 12.5%.',
  // by hand: ½ · 25% + 0.3 · 12.5%
  range: 'F is 16.3% in the mean, from 0.0% to 25.0%, likeliest 25.0%.',
  // by hand: ½ (1 + 1) + ½ · 1
  completeness: 'One generation fully known, 1.5 equivalent: F is at least what is printed.',
  // by hand: a hen's Z is her sire's, so half sibs by a sire share it like a cock with his son, those by a dam not at all
  'z-inbreeding': 'By one sire 25.0% on the Z and 12.5% elsewhere; by one dam 0.0% on the Z and 12.5% elsewhere.',
  // by hand
  'shares-by-chromosome': '50.0% of the autosomes, 50.0% of the Z, 100.0% of the mother’s line; 50.0% of the autosomes, 0.0% of the Z, 100.0% of the mother’s line; 25.0% of the autosomes, 0.0% of the Z, 100.0% of the mother’s line.',
  // ¼ the variance of a gamete's share, the integral of ((1 − r)/2)^t − (¼)^t over pairs of places, worked apart in Python 3: 0.03708, 0.02999, 0.02134
  'share-spread': '3.7%, 3.0%, 2.1%.',
  // by hand: 1, ½, ½, ¼, ⅛
  heterozygosity: '100.0%, 50.0%, 50.0%, 25.0%, 12.5%.',
  // by hand: 2 (1 − e^(−3)) / 6 morgans
  'donor-segment': '31.7 centimorgans.',
  // by hand: 1 / (9/16 + 1/16)
  'founder-shares': 'A 75.0%, B 25.0%; fe 1.6.',
  'effective-ancestors': 'fe is 4.0, fa 2.0.',
  // by hand: mean kinship ½, and ½ (1 + ¼)
  'founder-genomes': '1.0; 0.8.',
  // by hand: 1/6; rates 1 − √0.875, 1 − √0.8125, 1 − √0.75, mean 0.09906, SD 0.0347, 1/(2 · 0.09906)
  rate: 'ΔF is 16.7%. The birds’ mean rate is 9.9%, Ne 5.0 with a standard error of 1.0.',
  // the same recursion held against flocks drawn bird by bird in tests/pedigree/mating-forecast.test.ts
  'mean-kinship': 'F 6.6%, 5.2%, 9.0%, 13.9% and 12.7%; kinship of two chicks 11.5%, 13.9%, 16.1%, 18.4% and 20.6%.',
  // an independent working of the clan recursion, printed to 0.1 %; the rolling pens as held against flocks drawn bird by bird in tests/pedigree/mating-forecast.test.ts
  'mating-systems': '7.6%, 14.2%, 20.4%; 14.3%, 22.6%, 30.0%; 36.2%, 52.0%, 63.8%; 20.1%, 30.5%, 39.4%; 15.4%, 25.7%, 34.7%.',
  // by hand: two of the first, one of the second and the one of either to her; on the Z one each
  'gene-copies': 'Four and two copies at most.',
  // by hand: ¼ (½ · 1.06 + k)
  'assumed-kinship': '13.3%, 14.0%, 14.5% and 15.8%.',
  // by hand: F ¼ (½ + ½); H 1 − ¼ (1 + 2 · ½ + ½) and ¼; the spread of a BC2 as above, that of the sibs’ chick as held against genes dropped in tests/pedigree/share-spread.test.ts
  'next-backcross': 'Inside the line share 75.0%, give or take 4.2%, F 25.0%, H 37.5%; backcrossed share 87.5%, give or take 3.0%, F 0.0%, H 25.0%.',
  // by hand: (6 + 3) / 2 against (2 + 15) / 2
  'males-for-pens': 'B to the first and A to the second: F 4.5% on average. The other way round it would be 8.5%.',
  // by hand: 2 · (½)^5 through A, (½)^4 through B
  'kin-reason': 'A gives 6.3% and B gives 6.3%: together 12.5%.',
  // by hand: ¼ (½ + 2 · ⅛ + ½), ¼ (⅜ + 2 · ⅛ + ½), ¼ (¼ + 2 · 1/16 + ½)
  'one-more-male': 'Mean kinship 31.3% as it is, 28.1% with the brother, 21.9% with the stranger.',
  // Wright 1931: 4 · 1 · 10 / 11, 4 · 4 · 16 / 20
  'census-size': 'Ne 3.6, 13.8% a generation; Ne 12.8, 3.9% a generation.',
  // Bayes' rule by hand: 2 / (2 + 2^n) against a yellow mate, 2·(3/4)^n / (1 + 2·(3/4)^n) against a carrier
  genotypes: '66.7%; 50.0%, 20.0%, 5.9%, 1.5%; 60.0%, 45.8%, 32.2%, 21.1%.',
  // by hand: a carrier is 0.375 / 0.9375 of white birds; 0.14 / 0.2
  'uncertain-sires': '70.0%.',
  // every possibility laid out apart in Python 3: 0.190112, 0.808672; 0.712227
  'genotypes-misscoring': '19.0%, 80.9%; 28.8% or 71.2%.',
  // by hand: 7/10 and 3/10
  'genotypes-exact': '70.0% or 30.0%, exact.',
  // Cuénot 1905: 2 to 1
  lethal: '66.7% and 33.3%.',
  // by hand: 2/3 · 2/3 · 1/4
  'mating-forecast': '11.1%.',
  // Davenport 1909, table 58 and the split comb F2: P .400 and 2e-26, worked apart in Python 3; 10/37 by hand; 0.1646 by adding up fractions in Python 3; Holm's procedure by hand
  segregation: 'P 0.40; under 0.001; 0.27; 0.16; 0.03, 0.06, 0.06, 0.02.',
  // by hand: (4 + 3) / 22; Wilson's formula worked apart in Python 3
  frequencies: '31.8%, 7 of 22 genes (16.4 to 52.7).',
  // by hand: 1/2 + 1/2 · 1/4, and (3/4)^2
  fixation: '62.5%; 56.3%.',
  // by hand: 1 to 1/2
  'likeliest-sire': '66.7%.',
  // by hand: 0.5 · 0.99 + 0.5 · 0.01 against 0.01
  'impossible-families': '50 times.',
  // smallest n with q^n ≤ 0.01, by hand; (3/4)^16 and (3/4)^17; (1/2 + 1/2·(3/4)^4)^5; 2 / (2 + 2^6) is 1/33
  'test-mating': '7, 17; 1.002% and 0.752%; 12.4%; 6. 45.8% and 46.0%; 11.',
  // Sedcole 1977, table; the eggs as held against a slow twin in tests/heredity/eggs-to-set.test.ts
  'hatch-size': '11, 23, 49; 32 and 31.',
  // by hand: logits 1.7346 and 0.6190, so 1/(1 + e^(−0.7306)) less 1/(1 + e^(−1.1768))
  depression: '−10.7 points for ten points of F; the records cannot tell.',
  // Fisher 1935, eight cups (from memory): 34/70 and 2/70
  // by hand: (2.8016 · 2/4.4)²; (1.96 √0.37995 + 0.8416 √0.3739)²/0.0121 = 245.3; 2.8016 √0.1
  'to-tell': '1.6 times; 246 of each; 0.89 SD; 158 birds of each.',
  'kept-against-all': 'P 0.486 and 0.029.',
  // Falconer & Mackay 1996: ½ (300 + 100), 0.4 · 200; Becker 1984, 2 of 10 1.2701; by hand (200 · 80 + 350 · 135)/(200² + 350²)
  selection: 'S 200 g, R 80 g; 1.27 SD; h² 0.39.',
  // by hand: b 5/10, squares left 0.3 of three degrees of freedom, so error √(0.1/10) and t 3.182: 0.182 to 0.818
  likeness: 'h² 0.50 (0.18 to 0.82).',
  // by hand 1100/1300; Fieller's limits worked apart in the test of recoveryOfType
  recovery: '84.6% (75.8 to 94.2).',
  // by hand (2420 − 2200)/2200; the limits worked apart in Python 3 with SciPy: 0.0479 to 0.1521
  crosses: '+10.0% (4.8 to 15.2).',
  breeders: 'Two males and three females, five birds in all.',
  requirements: 'met, not yet, cannot be told.',
  // by hand (6 − 2)/5, 3/3, 0/6
  'show-places': '0.80, 1.00 and 0.00.',
  // by hand: C 3, D 1; of the 6 · 2 ways to deal 2/6 + 4/6 · 1/2 lie as far off
  'judges-order': '3 of 4 pairs the same way, 1 the other; tau-b +0.50, P 0.67.',
  // Bland & Altman 1986, Lancet i:307–310: −2.1, −22.0 to 17.8, and −79.7 to 75.5 from rounded mean and SD
  'judges-points': 'Mean −2.1, −22.0 to +17.8; the next person is looked for from −86.7 to +82.4.',
  // a saddle belongs to the back, a back to the body
  'judges-remarks': 'Body and Tail.',
}

describe('methods', () => {
  const view = methodsPage().view as MethodsView

  it.each(METHODS.map(method => [method.id, method] as const))('%s: the worked example gives what its source gives', (id, method) => {
    expect(method.example.gives()).toBe(EXPECTED[id])
  })

  it('have a place of their own each, and a question, edges and a source', () => {
    expect(new Set(METHODS.map(method => method.id)).size).toBe(METHODS.length)
    for (const method of METHODS) {
      expect(method.question.endsWith('?')).toBe(true)
      expect(method.definition.length).toBeGreaterThan(40)
      expect(method.edges.startsWith('- ')).toBe(true)
      expect(method.source.endsWith('.')).toBe(true)
    }
  })

  it('are where the pages’ ways to them lead', () => {
    const templates = fileURLToPath(new URL('../../templates/pages/', import.meta.url))
    const led = filesOf(templates).flatMap(file => [...readFileSync(`${templates}${file}`, 'utf8').matchAll(/methods\.html#([a-z-]+)/g)].map(([, id = '']) => id))
    expect(led.length).toBeGreaterThan(10)
    expect(led.filter(id => !METHODS.some(method => method.id === id))).toEqual([])
  })

  it('are all on the page', () => {
    expect(view.methods.map(method => method.id)).toEqual(METHODS.map(method => method.id))
  })
})
