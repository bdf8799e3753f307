import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    include: ['tests/**/*.test.ts'],
    environment: 'node',
    globalSetup: ['tests/support/chromium-setup.ts'],
    setupFiles: ['tests/support/seed.ts'],
    testTimeout: 30_000,
    hookTimeout: 120_000,
    // What a browser shows may take a while on a busy machine; a second is too short to tell it from never.
    expect: { poll: { timeout: 10_000 } },
    reporters: ['default', ['json', { outputFile: 'dist/test-report.json' }]],
  },
})
