import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: { target: 'es2022', sourcemap: true },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    setupFiles: ['tests/support/seed.ts', 'tests/support/everyKind.ts'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
  },
});
