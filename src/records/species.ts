/**
 * What differs from species to species. Days of incubation: state extension pages and common practice; lockdown (no more turning)
 * three days before the hatch is common practice, no source. All of them have Z and W sex chromosomes.
 */
export const SPECIES = {
  chicken: {incubationDays: 21, lockdownDaysBefore: 3},
  duck: {incubationDays: 28, lockdownDaysBefore: 3},
  'muscovy-duck': {incubationDays: 35, lockdownDaysBefore: 3},
  turkey: {incubationDays: 28, lockdownDaysBefore: 3},
  goose: {incubationDays: 30, lockdownDaysBefore: 3},
  'guinea-fowl': {incubationDays: 27, lockdownDaysBefore: 3},
  'japanese-quail': {incubationDays: 17, lockdownDaysBefore: 3},
  'ringneck-pheasant': {incubationDays: 24, lockdownDaysBefore: 3},
} as const
export type Species = keyof typeof SPECIES
export const SPECIES_NAMES = Object.keys(SPECIES) as Species[]
