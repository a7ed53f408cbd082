import {describe, expect, it} from 'vitest'
import {forecastToRead} from '../../src/commands/forecast-to-read.ts'
import {GROUND, heredityBook, LEGS} from '../findings/heredity-book.ts'

function toRead(birds: readonly string[], alleles: string, files: Readonly<Record<string, string>>) {
  const {findings, bird} = heredityBook(birds, alleles, files), [found] = findings.forecasts([{sire: bird('A'), dam: bird('B')}])
  return forecastToRead(found ?? expect.fail('no forecast'), findings.ifScoredRight({sire: bird('A'), dam: bird('B')}))
}

describe('forecastToRead(forecast)', () => {
  it('puts what to beware of above, a warning a line, wrapped, and nothing but sex, look and share in the table', () => {
    const {above, table} = toRead(['A male - - legs=creeper', 'B female - - legs=creeper'], '{P: {P: 100%}, Cp: {Cp: 10%, cp+: 90%}}', {'traits/legs.md': LEGS})
    const lines = above.trimEnd().split('\n')
    expect(lines[0]).toMatch(/^Germs that will die in the egg: 25\.0% by Cp\. /)
    expect(lines.filter(line => !line.startsWith('  ')).map(line => line.slice(0, 14))).toEqual(['Germs that wil', 'Chicks that ne', 'The bird’s goo'])
    expect(Math.max(...lines.map(({length}) => length))).toBeLessThanOrEqual(96)
    expect(above.endsWith('\n\n')).toBe(true)
    expect(table.columns.map(({name}) => name)).toEqual(['sex', 'look', 'share'])
    expect(table.rows.slice(0, 3)).toEqual([['male', 'Comb: pea', 1], ['male', 'Legs: creeper', expect.closeTo(2 / 3, 12)], ['male', 'Legs: long', expect.closeTo(1 / 3, 12)]])
  })

  it('says what comes if a doubted score is right', () => {
    const {findings, bird} = heredityBook(['C male - - legs=long', 'D female - - legs=long', 'A male C D legs=creeper', 'B female - - tested={Cp:~cp+/cp+}'], '{P: {P: 100%}, Cp: {Cp: 10%, cp+: 90%}}', {'traits/legs.md': LEGS.replace('loci:', 'misscoring: 1%\nloci:')})
    const pair = {sire: bird('A'), dam: bird('B')}, [found] = findings.forecasts([pair])
    expect(forecastToRead(found ?? expect.fail('no forecast'), findings.ifScoredRight(pair)).above.replace(/\s+/g, ' '))
      .toMatch(/^A score in doubt that may be right: A was scored creeper, which its kin make doubtful; if that is right, 50\.0% of the chicks by B have Cp\. Ask a veterinarian, and your local law/)
  })

  it('says nothing above where nothing is to be warned of', () => {
    const {above, beneath} = toRead(['A male - -', 'B female - -'], '{P: {P: 100%}}', {})
    expect([above, beneath]).toEqual(['', 'Of the chicks of each sex that hatch. Worked exactly. Genotypes, and every look, with --format csv or json.\n'])
  })

  it('counts looks together that are rare in one row, so that each sex makes 1', () => {
    // by hand: p+ in one founder of a hundred copies, the mate with two: one chick in a hundred single; half of the hens gold
    const {table: {rows}} = toRead(['A male - - tested={S:~S/s+}', 'B female - - tested={P:~p+/p+,~S:~S/-}'], '{P: {P: 99%, p+: 1%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
    const hens = rows.filter(([sex, look]) => sex === 'female' && !String(look).includes(':'))
    expect(hens.at(-1)).toEqual(['female', '2 rarer looks together', expect.closeTo(0.01, 9)])
    expect(hens.reduce((sum, [, , share]) => sum + Number(share), 0)).toBeCloseTo(1, 9)
  })

  it('leaves out what a sex cannot show', () => {
    const hens = '---\nname: Comb\nstates: [pea, single]\nseen-in: female\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n---\n'
    expect(toRead(['A male - -', 'B female - -'], '{P: {P: 50%, p+: 50%}}', {'traits/comb.md': hens}).table.rows).toEqual([['female', 'Comb: pea', expect.closeTo(0.75, 12)], ['female', 'Comb: no rule says', expect.closeTo(0.25, 12)]])
  })
})
