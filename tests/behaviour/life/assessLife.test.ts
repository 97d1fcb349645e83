import { describe, expect, it } from 'vitest';
import { LIFE_HOLDS_FOR, severity, THICK_SECTION } from '../../../src/core/life/assessLife.ts';
import { chanceOfReaching, doubtSigma, medianWanted } from '../../../src/core/life/scatter.ts';
import { lifeAtStrain, LONGEST_LIFE } from '../../../src/core/life/strainLife.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';
import { lifeOf, type OneFlex } from '../../support/life.ts';

const EASY: OneFlex = {
  peakStrain: 0.03,
  ratio: 0,
  cycles: 5000,
  acrossLayers: false,
  thickness: 0.84,
  filament: filament('petg'),
};
const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

describe('the five limits of the curve', () => {
  it('1: above the first-flex strain there is no life, and B is never taken for a ductility', () => {
    const answer = lifeOf({ ...EASY, peakStrain: 0.61 });
    expect(answer).toMatchObject({ breaksOnFirstFlex: true, median: 0, chance: 0, chanceScatterOnly: 0, beyond: 'no' });
    expect(answer.total).toEqual({ p10: 0, p50: 0, p90: 0 });
    expect(lifeOf({ ...EASY, peakStrain: 0.6 }).breaksOnFirstFlex).toBe(false);
  });

  it('2: nothing is reported past the data, for the median or for what is wanted', () => {
    expect(lifeOf(EASY).beyond).toBe('no');
    expect(lifeOf({ ...EASY, peakStrain: 0.005 }).beyond).toBe('median');
    expect(lifeOf({ ...EASY, cycles: 1_000_000 }).beyond).toBe('no');
    expect(lifeOf({ ...EASY, cycles: 1_000_001 }).beyond).toBe('wanted');
    expect(lifeOf({ ...EASY, cycles: 2_000_000, filament: filament('pla') }).beyond).toBe('no');
  });

  it('3: across layers the allowed strain is what the row leaves of it', () => {
    const across = lifeOf({ ...EASY, acrossLayers: true });
    const factor = filament('petg').properties.acrossLayersStrainFactor!.typical;
    expectClose(across.equivalentStrain, 0.03 / factor, ROUND_OFF);
    expectClose(across.median, lifeOf({ ...EASY, peakStrain: 0.03 / factor }).median, ROUND_OFF);
    expect(lifeOf({ ...EASY, peakStrain: 0.6 * factor + 1e-6, acrossLayers: true }).breaksOnFirstFlex).toBe(true);
  });

  it.each(['pp', 'pp-moulded'] as const)('4: %s thicker than 0.5 mm bears 0.6 of the strain', (id) => {
    const at = (thickness: number) => severity({ ...EASY, filament: filament(id), thickness });
    expect(THICK_SECTION).toBe(0.5);
    expect(at(THICK_SECTION)).toBe(1);
    expectClose(at(THICK_SECTION + 0.01), 1 / 0.6, ROUND_OFF);
  });

  it('4: no other filament has that rule', () => {
    const others = FILAMENTS.filter(({ id }) => !id.startsWith('pp'));
    expect(others.map((row) => severity({ ...EASY, filament: row, thickness: 3 }))).toEqual(others.map(() => 1));
  });

  it('5: the conditions are stated', () => {
    expect(LIFE_HOLDS_FOR).toMatchObject({ roomTemperatureC: 23, flexesPerSecond: 2 });
  });
});

describe('severity', () => {
  it('is √2 for both ways, and the factors multiply', () => {
    expectClose(severity({ ...EASY, ratio: -1 }), Math.SQRT2, ROUND_OFF);
    const worst = severity({ ratio: -1, acrossLayers: true, thickness: 0.84, filament: filament('pp') });
    const layers = filament('pp').properties.acrossLayersStrainFactor!.typical;
    expectClose(worst, Math.SQRT2 / (0.6 * layers), ROUND_OFF);
  });

  it('turns a curve in equivalent strain into one in peak strain', () => {
    const bothWays: OneFlex = { ...EASY, ratio: -1 };
    const { equivalentStrain } = lifeOf(bothWays);
    expectClose(equivalentStrain, EASY.peakStrain * severity(bothWays), ROUND_OFF);
  });
});

describe('spread and chance', () => {
  it('say the same: half reach the median, one in ten breaks by N10', () => {
    const answer = lifeOf(EASY);
    const chanceOf = (cycles: number) => lifeOf({ ...EASY, cycles });
    expectClose(chanceOf(answer.median).chance, 0.5, { abs: 1e-12, because: 'round-off' });
    expectClose(chanceOf(answer.total.p10).chance, 0.9, { abs: 1e-12, because: 'round-off' });
    expectClose(chanceOf(answer.scatter.p90).chanceScatterOnly, 0.1, { abs: 1e-12, because: 'round-off' });
  });

  it.each([3, 10])('the true curve lies within a factor of %s nine times in ten', (factor) => {
    const below = (cycles: number) => 1 - chanceOfReaching(1000, cycles, doubtSigma(factor));
    const within = below(1000 * factor) - below(1000 / factor);
    expectClose(within, 0.9, { abs: 1e-12, because: 'round-off' });
  });

  it('doubt widens the spread to both sides', () => {
    const { scatter, total } = lifeOf(EASY);
    expect(total.p10).toBeLessThan(scatter.p10);
    expect(total.p90).toBeGreaterThan(scatter.p90);
    expect(total.p50).toBe(scatter.p50);
  });

  it('nothing reaches anything when the first flex breaks it', () => {
    expect(chanceOfReaching(0, 1, 0.6)).toBe(0);
  });

  it('half the chance needs the wanted cycles themselves', () => {
    expectClose(medianWanted(5000, 0.5, { sigmaLog10N: 0.6, doubtFactor: 10 }), 5000, ROUND_OFF);
  });
});

describe('life at a strain', () => {
  it('is finite with no strain at all', () => {
    expect(lifeAtStrain(0, filament('pp').life)).toBe(LONGEST_LIFE);
    expect(lifeOf({ ...EASY, peakStrain: 0 })).toMatchObject({ median: LONGEST_LIFE, beyond: 'median' });
  });

  it.each([-0.01, NaN])('a strain of %s is a mistake of the caller', (strain) => {
    expect(() => lifeAtStrain(strain, filament('pla').life)).toThrow(RangeError);
  });

  it('a curve that is not made of two falling terms is a mistake of the caller', () => {
    expect(() => lifeAtStrain(0.05, { ...filament('pla').life, B: -1 })).toThrow(RangeError);
  });
});
