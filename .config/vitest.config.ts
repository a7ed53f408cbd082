import {fileURLToPath} from 'node:url'
import {defineConfig} from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/seeded.ts'],
    testTimeout: 240_000,
    hookTimeout: 480_000,
  },
})
