/**
 * A small project with a word that must never be published in every place that is private, each word naming its place.
 * What stays public beside them is marked with `public`, so that the search is known to find words at all.
 */

/** Makes the words, and remembers every one. */
export class Canaries {
  readonly words: string[] = []
  readonly at = (place: string): string => {
    const word = `canary${place}canary`
    this.words.push(word)
    return word
  }
  /** those of these words that the committee may read, and nobody else */
  readonly committee: string[] = []
  readonly toCommittee = (place: string): string => {
    const word = this.at(`committee${place}`)
    this.committee.push(word)
    return word
  }
}

export function plantedBook(canaries: Canaries): Record<string, string> {
  const {at, toCommittee} = canaries
  // with the signs at which data is parted
  const hidden = (place: string) => `<!-- he said: ${at(`comment${place}`)}, owner: ${at(`owner${place}`)}; ${at(`semicolon${place}`)} -->`
  const keeper = at('keeperid')
  const file = (front: string, place: string, body = 'Words publicbody here.') =>
    `---\n${front.trim()}\n# ${at(`yaml${place}`)}\nprivate: ${at(`private${place}`)}\n---\n\n${body} ${hidden(place)}\n\n${hidden(`block${place}`)}\n`

  return {
    'project.md': file(`
name: Skerry Fowl
aim: "A fowl that stands wind. ${hidden('aim')}"
begun: 2022
as-of: 2024-12-31
strains: {recurrent: holm-white, donors: [fell-buff]}
ladder: [F1, BC1]
site: {url: "https://skerry.example/"}`, 'project'),
    'strains/holm-white.md': file('name: Holm White\nrole: recurrent', 'strain'),
    'strains/fell-buff.md': file('name: Fell Buff\nrole: donor', 'donor'),
    'traits/comb.md': file(`name: Comb\nstates: [pea, single]\ntarget: pea\nrequired: true\nloci: {P: {on: autosome, alleles: [P, p+]}}\nshows: [{P: P/_, is: pea, private: ${at('rule')}}]`, 'trait'),
    'traits/weight-20.md': file('name: Weight\nmeasure: weight\nunit: g\nat: 20 weeks\ntarget: {male: 2.4 kg, female: 1.9 kg}\ntolerance: 10%', 'measured'),
    'keepers/kelpgarth.md': file('name: publickeeper\nconsent: yes\nsigns-as: [inga]', 'keeper'),
    [`keepers/${keeper}.md`]: file(`name: ${at('keepername')}\nconsent: no\nregion: ${at('keeperregion')}\nsigns-as: [${at('keepersigns')}, tern]`, 'secretkeeper'),
    'keepers/third.md': file(`name: ${at('silentname')}\nregion: ${at('silentregion')}\nsigns-as: ${at('silentsigns')}`, 'silentkeeper'),
    [`keepers/${at('committeeid')}.md`]: file(`name: ${toCommittee('keeper')}\nconsent-committee: 2024-01-15\nregion: ${toCommittee('region')}\nsigns-as: ${at('committeesigns')}`, 'committeekeeper', `Words ${at('committeebody')} here.`),
    'birds/21-001.md': file(`
band: 21-001
sex: male
strain: fell-buff
hatched: 2021-04-02
keeper: ${keeper}
comb: pea
photos:
  - {file: canaryphotonamecanary.jpg, on: 2022-09-03, view: left, alt: publicalt, caption: publiccaption}
  - {file: canarypicturenamecanary.png, view: head}`, 'founder'),
    'birds/21-002.md': file('band: 21-002\nsex: female\nstrain: holm-white\nhatched: 2021-03-02\nkeeper: kelpgarth\ncomb: single', 'hen'),
    'birds/22-001.md': file(`
band: 22-001
kept-at: [{keeper: kelpgarth, to: 2023-01-01}, {keeper: ${keeper}, from: 2023-01-01}]
observations:
  - {on: 2022-09-01, by: ${keeper}, temperament: calm ${hidden('plain')}, private: ${at('observation')}, note: "publicnote ${hidden('note')}"}`, 'chick'),
    'pens/2022-A.md': file(`season: 2022\nmales: [{band: 21-001, private: {why: ${at('stay')}}}]\nfemales: [21-002]\nfrom: 2022-02-10\nto: 2022-05-01\nkeeper: ${keeper}`, 'pen'),
    'pens/2023-A.md': file('season: 2023\nmales: [22-001]\nfemales: [21-002]\nfrom: 2023-02-10\nto: 2023-05-01\nkeeper: canarycommitteeidcanary', 'secondpen'),
    'hatches/2022-01.md': file(`
pen: 2022-A
set: 2022-03-05
eggs: 8
clear: 1
hatched: 4
on: 2022-03-26
keeper: ${keeper}
chicks:
  - {band: 22-001, sex: male, comb: pea, private: ${at('chickline')}}
  - {band: 22-002, sex: female, comb: pea, keeper: ${keeper}, left: "2022-12-01 sold, publicreason ${hidden('left')}"}
tallies:
  - {chicks: 2, comb: pea, left: 2022-05-20 sold, private: [${at('tally')}]}`, 'hatch'),
    'hatches/2023-01.md': file('pen: 2023-A\nset: 2023-03-05\neggs: 3\nhatched: 2\non: 2023-03-26\nchicks:\n  - {band: 23-001, sex: female, comb: single}\n  - {band: 23-002, sex: male, comb: pea}', 'secondhatch'),
    'scores/2022.csv': `band,on,by,comb,struck\n22-001,2022-05-01,tern,single ${hidden('cell')}\n22-001,2022-06-01,${canaries.words.find(word => word.includes('keepersigns')) ?? ''},pea,\n22-002,2022-06-01,tern,pea,\n22-001,2022-07-01,kelpgarth,pea,publicstruck\n22-002,2022-07-02,canarycommitteesignscanary,single,publicstrucktoo\n`,
    [`scores/2022-${keeper}.csv`]: 'band,on,comb\n22-002,2022-06-02,pea\n',
    [`measures/2022 ${canaries.words.find(word => word.includes('keepername')) ?? ''}.csv`]: 'band,on,weight\n22-002,2022-08-13,1800\n',
    'measures/weights.csv': 'band,on,weight\n22-001,2022-08-13,2400\n',
    'shows/2022-11-05-hall.md': file(`
name: Autumn show
on: 2022-11-05
judges:
  ${at('judgekey')}: {name: ${at('judgename')}, consent: no}
  plain: ${at('plainjudge')}
  silent: {name: ${at('silentjudge')}}
  named: {name: publicjudge, consent: yes}
  ${at('committeekey')}: {name: ${toCommittee('judge')}, consent: no, consent-committee: yes}
entries:
  - {bird: 22-001, class: cockerel, judge: canaryjudgekeycanary, result: 2 of 5, remark: "publicremark ${hidden('remark')}"}
  - {bird: 22-002, class: pullet, judge: plain, result: 1 of 7}
  - {bird: 21-001, class: cock, judge: silent, result: 3 of 7, private: ${at('entry')}}
  - {bird: 21-002, class: hen, judge: named, result: 3 of 7}
  - {bird: 21-002, class: any hen, judge: canarycommitteekeycanary, result: 1 of 2, remark: publicsecondremark}
scores:
  - {bird: 22-001, by: ${keeper}, draft: 1, type: 28 of 30, private: ${at('scoresheet')}}
  - {bird: 22-002, by: canaryjudgekeycanary, draft: 1, type: 27 of 30}
  - {bird: 22-002, by: canarycommitteekeycanary, draft: 1, type: 29 of 30}
  - {bird: 22-002, by: canarycommitteeidcanary, draft: 1, type: 26 of 30}`, 'show'),
    'standard/1.md': file('draft: 1\non: 2022-12-01\nscale: {Type: 60, Colour: 40}', 'draft',
      `## General characteristics, male\n\n**Tail.** Of publicclause length. ${hidden('clause')}\n\n${hidden('between')}\n\n**Comb.** Pea.`),
    'requirements.md': file(`
association: the national association
audience: committee
requirements:
  - {kind: independent-keepers, title: Keepers, asked: One keeper, at-least: 1, seasons: 1}
  - {kind: statements, title: Statements, asked: One of every keeper}
  - {kind: veterinary, title: Veterinary, asked: A statement, waived: {because: publicwaiver, paper: ${at('waiverpaper')}.pdf}}
papers:
  - {file: ${at('paperfile')}.pdf, title: Veterinary statement, on: 2024-08-12, proves: veterinary, private: ${at('paperprivate')}}
  - {file: ${at('secondpaper')}.pdf, title: publicpaper, on: 2024-08-13, proves: history}
  - {title: publicstatement, on: 2024-08-14, proves: statements, keeper: canarycommitteeidcanary}
distinctness:
  - {character: publiccharacter, Skerry Fowl: pea, Holm White: single, private: ${at('distinctness')}}`, 'requirements'),
    'care/2022-05-02-drops.md': file('care: treatment\non: 2022-05-02\npens: [2022-A]\nwith: as the label says', 'care'),
    'diary/2022-10-14-heads.md': file('on: 2022-10-14\ntitle: Heads\nphotos: [{file: canaryphotonamecanary.jpg}]', 'diary',
      `Words publicdiary here.\n\n![a head](photos/canaryphotonamecanary.jpg)\n\n${hidden('unclosed').replace(' -->', '')}`),
    'steps/BC1.md': file('name: BC1', 'step'),
    'birds/.22-009.md': `---\nband: 22-009\n---\n${at('dotfile')}\n`,
    'notes.txt': `${at('notes')}\n`,
    'diary/loose.txt': `${at('loosetext')}\n`,
  }
}
