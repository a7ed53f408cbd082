/** What each column of the figures of what changed in the standard holds, in a few words: for the help of the command. */
export const CHANGES_COLUMN_WORDS = {
  piece: 'its id, as in the drafts: section/clause, weights/cock, scale/condition, egg …', of: 'head, section, clause, weight, egg, points or variety', title: 'its name in the later draft',
  change: 'added, dropped, reworded, retitled, moved, changed, range wider, narrower, up, down, other, given or gone, now mandatory or desirable, if missed, tolerance added, dropped, longer, shorter or otherwise …', sex: 'of one sex only',
  was: 'words, looks or severity in the earlier draft', is: 'the same in the later one', was_low: 'least that was allowed, in the unit; points; empty where open', was_high: 'most', is_low: 'least that is allowed', is_high: 'most', unit: 'of the amounts',
  why: 'the reasons given by the drafts between, oldest first', records: 'the files of both drafts',
} as const
