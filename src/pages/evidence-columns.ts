/** What each column of the figures of evidence holds, in a few words: for the help of the command. */
export const EVIDENCE_COLUMN_WORDS = {
  kind: 'what is asked about', title: 'the requirement, in the order of the record', asked: 'in the association’s words or yours', state: 'met, not yet, cannot tell or waived', found: 'what the records show, whoever waived it',
  value: 'the figure that is held against what is asked', low: 'lower end of its 95% interval, or of what it may be', high: 'upper end', count: 'so many of them are as asked: seasons, keepers, entries, chicks, sections …', total: 'of so many',
  on: 'the latest day of what was counted', by: 'by when it must be reached', waived_because: 'why it was waived', waived_by: 'who waived it', waived_until: 'the last day on which that holds', not_counted: 'records of other days than the requirement lets count, of no known day, or of birds of a pure strain', way: 'the shortest way to meet it', earliest: 'the season or day at which that can be, where it can be told',
  birds: 'bands of the birds counted', records: 'the files it is counted from, with lines of tables',
} as const satisfies Readonly<Record<string, string>>
