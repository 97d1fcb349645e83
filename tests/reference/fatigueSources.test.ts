/**
 * The curves of the filament table against what was published, source by source. None of these is a test of a printed
 * flexure in bending at a known strain, which nobody seems to have published; what each comparison is worth stands beside it.
 */
import { describe, expect, it } from 'vitest';
import { equivalentStrain, lifeAtStrain, strainAtLife } from '../../src/core/life/strainLife.ts';
import type { RowId } from '../../src/core/material/types.ts';
import { wholeRow } from '../../src/core/material/wholeRow.ts';
import { expectClose } from '../support/close.ts';
import { filament } from '../support/filament.ts';

const life = (id: RowId, strain: number): number => lifeAtStrain(strain, filament(id).life);

/**
 * [s1-pla-fatigue] Fig. 5c, printed PLA, axial: 11.1 MPa at 2e6 cycles, inverse slope k = 6.9, band ratio T = 1.604 between
 * 10 and 90 % survival. Stresses become strains through the modulus of the row, which is from memory.
 */
describe('printed PLA, axial', () => {
  const { life: curve, properties } = filament('pla');
  const modulus = properties.youngsModulus.typical;

  it('slope and scatter are those of the published line', () => {
    expectClose(curve.b, -1 / 6.9, { printedTo: 4 });
    expectClose((Math.log10(1.604) / (2 * 1.2816)) * 6.9, curve.sigmaLog10N, { printedTo: 2 });
  });

  it.each([
    [1e4, 23.9],
    [1e5, 17.1],
    [1e6, 12.3],
    [2e6, 11.1],
  ])('at %s cycles the elastic term stands for %s MPa', (cycles, stress) => {
    expectClose(modulus * strainAtLife(cycles, { ...curve, B: 0 }), stress, {
      abs: 0.06,
      because: 'printed to 0.1 MPa, and A to three figures',
    });
  });

  it('errs on the safe side when flexed both ways: 3.2e5 where the source has 2e6', () => {
    const cycles = life('pla', equivalentStrain(11.1 / modulus, -1, curve.gamma));
    expectClose(cycles, 3.2e5, { printedTo: -4 });
    expect(cycles).toBeLessThan(2e6);
  });
});

/**
 * [s3-moulded-fatigue] table, moulded PC in reversed flexure: 5400, 2000, 1000 and 800 psi at 1e4 to 1e7. The row was
 * fitted to these points over 2350 MPa, times √2 for R = −1 to 0 and 0.7 for printing, so this shows the fit and no more.
 */
describe('moulded PC, reversed flexure', () => {
  it.each([
    [1e4, 37.2],
    [1e5, 13.8],
    [1e6, 6.9],
    [1e7, 5.5],
  ])('at %s cycles, %s MPa', (cycles, stress) => {
    const printed = equivalentStrain(stress / 2350, -1, 0.5) * 0.7;
    const elastic = strainAtLife(cycles, { ...filament('pc').life, B: 0 });
    expectClose(Math.log10(elastic), Math.log10(printed), {
      abs: 0.1,
      because: 'largest misfit stated for the straight line through four points',
    });
  });
});

/**
 * [s2-printed-hinges] abstract: printed hinges folded until they parted. The fold strain was not visible; 0.18 is the only
 * one at which all statements agree, because the PP curve was set there. A tuned match, not a confirmation.
 */
describe('printed hinges at an assumed fold strain of 0.18', () => {
  it('PP endures a million, TPU more than two', () => {
    expect(life('pp', 0.18)).toBeGreaterThan(1e6);
    expect(life('tpu95a', 0.18)).toBeGreaterThan(2e6);
  });

  it.each(['pa6', 'pa12', 'petg', 'pla'] as const)('%s parts before a thousand', (id) => {
    expect(life(id, 0.18)).toBeLessThan(1000);
  });
});

/** [s8-hinge-classes]: a hinge that stays elastic lasts several thousand. The single-use limit is 0.7 of the yield strain. */
describe('hinge strained to the single-use limit', () => {
  it.each(['pla', 'petg', 'abs', 'asa'] as const)('%s lasts 1e3 to 2e4', (id) => {
    const cycles = life(id, filament(id).properties.permissibleStrainSingle.typical);
    expect(cycles).toBeGreaterThan(1e3);
    expect(cycles).toBeLessThan(2e4);
  });
});

/**
 * [s7-moulded-hinge] geometry with [s24-hinge-article] “more than a million”: the curve gives 4.3e5 at 0.3 mm and a
 * land of 1.5 mm. Same order, a little low.
 */
it('a moulded hinge folded flat lasts of the order of a million', () => {
  const cycles = life('pp-moulded', wholeRow(filament('pp-moulded')).properties.hingeNominalStrain!.typical);
  expect(cycles).toBeGreaterThan(1e5);
  expect(cycles).toBeLessThan(1e7);
});

/** [s4-pa12-fatigue] p. 155: sintered PA12, 29.3 MPa along and 16.8 MPa across layers at 1e6. The printed row is set below. */
describe('sintered PA12', () => {
  const { properties, life: curve } = wholeRow(filament('pa12'));

  it('bears more strain at a million than the printed row', () => {
    expect(strainAtLife(1e6, curve)).toBeLessThan(29.3 / 1650);
  });

  it('keeps 0.57 of it across layers, inside the range assumed for printing', () => {
    expectClose(16.8 / 29.3, properties.acrossLayersFatigueRatio!.typical, { printedTo: 2 });
    const { low, high } = properties.acrossLayersStrainFactor!;
    expect(16.8 / 29.3).toBeGreaterThan(low!);
    expect(16.8 / 29.3).toBeLessThan(high!);
  });
});
