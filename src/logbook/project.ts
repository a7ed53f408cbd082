/** The project: what is bred, from which strains, by which steps. */
import {SPECIES} from '../records/species.ts'
import type {RecordOf} from '../records/records.ts'
import type {Project} from './book.ts'
import type {Strains} from './strains.ts'

/** Days a hen may keep a removed male's sperm where the project names no other. Common practice, no source. */
const SPERM_STORE_DAYS = 21

export function linkProject({data, body, at}: RecordOf<'project'>, strains: Strains): Project {
  const species = data.species ?? 'chicken'
  const recurrent = data.strains ? strains.find(data.strains.recurrent) : strains.all.find(strain => strain.role === 'recurrent') ?? null
  const donors = data.strains?.donors?.map(ref => strains.find(ref)).filter(strain => strain !== null) ?? strains.all.filter(strain => strain.role === 'donor')
  return {
    at, body, name: data.name, species, aim: data.aim, begun: data.begun ?? null, recurrent, donors, ladder: data.ladder ?? [], units: data.units ?? 'metric',
    paper: data.paper ?? (data.units === 'imperial' ? 'letter' : 'a4'),
    limits: {matingInbreeding: data.limits?.['mating-inbreeding'] ?? null, inbreedingPerGeneration: data.limits?.['inbreeding-per-generation'] ?? null},
    spermStoreDays: data['sperm-store'] ?? SPERM_STORE_DAYS, incubationDays: SPECIES[species].incubationDays,
    site: {url: data.site?.url ?? null, language: data.site?.language ?? 'en'},
  }
}
