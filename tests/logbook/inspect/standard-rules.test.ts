/** What the rules of the standard leave alone: a false alarm is worse than none. Their own examples stand with them. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, inspectFiles, linkFiles, type Files} from '../around.ts'

const BODY = '## General characteristics, male\n\n**Comb.** Pea.\n\n## General characteristics, female\n\n**Comb.** Pea.\n'
const draft = (head: string, body = BODY, number = 1, on = '2024-10-01'): Files => ({[`standard/${number}.md`]: `---\ndraft: ${number}\non: ${on}\n${head}\n---\n${body}`})
const found = (files: Files) => codesAt(linkFiles(around(files)).problems)
const words = (files: Files) => linkFiles(around(files)).problems.map(({reason}) => reason)
const MALE = 'general-characteristics-male/comb'

describe('section-missing', () => {
  it('asks nothing of a draft that names no manner and is not asked for', () => expect(found(draft(''))).toEqual([]))
  it('asks for the core where a requirement asks for the written standard', () => {
    const asked = {...draft('weights: {cock: 3 kg}'), 'requirements.md': '---\nassociation: the association\nrequirements:\n  - {kind: written-standard, title: Written standard, asked: Complete.}\n---\n'}
    expect(words(asked)).toEqual(['draft 1 says nothing under: colour; a scale of points; faults'])
  })
  it('looks at the latest draft only', () => {
    expect(found({...draft('manner: continental', BODY, 1, '2023-10-01'), ...draft('', BODY, 2)})).toEqual([])
  })
  it('takes a section of another heading for what the draft says it is', () => {
    const [reason] = words(draft('manner: north-american\nsections: {what-it-is-for: utility}\norigin: Bred here.\nweights: {cock: 3 kg}', `## What it is for\n\nEggs.\n\n${BODY}\n## Colour\n\n**Male.** White.\n`))
    expect(reason).toBe('draft 1 says nothing under: Disqualifications. The North American manner needs it')
  })
  it('points at the manner that needs the part', () => expect(found(draft('manner: continental'))).toEqual(['standard/1.md:4 section-missing']))
})

describe('target-outside-clause', () => {
  const weight = (allows: string, id = MALE) => draft(`clauses: {${id}: {trait: weight-20, allows: ${allows}}}`)
  it.each(['2.4 kg', '2.3 to 2.5 kg', 'at least 2.4 kg', 'at most 2.4 kg', '2.4 to 2.6 kg'])('lets a target of 2.4 kg stand with %s', allows => expect(found(weight(allows))).toEqual([]))
  it.each(['2.5 to 2.7 kg', 'at least 2.5 kg', 'at most 2.3 kg'])('does not with %s', allows => expect(found(weight(allows))).toEqual(['standard/1.md:4 target-outside-clause']))
  it('says both, and where the other stands', () => {
    const [problem] = linkFiles(around(weight('2.5 to 2.7 kg'))).problems
    expect(problem?.reason).toBe(`${MALE} allows 2500 to 2700 g, while the target of weight-20 for males is 2400 g`)
    expect(problem?.related?.map(({place}) => place.file)).toEqual(['traits/weight-20.md'])
  })
  it('holds a clause of females against the target of females', () => expect(found(weight('1.8 to 2 kg', 'general-characteristics-female/comb'))).toEqual([]))
  it('holds the weight of a class against it too', () => {
    expect(found(draft('weights: {cock: 2.4 kg}\nclauses: {weights/cock: {trait: weight-20}}'))).toEqual([])
    expect(found(draft('weights: {cock: 3.4 kg}\nclauses: {weights/cock: {trait: weight-20}}'))).toEqual(['standard/1.md:5 target-outside-clause'])
  })
  it('lets earlier drafts be', () => expect(found({...weight('3 to 4 kg'), ...draft('', BODY, 2, '2024-12-01')})).toEqual([]))
})

describe('allows-without-trait', () => {
  it('finds looks that are accepted of no trait', () => {
    expect(found(draft(`clauses:\n  ${MALE}:\n    accepted: {what: Single, looks: single, until: 2026}`))).toEqual(['standard/1.md:6 allows-without-trait'])
  })
  it('leaves a clause alone that only says how bad it is to miss', () => expect(found(draft(`clauses: {${MALE}: {if-missed: serious, accepted: {what: Uneven, until: 2026}}}`))).toEqual([]))
})

describe('clause-contradicts', () => {
  it.each([
    [`${MALE}: {sex: both}`, 0], [`${MALE}: {sex: male}`, 0], [`${MALE}: {mandatory: no, if-missed: disqualifying}`, 1], [`${MALE}: {mandatory: no, if-missed: serious}`, 0], [`${MALE}: {if-missed: disqualifying}`, 0],
    ['weights/hen: {trait: weight-20, allows: at least 1 kg, sex: male}', 1],
  ])('%s', (entry, count) => expect(found(draft(`weights: {hen: 2 kg}\nclauses: {${entry}}`)).filter(code => code.endsWith('clause-contradicts'))).toHaveLength(count))
})

describe('colour varieties', () => {
  const light = (text: string) => draft('', `${BODY}\n## Colour\n\n### Light\n\n${text}`)
  it.each([
    ['**In both sexes.** White.\n\n**Day-old down.** Cream.', []], ['White all over.', []], ['**Male.** White.\n\n**Female.** White.\n\n**Down.** Cream.', []],
    ['**Male.** White.\n\n**Female.** White.\n\n## Day-old down\n\nCream.', []], ['**Male.** White.\n\n**Female.** White.', ['variety-unfinished']], ['**Female.** White.\n\n**Down.** Cream.', ['variety-unfinished']],
  ])('%j', (text, codes) => expect(found(light(text)).map(code => code.split(' ')[1])).toEqual(codes))
  it('asks nothing of a colour without varieties', () => expect(found(draft('', `${BODY}\n## Colour\n\n**Male.** White.\n`))).toEqual([]))
  it('lets an entry name a variety where the draft has no other', () => expect(found(draft(`clauses: {${MALE}: {variety: Light}}`))).toEqual([]))
  it('finds a requirement that names another', () => {
    const files = {...draft('varieties: {Light: {comb: pea}}'), 'requirements.md': '---\nassociation: the association\nrequirements:\n  - {kind: shown-per-class, title: Shown, asked: Two each., per-class: 2, varieties: [Dark]}\n---\n'}
    expect(linkFiles(around(files)).problems.filter(({code}) => code === 'variety-unknown').map(({place, reason}) => `${place.file} ${reason}`)).toEqual(['requirements.md the latest draft has no variety Dark'])
  })
})

describe('class-weights-odd', () => {
  it.each([['cock: 3 kg, cockerel: 3 kg', 0], ['Cock: 3 kg, Cockerel: 3.1 kg', 1], ['cock: 2.8 to 3.2 kg, cockerel: 2.9 to 3.1 kg', 0], ['hen: 2 kg, pulet: 1.8 kg', 1], ['drake: 3 kg, duck: 2.5 kg', 0], ['young: 3 kg, old: 4 kg', 0]])(
    '%s', (weights, count) => expect(found(draft(`weights: {${weights}}`))).toHaveLength(count))
})

describe('drafts-out-of-order', () => {
  const two = (first: string, second: string) => found({...draft('', BODY, 1, first), ...draft('', BODY, 2, second)})
  it.each([['2024-01-01', '2024-02-01', 0], ['2024', '2024-02-01', 0], ['2024-02', '2024-02-10', 0], ['2024-02', '2024-02', 1], ['2024-03-01', '2024-02', 1]])('%s, then %s', (first, second, count) => expect(two(first, second)).toHaveLength(count))
})

describe('tolerance-over', () => {
  it('lets the season of the draft’s own year stand', () => expect(found(draft(`clauses: {${MALE}: {accepted: {what: Uneven, until: 2024}}}`))).toEqual([]))
})

describe('varieties that are named', () => {
  const colour = (...headings: readonly string[]) => `## Colour\n\n${headings.map(heading => `### ${heading}\n\nAll over.\n`).join('\n')}`
  const two = 'varieties: {Silver: {comb: pea}, Gold: {comb: single}}'
  it('are all there is: another heading is one of them misspelt, and only that is said', () => {
    const {problems} = linkFiles(around(draft(two, colour('Silver', 'Golden'))))
    expect(codesAt(problems)).toEqual(['standard/1.md:12 variety-unknown'])
    expect(problems[0]).toMatchObject({reason: 'Golden is none of the varieties named under varieties:, Silver, Gold', remedy: 'did you mean Gold?'})
  })
  it('are to be told of', () => expect(words(draft(two, colour('Silver')))).toEqual(['the variety Gold is named, and no heading or clause tells of it']))
  it('need no heading where there is but one', () => expect(found(draft('varieties: {Silver: {comb: pea}}', '## Colour\n\nSilver all over.\n'))).toEqual([]))
  it('are known again whatever their capitals', () => {
    const files = draft('varieties: {silver: {comb: pea}, gold: {comb: single}}\nclauses: {colour/gold: {variety: GOLD}}', colour('Silver', 'Gold'))
    expect(found(files)).toEqual([])
    const [written] = linkFiles(around(files)).book!.drafts
    expect(written!.varieties.map(({name, looks}) => [name, looks.size])).toEqual([['Silver', 1], ['Gold', 1]])
    expect(written!.sections.flatMap(({clauses}) => clauses.map(({variety}) => variety))).toEqual(['Silver', 'Gold'])
  })
  it('may be told of by an entry', () => {
    expect(found(draft(`${two}\nclauses: {colour/in-gold: {variety: Gold}}`, `${colour('Silver')}\n## Colour of the golds\n\n**In gold.** Gold.\n`))).toEqual(['standard/1.md:4 variety-unfinished', 'standard/1.md:5 clause-unknown'])
    expect(found(draft(`${two}\nclauses: {plumage/gold: {variety: Gold}}`, `${colour('Silver')}\n## Plumage\n\n**Gold.** Gold.\n`))).toEqual([])
  })
  it('are not alike where one shows more than the other', () => expect(found(draft('varieties: {Silver: {comb: pea}, Gold: {comb: pea, weight-20: 2 kg}}', colour('Silver', 'Gold')))).toEqual([]))
})

describe('head-unread', () => {
  const body = (piece: string) => draft('', `${BODY}\n${piece}\n`)
  it.each([
    ['##Faults\n\nA wry tail.', 'write a space: ## Faults'], ['Words before.\n###Wattles', 'write a space: ### Wattles'], ['*Beak.* Horn.', 'begin the paragraph with **Beak.**'], ['_Beak:_ Horn.', 'begin the paragraph with **Beak.**'],
    ['## Coluor\n\nWhite.', 'did you mean Colour?'], ['## Fualts\n\nA wry tail.', 'did you mean Faults?'], ['## Head, femael\n\nFine.', 'did you mean Head, female?'],
  ])('finds %j', (piece, remedy) => {
    expect(linkFiles(around(body(piece))).problems.map(problem => [problem.code, problem.remedy])).toEqual([['head-unread', remedy]])
  })
  it('says the line', () => expect(found(body('Words before.\n##Faults'))).toEqual(['standard/1.md:15 head-unread']))
  it.each(['## Head\n\nFine.', '## Back\n\nLong.', '## Legs\n\nWhite.', '## General characteristics\n\nBold.', 'Pea. *Low.*', '*Low and even, as seen from the side in a good light.* So.', '#1 of all.', '## Type, size\n\nBold.', '*Pea* combs only.'])('lets %j be', piece => {
    expect(found(body(piece))).toEqual([])
  })
  it('lets a heading be of which the draft says what it is about', () => expect(found(draft('sections: {coluor: colour}', `${BODY}\n## Coluor\n\nWhite.\n`))).toEqual([]))
})

describe('clause-unknown', () => {
  const entry = (piece: string) => linkFiles(around(draft('clauses: {general-characteristics-female/beak: {trait: comb}}', `${BODY}\n${piece}\n`))).problems.find(({code}) => code === 'clause-unknown')?.remedy
  it.each(['Beak. Horn.', '*Beak.* Horn.', '_Beak_: horn.', 'Beak: horn.'])('says how a clause begins where %j stands', piece => expect(entry(piece)).toBe('begin the paragraph with **Beak.**'))
  it('says it of nothing else', () => expect(entry('The beak is horn.')).toContain('write section/clause'))
})

describe('clause-twice', () => {
  it('points at the second and names the first', () => {
    const {problems} = linkFiles(around(draft('', `${BODY}\n**Comb.** Low.\n\n## General characteristics, male\n\nAgain.\n`)))
    expect(codesAt(problems)).toEqual(['standard/1.md:14 clause-twice', 'standard/1.md:16 clause-twice'])
    expect(problems.map(({related}) => related?.[0]?.place.start.line)).toEqual([12, 6])
  })
  it('lets one name be in two sections and two varieties', () => {
    expect(found(draft('', '## Male\n\n**Comb.** Pea.\n\n## Female\n\n**Comb.** Pea.\n\n## Colour\n\n### Silver\n\n**Male.** White.\n\n**Female.** White.\n\n**Down.** White.\n\n### Gold\n\n**Male.** Gold.\n\n**Female.** Gold.\n\n**Down.** Buff.\n'))).toEqual([])
  })
})

describe('class-weights-odd', () => {
  it.each([['cock: 2.5 kg, hen: 2.7 kg', 'a hen is to weigh 2.7 kg and a cock 2.5 kg'], ['cockerel: 2.7 to 2.9 kg, cock: 2.5 kg', 'a cockerel is to weigh 2.7 kg to 2.9 kg and a cock 2.5 kg'], ['pullet: 5 lb 8 oz, cockerel: 5 lb', 'a pullet is to weigh 5 lb 8 oz and a cockerel 5 lb']])(
    'says of %s what was written', (weights, reason) => expect(words(draft(`weights: {${weights}}`))).toEqual([reason]))
  it.each(['cock: 2.5 kg, hen: 2.5 kg', 'cock: 2.3 to 2.7 kg, hen: 2.4 to 2.6 kg', 'hen: 2.4 kg, cockerel: 2.2 kg'])('lets %s be', weights => expect(found(draft(`weights: {${weights}}`))).toEqual([]))
  it('knows a class again, whatever its signs', () => expect(found(draft('weights: {Old cock: 3 kg, old-cock: 2.5 kg}'))).toEqual(['standard/1.md:4 repeated-key']))
  it('quotes a weight without a unit as it stands', () => expect(words(draft('weights: {cock: 2.9 }'))).toEqual(['“2.9” has no unit']))
})

describe('accepted-anyway', () => {
  const accepted = (allows: string, looks: string, trait = 'weight-20') => found(draft(`clauses:\n  ${MALE}: {trait: ${trait}, ${allows === '' ? '' : `allows: ${allows}, `}accepted: {what: Others, looks: ${looks}, until: 2026}}`))
  it.each([['2.2 to 2.6 kg', '2.3 to 2.5 kg'], ['at least 2 kg', '2.3 to 2.5 kg']])('finds %s, and %s accepted', (allows, looks) => expect(accepted(allows, looks)).toContain('standard/1.md:5 accepted-anyway'))
  it.each([['2.2 to 2.6 kg', '2.1 to 2.5 kg'], ['2.2 to 2.6 kg', 'at least 2.3 kg'], ['at most 2.5 kg', '2.5 to 2.7 kg']])('lets %s be with %s', (allows, looks) => expect(accepted(allows, looks)).toEqual([]))
  it('goes by the target where the clause has no range of its own', () => expect(accepted('', 'pea', 'comb')).toEqual(['standard/1.md:5 accepted-anyway']))
})

describe('reasons', () => {
  const two = (reasons: string, tail = 'Long.', more = '') => inspectFiles(around({...draft('weights: {cock: 3 kg}', '## Male\n\n**Tail.** Long.\n\n**Comb.** Pea.\n'), ...draft(`weights: {cock: 3.1 kg}\nreasons: {${reasons}}`, `## Male\n\n**Tail.** ${tail}\n\n${more}`, 2, '2024-12-01')})).problems
  it('are for what changed, by its own id or that of the part it is in', () => expect(codesAt(two('male/tail: Shown., weights: Weighed., male/comb: Said elsewhere., male: Mended.', 'Short.'))).toEqual([]))
  it('may be for the title, the manner and a variety, which are no clauses', () => {
    const files = {...draft('varieties: {Light: {comb: pea}, Dark: {comb: single}}', '## Colour\n\n### Light\n\nWhite.\n\n### Dark\n\nBlack.\n'),
      ...draft('title: The Fowl\nvarieties: {Light: {comb: pea}}\nreasons: {title: Shorter., colour/dark: None was bred.}', '## Colour\n\n### Light\n\nWhite.\n', 2, '2024-12-01')}
    expect(found(files)).toEqual([])
  })
  it('are not for what stayed', () => {
    const [problem, ...more] = two('male/tail: Shown., male/comb: Low., weights/cock: Weighed.', 'Long.', '**Comb.** Pea.\n')
    expect(problem).toMatchObject({code: 'reason-without-change', reason: 'nothing changed in male/tail since draft 1'})
    expect(codesAt(more)).toEqual(['standard/2.md:5 reason-without-change'])
  })
})

describe('a draft that cannot be read', () => {
  const scores = {'scores/2024.csv': 'band,on,by,draft,comb,Type\nH-1,2025-06-02,inga,2,single,50\nH-2,2025-06-02,inga,2,single,50\n'}
  const show = {'shows/2025-06-02-hall.md': '---\nname: Show\non: 2025-06-02\nentries:\n  - {bird: H-1, class: cock, result: 2 of 5, draft: 2, remark: Comb too high., about: [male/crown]}\nscores:\n  - {bird: H-1, draft: 2, Type: 52 of 60}\n---\n'}
  const asked = {'requirements.md': '---\nassociation: the association\nrequirements:\n  - {kind: true-to-type, title: True, asked: True., at-least: 90%, clauses: [male/crown]}\n---\n'}
  const observed = {'birds/H-3.md': '---\nband: H-3\nsex: female\nstrain: holm-white\nhatched: 2022-03-20\nobservations:\n  - {on: 2025-06-02, draft: 2, comb: single}\n---\n'}
  const first = draft('scale: {Form: 60, Colour: 40}')
  it('is the one thing that is said', () => {
    for (const on of ['2024-13-01', '2024-12-01\nweights: {cock: 2.9}']) {
      const {problems} = linkFiles(around({...first, 'standard/2.md': `---\ndraft: 2\non: ${on}\nscale: {Type: 60, Colour: 40}\n---\n## Male\n\n**Crown.** Low.\n`, ...scores, ...show, ...asked, ...observed}))
      expect(problems.map(({place, reason}) => [place.file, reason])).toEqual([['standard/2.md', expect.stringMatching(/calendar|unit/)]])
    }
  })
  it('leaves the draft before it be', () => {
    const unread = {'standard/2.md': '---\ndraft: 2\non: 2024-13-01\n---\n## Male\n\n**Crown.** Low.\n'}
    expect(found({...draft('manner: continental\nweights: {cock: 2 kg, hen: 3 kg}', '## Male\n\n**Crown.** Low.\n\n**Crown.** High.\n'), ...unread})).toEqual(['standard/2.md:3 impossible-date'])
  })
  it('nor is more said where two have one number', () => {
    const {problems} = linkFiles(around({...draft('', '## Male\n\n**Crown.** Low.\n'), 'standard/2.md': '---\ndraft: 1\non: 2024-12-01\nscale: {Type: 60, Colour: 40}\n---\n## Male\n\n**Crown.** Low.\n', ...scores, ...observed}))
    expect(codesAt(problems).filter(code => !code.startsWith('standard/2.md'))).toEqual([])
    expect(problems.map(({code}) => code)).toContain('same-name')
  })
})
