import {draftsInDoubt} from './drafts-in-doubt.ts'
import type {Draft} from './book.ts'
import type {Linked} from './linked.ts'

/** The draft of the standard that is found fault with, the latest; none while another may be later that could not be read. */
export const latestDraft = ({bench, book}: Pick<Linked, 'bench' | 'book'>): Draft | undefined => (draftsInDoubt(bench) ? undefined : book.drafts.at(-1))
