/** What the curves are said to stand on, against the curves themselves and against the figures of the sources. */
import { describe, expect, it } from 'vitest';
import { peakStrainAt, severityAt, transitionCycles } from '../../../src/core/life/curveOf.ts';
import { pushLeft, stressLeft } from '../../../src/core/life/relaxation.ts';
import { reckonedFolds } from '../../../src/core/life/reckonedFolds.ts';
import { lifeAtStrain, strainAtLife } from '../../../src/core/life/strainLife.ts';
import { EVIDENCE, FOLD_TEST, GUESSED_FOLD, PRACTICE_FOLD, strengthOf } from '../../../src/core/material/evidence.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import type { RowId } from '../../../src/core/material/types.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { checkValues, expectRow, input } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

const ids = FILAMENTS.map(({ id }) => id as RowId);

describe('the fold of practice', () => {
  it('strains 14.66 %, as the notes on fatigue work it out', () =>
    expectClose(PRACTICE_FOLD, 0.1466, { printedTo: 4 }));

  it.each(ids.filter((id) => EVIDENCE[id].some(({ what }) => /practice/.test(what))))(
    'is where the curve of %s was set: it gives the cycles that practice counts',
    (id) => {
      const anchor = EVIDENCE[id].find(({ what }) => /practice/.test(what));
      expectClose(lifeAtStrain(PRACTICE_FOLD, filament(id).life), anchor?.cycles ?? Number.NaN, {
        rel: 0.01,
        because: 'coefficients have four figures',
      });
    },
  );
});

describe('many cycles', () => {
  it.each(ids.filter((id) => EVIDENCE[id].some(({ what }) => /springy/.test(what))))(
    '%s: the springy part alone passes the strain that was chosen',
    (id) => {
      const { cycles, strain = Number.NaN } = EVIDENCE[id].find(({ what }) => /springy/.test(what)) ?? { cycles: 0 };
      const springy = strainAtLife(cycles, { ...filament(id).life, B: 0 });
      expectClose(springy, strain, { rel: 0.01, because: 'A is printed to three or four figures' });
    },
  );

  // The notes on fatigue, row by row: 0.0035 for PLA, 0.018 for sintered PA12, 0.0126 for moulded PA66.
  it.each([
    ['pla', 2e6, 0.0035, 4],
    ['pa12', 1e6, 0.018, 3],
    ['pa6', 1e6, 0.0126, 4],
  ] as const)('%s: published stress over remembered modulus at %s cycles is %s', (id, cycles, strain, printedTo) => {
    const seen = EVIDENCE[id].find((one) => one.seen && one.strain !== undefined && one.cycles === cycles);
    expectClose(seen?.strain ?? Number.NaN, strain, { printedTo });
    expect(seen?.kind).toBe('memory');
  });

  it('PP: the guessed strain of the fold test is where the curve has its million', () => {
    expectClose(lifeAtStrain(GUESSED_FOLD, filament('pp').life), 1e6, {
      rel: 0.1,
      because: 'so flat a curve moves by 7 % of life with a figure in the fourth place of strain',
    });
  });
});

describe('the published fold test', () => {
  it('says of each filament what the notes on fatigue quote', () => {
    const said = Object.fromEntries(FOLD_TEST.map(({ name, cycles, says }) => [name, `${says} ${cycles}`]));
    expect(said).toEqual({
      TPU: 'more 2000000',
      PP: 'more 1000000',
      'styrene elastomer': 'at 244424',
      nylon: 'fewer 1000',
      PETG: 'fewer 1000',
      PLA: 'fewer 1000',
    });
  });

  // Table of the notes at 0.05; and the check at 0.147.
  it.each([
    ['pa12', 1000, 14_000],
    ['petg', 200, 2400],
    ['pla', 3, 40],
  ] as const)('%s is reckoned to last %s folds at 14.7 %% and %s at 5 %%', (id, practice, mild) => {
    const folds = reckonedFolds(filament(id));
    const because = 'the table has two figures';
    expectClose(folds.practice, practice, { rel: 0.05, because });
    expectClose(folds.mild, mild, { rel: 0.05, because });
    expect(folds.hard).toBeLessThanOrEqual(folds.practice);
  });

  it('is never answered with more than anyone has counted', () => {
    for (const row of FILAMENTS) {
      for (const folds of Object.values(reckonedFolds(row))) {
        expect(folds).toBeLessThanOrEqual(row.life.maxReportableCycles);
      }
    }
  });
});

describe('transition life', () => {
  it.each(checkValues('K', 'K-Nt-'))('$id', (row) => {
    const [E, sf] = [input(row, 'E'), input(row, 'sf')];
    const curve = { A: sf / E, b: input(row, 'b'), B: input(row, 'ef'), c: input(row, 'c') };
    const cycles = transitionCycles(curve);
    expectRow(row, cycles, strainAtLife(cycles, curve));
  });
});

describe('a drawn curve', () => {
  it('agrees with the life at its strain, whatever is done to it', () => {
    for (const { life } of FILAMENTS) {
      for (const ratio of [0, -1, 0.3]) {
        const severity = severityAt(ratio, life.gamma, 0.5);
        const strain = peakStrainAt(500, life, severity);
        if (strain * severity < life.firstFlexBreakStrain) {
          expectClose(lifeAtStrain(strain * severity, life), 500, { rel: 1e-6, because: 'a root to 1e-12 of ln N' });
        }
      }
    }
  });
});

describe('push left', () => {
  it.each(ids)('of %s is what its row says is lost after an hour and a day', (id) => {
    const { relaxationExponent: n, stressLossHour, stressLossDay } = wholeRow(filament(id)).properties;
    for (const [minutes, lost] of [
      [60, stressLossHour],
      [1440, stressLossDay],
    ] as const) {
      const { usual, least, most } = pushLeft(minutes, n);
      expectClose(100 * (1 - usual), lost.typical, { printedTo: 1 });
      expectClose(100 * (1 - least), lost.high ?? Number.NaN, { printedTo: 1 });
      expectClose(100 * (1 - most), lost.low ?? Number.NaN, { printedTo: 1 });
    }
  });

  it('is not told of the first minute', () => {
    expect(() => stressLeft(0.5, 0.05)).toThrow(RangeError);
    expect(() => stressLeft(Number.NaN, 0.05)).toThrow(RangeError);
  });
});

describe('how far a curve can be trusted', () => {
  it.each([
    ['pla', 'fair'],
    ['petg', 'weak'],
    ['pp', 'weak'],
    ['pc', 'fair'],
    ['pp-moulded', 'fair'],
  ] as const)('%s says of itself that it is %s', (id, strength) => {
    expect(strengthOf(filament(id).life.certainty)).toBe(strength);
  });
});
