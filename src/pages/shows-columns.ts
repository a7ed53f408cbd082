/** What each column of the figures of shows holds, in a few words: for the help of the command. */
export const SHOWS_COLUMN_WORDS = {
  what: 'entry; cancelled: a show that was; order: a judge’s order against our marks; points: what two gave the same birds', show: 'file of the show', date: 'day of the show', class: 'as written', bird: 'its band',
  place: 'in its class', of: 'how many were shown; of points: full points', shared: 'yes: another has the same place', relative_place: '(of − place)/(of − 1), 1 first and 0 last', award: 'as written', points: 'given with the placing', grade: 'the judge’s word',
  disqualified: 'yes, or empty', judge: 'by name with consent, else judge 1, judge 2 …; of points: who gave the first', draft: 'of the standard it was judged by, where it is written', remark: 'what the judge said; of a cancelled show the reason',
  clauses: 'ids of the clauses the remark stands under', clauses_by: 'keeper: named in the record; words: fitted by its words', mark: 'trait of our marks, or points; of points the heading', against: 'who gave the second points',
  value: 'of order Kendall’s tau-b within classes; of points the mean of first less second', low: 'lower end of its 95% interval, of points', high: 'upper end', p: 'share of chance deals as far from nought', least_p: 'the least that p could be: above 0.05 nothing can be told',
  pairs: 'pairs of one class', same: 'put the same way round by both', other_way: 'the other way round', held: 'birds counted, once a class; of points sheets', left_out: 'entries or sheets that could not be held', birds: 'bands', records: 'where they stand',
} as const satisfies Readonly<Record<string, string>>
