import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/**
 * What comes at once comes in one file. Left alone, every set of modules that a later piece shares with the first screen
 * would be a file of its own: ten requests more, and 4 kB more, since each is compressed without the others.
 */
const TOGETHER = [
  { name: 'first', test: /src\/main\.tsx$|rolldown\/runtime/, priority: 2 },
  { name: 'drawing', test: /src\/ui\/drawing\/JointDrawing\.tsx$/, priority: 1 },
];

/** Places other than the first, and what reads and writes files. */
const LATER = /(?:Mesh|Toolpath|Tests|Filaments|Lesson)Place-|(?:partFile|filamentFile|openLate|linkOnClipboard)-/;

/**
 * What is fetched along with a piece. Of what comes later only the styles are: the pieces that it imports follow a step after it,
 * so that a first visit need not carry the names of all of them.
 */
function withoutSmallPieces(piece: string, along: readonly string[]): string[] {
  return along.filter((name) => !LATER.test(piece) || name.endsWith('.css') || name === piece);
}

export default defineConfig({
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    sourcemap: true,
    // Every browser that runs this target fetches ahead by itself.
    modulePreload: { polyfill: false, resolveDependencies: withoutSmallPieces },
    rolldownOptions: { output: { codeSplitting: { groups: TOGETHER } } },
  },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    // A wrong answer fails a test; a slow machine does not.
    testTimeout: 60_000,
    setupFiles: ['tests/support/seed.ts', 'tests/support/everyKind.ts'],
    benchmark: { include: ['tests/bench/**/*.bench.ts'] },
  },
});
