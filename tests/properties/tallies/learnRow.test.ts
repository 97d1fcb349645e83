/** Whatever tests are permitted, the row that they make can be kept, read back and taught again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { checkFilament } from '../../../src/core/material/ownCheck.ts';
import { learnRow, newTests } from '../../../src/core/tallies/learnRow.ts';
import { readFilamentFile } from '../../../src/files/filamentFile.ts';
import { writeFilaments } from '../../../src/files/filamentText.ts';
import { anyTests } from '../../support/tallies.ts';

describe('a row that tests have taught', () => {
  it('is one that can be kept, and comes back from a file the same', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FILAMENTS), anyTests, (prior, { tallies }) => {
        const made = newTests(prior, 'spool', 'own-spool', '', '');
        const row = { ...made, own: { ...made.own, tests: { ...made.own.tests!, tallies } } };
        const { row: taught } = learnRow(row, prior);
        expect(checkFilament(taught)).toEqual([]);
        const read = readFilamentFile(writeFilaments([taught]));
        expect(read.ok && read.value[0]).toEqual(taught);
        expect(learnRow(taught, prior).row).toEqual(taught);
      }),
      { numRuns: 60 },
    );
  });
});
