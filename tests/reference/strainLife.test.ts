/**
 * Source [strain-life]: Basquin and Coffin-Manson. Figures of checkvalues/K.json, computed outside this program for two
 * invented materials. They are fully reversed amplitudes, ε_a = (σ_f′/E)(2N)^b + ε_f′(2N)^c; ours is the equivalent
 * strain of a 0 → ε → 0 cycle, so A = 2^γ·σ_f′/E, B = 2^γ·ε_f′, and a reversed cycle enters with R = −1.
 *
 * Source [mean-stress]: Morrow, and Smith, Watson and Topper, for the same two materials. Source [palmgren-miner]: the damage
 * sum. `K-E739` and `K-synth` are in regression.test.ts. `K-US` (universal slopes) is for metals, and not used for plastics.
 */
import { describe, expect, it } from 'vitest';
import { assessLife } from '../../src/core/life/assessLife.ts';
import {
  meanStrain,
  morrowLife,
  smithWatsonTopperLife,
  strainAmplitude,
  type ReversedCurve,
} from '../../src/core/life/meanStrain.ts';
import { equivalentStrain, lifeAtStrain, strainAtLife } from '../../src/core/life/strainLife.ts';
import { checkValues, expectRow, input, numbers, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { filament as filamentRow } from '../support/filament.ts';

const GAMMA = 0.5;
const petg = filamentRow('petg');

const REVERSED = 2 ** GAMMA;

const curveOf = (row: CheckValue) => ({
  A: (REVERSED * input(row, 'sf')) / input(row, 'E'),
  b: input(row, 'b'),
  B: REVERSED * input(row, 'ef'),
  c: input(row, 'c'),
  firstFlexBreakStrain: Infinity,
});

const reversedOf = (row: CheckValue): ReversedCurve => ({
  modulus: input(row, 'E'),
  strength: input(row, 'sf'),
  b: input(row, 'b'),
  ductility: input(row, 'ef'),
  c: input(row, 'c'),
});

describe('strain–life curve', () => {
  it.each(checkValues('K', 'K-N-'))('$id: life, fully reversed', (row) => {
    expectRow(row, lifeAtStrain(equivalentStrain(input(row, 'eps_a'), -1, GAMMA), curveOf(row)));
  });

  it.each(checkValues('K', 'K-ea-'))('$id: total, elastic and plastic amplitude', (row) => {
    const curve = curveOf(row);
    const amplitude = (part: Partial<typeof curve>) => strainAtLife(input(row, 'N'), { ...curve, ...part }) / REVERSED;
    expectRow(row, amplitude({}), amplitude({ B: 0 }), amplitude({ A: 0 }));
  });

  it.each(checkValues('K', 'K-Nt-'))('$id: elastic and plastic parts are equal at the transition life', (row) => {
    const curve = curveOf(row);
    const [cycles, amplitude] = [row.expected[0]!, row.expected[1]!];
    const elastic = strainAtLife(cycles, { ...curve, B: 0 });
    expectClose(elastic, strainAtLife(cycles, { ...curve, A: 0 }), { rel: 1e-9, because: 'tolerance of the row' });
    expectRow(row, lifeAtStrain(REVERSED * amplitude, curve), strainAtLife(cycles, curve) / REVERSED);
  });

  it.each(checkValues('K', 'K-R0-'))('$id: a cycle from nothing has a range equal to its peak', (row) => {
    const peak = input(row, 'eps_max');
    expect(equivalentStrain(peak, 0, GAMMA)).toBe(row.expected[2]);
    expectRow(row, strainAmplitude(peak, 0), meanStrain(peak, 0), 2 * strainAmplitude(peak, 0));
    // γ = 1 counts the range alone: fully reversed at half the peak has the same range.
    expectClose(equivalentStrain(row.expected[0]!, -1, 1), row.expected[2]!, { rel: 1e-15, because: 'round-off' });
  });
});

describe('mean stress', () => {
  it.each(checkValues('K', 'K-Morrow-'))('$id', (row) => {
    expectRow(row, morrowLife(input(row, 'eps_a'), input(row, 'sm'), reversedOf(row))!);
  });

  it.each(checkValues('K', 'K-SWT-'))('$id', (row) => {
    expectRow(row, smithWatsonTopperLife(input(row, 'eps_a'), input(row, 'smax'), reversedOf(row)));
  });

  it.each(checkValues('K', 'K-N-'))('$id: without a mean, Morrow says what the curve says', (row) => {
    expectRow(row, morrowLife(input(row, 'eps_a'), 0, reversedOf(row))!);
  });
});

describe('several kinds of flex', () => {
  it.each(checkValues('K', 'K-Miner-'))('$id: damage, and how often it can be repeated', (row) => {
    const filament = { ...petg, life: { ...petg.life, firstFlexBreakStrain: Infinity } };
    const counts = numbers(row, 'n');
    const [first, ...rest] = numbers(row, 'N').map((life, i) => ({
      amount: 1,
      peakStrain: strainAtLife(life, filament.life),
      ratio: 0,
      cycles: counts[i]!,
    }));
    const { median } = assessLife({ flexes: [first!, ...rest], acrossLayers: false, thickness: 0.4, filament });
    expectRow(row, counts[0]! / median, median / counts[0]!);
  });
});
