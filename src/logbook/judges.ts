/** Judges, one person over all shows, and what they may be called. A judge is named only where every show that has them says so. */
import type {RecordOf} from '../records/records.ts'

export type ShowFile = RecordOf<'show'>

export interface Judges {
  /** safe to publish: the name with consent, else `judge 1` */
  called(show: ShowFile, short: string): string | null
  /** of those who agreed to be named to the committee alone: what they are called in public → the name */
  readonly forCommittee: ReadonlyMap<string, string>
}

interface Consent {
  readonly public: boolean
  /** who may be named to everybody may be named to the committee */
  readonly committee: boolean
}

/** Unnamed judges are judge 1, 2 … in order of the shows; a number by which somebody else is named is passed over. */
export function judgesOf(shows: readonly ShowFile[]): Judges {
  const consents = consentsIn(shows)
  const taken = new Set([...consents].flatMap(([person, consent]) => (consent.public ? [plain(person)] : [])))
  let number = 0
  const next = (): string => {
    do number += 1
    while (taken.has(`judge ${number}`))
    return `judge ${number}`
  }
  const called = new Map([...consents].map(([person, consent]) => [person, consent.public ? person : next()]))
  const forCommittee = [...consents].flatMap(([person, consent]): [string, string][] => (!consent.public && consent.committee ? [[called.get(person) ?? '', person]] : []))
  return {called: (show, short) => called.get(personOf(show, short)) ?? null, forCommittee: new Map(forCommittee)}
}

/** Who a short name of one show is, the same person in every show; a short name that no list explains is a person of its own show. */
function personOf({id, data}: ShowFile, short: string): string {
  return data.judges?.find(judge => judge.key === short)?.value.name ?? `${short}\n${id}`
}

function consentsIn(shows: readonly ShowFile[]): ReadonlyMap<string, Consent> {
  const consents = new Map<string, Consent>()
  for (const show of shows) {
    for (const {value: {name, consent = false, 'consent-committee': committee = consent}} of show.data.judges ?? []) {
      const before = consents.get(name) ?? {public: true, committee: true}
      consents.set(name, {public: consent && before.public, committee: committee && before.committee})
    }
    for (const {judge} of show.data.entries ?? []) {
      const person = judge ? personOf(show, judge.text) : null
      if (person !== null && !consents.has(person)) consents.set(person, {public: false, committee: false})
    }
  }
  return consents
}

const plain = (name: string): string => name.trim().toLowerCase()
