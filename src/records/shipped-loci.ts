/**
 * The reference of chicken loci that ships with the house: one Markdown record a locus, written and read like a project's own.
 * It is a folder like any other, so that a test can put another in its place; of its files only those that a project names are opened.
 */
import {fileURLToPath} from 'node:url'
import {folderOnDisk, type Folder} from './folder.ts'

/** `src/reference/`, which lies as far from the built files as from their sources. */
export const SHIPPED_LOCI: Folder = folderOnDisk(fileURLToPath(new URL('../../src/reference/', import.meta.url)))
