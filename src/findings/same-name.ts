/** Names of varieties and classes are one whatever their capitals, and whatever white space stands about them. */
export const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase()
