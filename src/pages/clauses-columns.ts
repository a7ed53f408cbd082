/** What each column of the figures of clauses holds, in a few words: for the help of the command. */
export const CLAUSES_COLUMN_WORDS = {
  clauses: {
    clause: 'its id; the worst first', section: 'the heading it stands under; empty of a weight or the egg', trait: 'the trait that shows whether a bird meets it', mandatory: 'yes: a bird must meet it', if_missed: 'minor, serious or disqualifying',
    step: 'of the breed; all: all its steps together', sex: 'male, female, unknown or all', words: 'as now: the scores made by what the clause says today; as they were: by other words of it; none: before it was written, or on no day known; else why nobody scored it',
    count: 'birds that meet it', total: 'birds scored that can be judged', share: 'that meet it', low: 'lower end of the 95% interval', high: 'upper end', family_low: 'the same drawing whole sire families, of the latest step from five on', family_high: 'upper end',
    accepted: 'of the birds that meet it, those that do by what is accepted for some seasons alone', unscored: 'could show it and have no score that counts, those gone or too young among them', sex_unknown: 'scored, but not to be judged while their sex is unknown',
    variety_unknown: 'scored, but it cannot be told whether they are of its variety', other_words: 'scored under other words of it, and counted in rows of their own', under_draft: 'drafts that the birds counted were scored under; empty where a ruler told', birds: 'bands of those that missed it',
    records: 'where their scores stand',
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, string>>>>
