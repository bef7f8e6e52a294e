import { defineConfig } from 'vitest/config';

const report = process.env['NECKRING_TEST_REPORT'];

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    ...(report ? { reporters: ['default', 'json'], outputFile: { json: report } } : {}),
  },
});
