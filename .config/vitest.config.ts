import {fileURLToPath} from 'node:url'
import {defineConfig} from 'vitest/config'

/** Tests that put something else in a module's place: what they load is nobody else's. */
const APART = ['tests/site/slim-tags.test.ts', 'tests/site/write-cut-off.test.ts']

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // every core, and a module is loaded once for all that asks for it
    maxWorkers: '100%',
    setupFiles: ['tests/seeded.ts'],
    // a synchronous test cannot be cut short: the limit is for machines several times slower than a desk's
    testTimeout: 240_000,
    hookTimeout: 480_000,
    projects: [
      {extends: true, test: {name: 'together', include: ['tests/**/*.test.ts'], exclude: APART, isolate: false}},
      {extends: true, test: {name: 'apart', include: APART, isolate: true}},
    ],
  },
})
