import {describe, expect, it} from 'vitest'
import {birdHides} from '../../src/pages/bird-hides.ts'
import {COMB, GROUND, heredityBook, LEGS} from '../findings/heredity-book.ts'

const SKIN = '---\nname: Skin\nstates: [white, yellow]\ntarget: white\nrequired: yes\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: _/_, is: yellow}\n---\n'

/** What the page says of one bird at the comb alone. */
function hides(band: string, lines: readonly string[], alleles?: string, files = {}) {
  const {findings, bird} = heredityBook(lines, alleles, files), found = birdHides(bird(band), findings)
  return found && [...found.lines.map(({head, chances, why}) => `${head} ${chances}: ${why}`), ...(found.certain === '' ? [] : [`sure ${found.certain}`]), found.how]
}

describe('birdHides(bird, findings)', () => {
  it('gives every genotype with its chance, and clean chicks of a mate that would tell as the reason', () => {
    // by hand: ⅔ before; five clean chicks by a single-combed cock leave 2/(2 + 2⁵) = 1/17
    const chicks = [1, 2, 3, 4, 5].map(number => `c${number} male S h comb=pea`)
    expect(hides('h', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'S male - - comb=single', 'h female A B comb=pea', ...chicks]))
      .toEqual(['Comb P/P 94.1%, P/p+ 5.9%: her sire A carries p+, her dam B carries it, which makes 66.7%; none of 5 chicks by single S is single, which leaves 5.9%.', 'Worked exactly'])
  })

  it('names the chick that gave her away', () => {
    expect(hides('h', ['A male - - comb=pea', 'h female - - comb=pea', 'c male A h comb=single'])).toEqual(['Comb P/p+ 100%: her chick c is single.', 'Worked exactly'])
  })

  it('says what her parents may have handed on, where nothing else is known', () => {
    expect(hides('h', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'h female A B comb=pea'])).toEqual(['Comb P/P 50.0%, P/p+ 50.0%: her sire A carries p+, her dam B is without it.', 'Worked exactly'])
  })

  it('names a parent that has nothing else to give', () => {
    expect(hides('h', ['A male - - comb=single', 'B female - - comb=pea', 'h male A B comb=pea'])).toEqual(['Comb P/p+ 100%: his sire A has only p+ to give.', 'Worked exactly'])
  })

  it('is short where nothing is hidden', () => {
    expect(hides('h', ['h female - - comb=single'])).toEqual(['sure p+/p+', 'Worked exactly'])
    // a hen hides nothing on the Z once she was seen
    expect(hides('h', ['A male - - tested={S:~S/s+}', 'B female - -', 'h female A B ground=gold comb=single'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND}))
      .toEqual(['sure p+/p+ and s+/-', 'Worked exactly'])
  })

  it('names the locus too where a trait rests on several', () => {
    const walnut = '---\nname: Comb\nstates: [walnut, rose, pea, single]\ntarget: walnut\nloci: [R, P]\n---\n'
    const found = hides('h', ['A male - - tested={R:~R/r+,~P:~P/P}', 'B female - - tested={R:~R/r+,~P:~P/P}', 'h female A B comb=walnut'], undefined, {'traits/comb.md': walnut})
    // by hand: walnut of R/r+ × R/r+ is R/R with ⅓
    expect(found).toEqual(['Comb, R R/r+ 66.7%, R/R 33.3%: her sire A carries r+, her dam B carries it.', 'sure P/P', 'Worked exactly'])
  })

  it('says what a strain is, and that nothing is known of one', () => {
    expect(hides('h', ['h female - - comb=pea'], '{P: {P: 90%, p+: 10%}}')?.[0]).toBe('Comb P/P 81.8%, P/p+ 18.2%: of Holm White’s copies 10.0% are p+.')
    expect(hides('h', ['h female - - comb=single'], '{P: {P: 50%, p+: 50%}}', {'traits/skin.md': SKIN})?.[0]).toBe('Skin W+/w 50.0%, W+/W+ 25.0%, w/w 25.0%: nothing is known of Holm White here, so every allele is taken alike.')
  })

  it('says with what chance a look is taken for another, where its parents speak against it', () => {
    const brassy = GROUND.replace('[silver, gold]', '[silver, brassy, gold]').replace('shows:', 'misscoring: {brassy: {silver: 30%}}\nshows:\n  - {S: S/s+, is: brassy}')
    const found = hides('c', ['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'c male A B ground=silver'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': brassy})
    // by hand: ½ · 0.3 / (½ · 0.3 + ½)
    expect(found?.[1]).toBe('Ground S/S 76.9%, S/s+ 23.1%: his sire A carries s+, his dam B is without it; scored silver, as brassy is 3 times in 10.')
  })

  it('sets a look against its kin, and says how often it is wrong', () => {
    const found = hides('c', ['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/p+}', 'c female A B comb=single'], undefined, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')})
    expect(found?.[0]).toBe('Comb P/P 50.0%, P/p+ 50.0%: scored single; by her kin alone single would be 0%, and pea is scored so once in 100.')
  })

  it('says beside a parent’s gift what a score may be wrong in', () => {
    const found = hides('c', ['A male - - tested={P:~p+/p+}', 'B female - - tested={P:~P/p+}', 'c female A B comb=pea'], undefined, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')})
    expect(found?.[0]).toBe('Comb P/p+ 99.0%, p+/p+ 1.0%: her sire A has only p+ to give; scored pea, as single is once in 100.')
  })

  it('gives every scoring where they differ', () => {
    const files = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 5%'), 'scores/x.csv': 'band,on,comb\nc,2023-06-01,single\nc,2023-07-01,single\n'}
    expect(hides('c', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}', 'c female A B comb=pea'], undefined, files)?.[0]).toMatch(/: scored pea once and single twice; by her kin alone \w+ would be \d+\.0%, and (pea|single) is scored so once in 20\.$/)
  })

  it('says that a look was scored twice, which is wrong twice much more seldom', () => {
    const files = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 5%'), 'scores/x.csv': 'band,on,comb\nc,2023-06-01,single\n'}
    expect(hides('c', ['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/p+}', 'c female A B comb=single'], undefined, files)?.[0]).toMatch(/: scored single twice; by her kin alone single would be 0%, and pea is scored so once in 20\.$/)
  })

  it('says that a look is rarer with an allele that does not always show', () => {
    const toes = '---\nname: Toes\nstates: [five, four]\ntarget: four\nloci:\n  Po: {on: autosome, alleles: [Po, po+]}\nshows:\n  - {Po: po+/po+, is: four}\n  - {Po: _/_, is: five, penetrance: 60%}\n  - {Po: _/_, is: four}\n---\n'
    const found = hides('c', ['A male - - tested={Po:~Po/po+}', 'B female - - tested={Po:~po+/po+}', 'c male A B toes=four comb=single'], '{P: {P: 50%, p+: 50%}, Po: {Po: 50%, po+: 50%}}', {'traits/toes.md': toes})
    // by hand: ½ · 0.4 / (½ · 0.4 + ½)
    expect(found?.find(line => line.startsWith('Toes'))).toBe('Toes po+/po+ 71.4%, Po/po+ 28.6%: his sire A carries Po, his dam B is without it, which makes 50.0%; scored four, as birds with it are more seldom, which leaves 28.6%.')
  })

  it('says that the sex decides', () => {
    const found = hides('c', ['A male - - tested={S:~S/S}', 'B female - - tested={S:~s+/-}', 'c unknown A B'], '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    expect(found?.[1]).toBe('Ground S/s+ 50.0%, S/- 50.0%: its sex decides: a cock is S/s+, a hen S/-.')
  })

  it('points at a look of its own whose locus lies near', () => {
    const files = {'traits/legs.md': LEGS.replace('loci: [Cp]', 'loci: {Cp: {alleles: [Cp, cp+], linked: {P: 1%}}}')}
    // the creeper’s allele came with p+ to the sire, and goes on with it
    const found = hides('c', ['g male - - tested={P:~P/P,Cp:~cp+/cp+}', 'h female - - tested={P:~p+/p+,Cp:~Cp/cp+}', 'm female - - tested={P:~P/P,Cp:~cp+/cp+}', 's male g h legs=creeper', 'c female s m legs=creeper comb=pea'], '{P: {P: 50%, p+: 50%}, Cp: {Cp: 10%, cp+: 90%}}', files)
    expect(found?.[0]).toBe('Comb P/p+ 99.0%, P/P 1.0%: her sire s carries p+, her dam m is without it, which makes 50.0%; she is creeper, and Cp lies near P, which lifts it to 99.0%.')
  })

  it('says what of a bird’s chicks, and of theirs, lifts its chance or lowers it', () => {
    const from = ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'K male - - tested={P:~P/p+}', 'M male - - tested={P:~P/P}', 'L male - - tested={P:~P/p+}']
    const maybe = [1, 2, 3, 4, 5, 6, 7, 8].map(number => `c${number} male K {h:~50%,B:~50%} comb=pea`)
    expect(hides('h', [...from, 'h female A B comb=pea', ...maybe])?.[0]).toMatch(/which makes 50\.0%; none of 8 chicks that may be hers is single, which leaves \d+\.\d%\.$/)
    expect(hides('h', [...from, 'h female A B comb=pea', 'd female M h comb=pea', 'e male L d comb=single'])?.[0]).toMatch(/which makes 50\.0%; the one grandchick is single, which lifts it to 100%\.$/)
  })
})

describe('birdHides of a bird whose score its kin make doubtful', () => {
  const LINES = ['A male - - tested={Cp:~cp+/cp+}', 'B female - - tested={Cp:~cp+/cp+}'], ALLELES = '{P: {P: 100%}, Cp: {Cp: 10%, cp+: 90%}}'

  it('writes the one genotype of the look where its parents leave it none', () => {
    expect(hides('c', ['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'c female A B comb=single'], undefined, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')})?.[0])
      .toBe('Comb P/P 100%: if her parents are as written; she was scored single: were that right, p+/p+.')
  })

  it('never calls the contrary sure, and says what it were if the score is right', () => {
    expect(hides('c', [...LINES, 'c male A B legs=creeper'], ALLELES, {'traits/legs.md': LEGS.replace('loci:', 'misscoring: 0.05%\nloci:')}))
      .toEqual(['Legs cp+/cp+ 100%: if his parents are as written; he was scored creeper: were that right, he would have Cp.', 'sure P/P', 'Worked exactly'])
    // no rule lets the score be wrong: one in a thousand is then taken to be
    expect(hides('c', [...LINES, 'm female - - legs=long', 'c male A m legs=creeper'], '{P: {P: 100%}, Cp: {Cp: 1%, cp+: 99%}}', {'traits/legs.md': LEGS})?.[0])
      .toMatch(/^Legs cp\+\/cp\+ \d+\.\d%, Cp\/cp\+ \d+\.\d%: if his parents are as written; he was scored creeper: were that right, Cp\/cp\+\.$/)
  })
})
