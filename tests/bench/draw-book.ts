/** A whole folder of records, drawn with a seed: valid, of any size, with the untidiness of real barns. */
import {mkdirSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {chanceOf} from './chance.ts'
import {drawFlock, type FlockSize} from './draw-flock.ts'
import {writeBook} from './write-book.ts'

/**
 * Draws a folder: path → text.
 *
 * @param seed whole number; the same seed and size draw the same bytes
 * @param size roughly how many banded birds, over how many seasons, how many chicks a setting
 */
export function drawBook(seed: number, size: Partial<FlockSize> & {readonly birds: number}): Map<string, string> {
  const chance = chanceOf(seed)
  return writeBook(chance, drawFlock(chance, {seasons: 12, chicksPerHatch: 40, hensPerPen: 10, ...size}))
}

/** Lays files down under a folder. */
export function layDown(folder: string, files: ReadonlyMap<string, string>): void {
  for (const [path, text] of files) {
    mkdirSync(dirname(join(folder, path)), {recursive: true})
    writeFileSync(join(folder, path), text)
  }
}
