/** Names of colour varieties are one whatever their capitals. */
const isOne = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase()

/** A name as the first of these spells it; itself where it is none of them. */
export const speltAs = (names: readonly string[]) => (name: string): string => names.find(each => isOne(each, name)) ?? name
