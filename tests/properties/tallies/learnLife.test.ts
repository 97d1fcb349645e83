/** What holds of learning from flexed strips, whatever was counted. */
import { describe, expect, it } from 'vitest';
import { likeliestLevel, likeliestLine } from '../../../src/core/life/likeliestLine.ts';
import { curveSigma, totalSigma } from '../../../src/core/life/scatter.ts';
import { lifeAtStrain } from '../../../src/core/life/strainLife.ts';
import type { FlexTally } from '../../../src/core/material/tally.ts';
import type { StrainLifeCurve } from '../../../src/core/material/types.ts';
import { believedAt } from '../../../src/core/tallies/expectedDoubt.ts';
import { equivalentOf } from '../../../src/core/tallies/flexStrain.ts';
import { believedOf, foretoldBy, learnLife, type LifeLearned } from '../../../src/core/tallies/learnLife.ts';
import { drawsOf, flexed } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';

const PETG = filament('petg');
const LENGTHS = [5, 8, 12, 18] as const;

function learned(flexes: readonly FlexTally[], prior = PETG): LifeLearned {
  const result = learnLife(prior, flexes);
  if (!result.ok || !result.value) throw new Error('something is learned');
  return result.value;
}

const strainAt = (length: number): number => equivalentOf(flexed(length, 1), PETG);
const logLife = (life: StrainLifeCurve, length: number): number => Math.log10(lifeAtStrain(strainAt(length), life));

/** Strips of lives that the row foretells, moved and scattered. */
function strips(count: number, shift: number, scatter: number, stop = Infinity, seed = 5): readonly FlexTally[] {
  const { normal } = drawsOf(seed);
  return Array.from({ length: count }, (_, i) => {
    const length = LENGTHS[i % LENGTHS.length]!;
    const cycles = Math.max(1, Math.round(10 ** (logLife(PETG.life, length) + shift + scatter * normal())));
    return cycles > stop ? flexed(length, stop, 'whole', `t${i}`) : flexed(length, cycles, 'broke', `t${i}`);
  });
}

describe('the curve', () => {
  it.each([
    [3, Infinity],
    [12, Infinity],
    [12, 2000],
    [60, 5000],
  ])('of %d strips keeps its form: median and doubt are those of the straight line in decades', (count, stop) => {
    const flexes = strips(count, -0.4, 0.5, stop);
    const { life } = learned(flexes);
    const { now } = believedOf(PETG, flexes);
    for (const length of [3, 6, 12, 25]) {
      const x = foretoldBy(strainAt(length), PETG.life);
      const { shift, variance } = believedAt(now, x);
      expectClose(logLife(life, length), x + shift, { abs: 1e-9, because: 'lives are solved to 10⁻¹²' });
      const doubt = curveSigma(life, 10 ** (x + shift));
      expectClose(doubt, Math.sqrt(variance), { rel: 1e-9, because: 'a variance of a straight line is a parabola' });
    }
  });

  it('is told to be by one’s own test, and the rest of the row stays', () => {
    const { life } = learned(strips(6, 0.3, 0.4, 3000));
    const { gamma, firstFlexBreakStrain } = PETG.life;
    expect(life).toMatchObject({
      gamma,
      firstFlexBreakStrain,
      certainty: 'by your own test',
      provenance: { kind: 'measured' },
    });
  });

  it('goes as far as the longest count where that is farther', () => {
    expect(learned([flexed(60, 3_000_000, 'whole')]).life.maxReportableCycles).toBe(3_000_000);
    expect(learned([flexed(10, 300)]).life.maxReportableCycles).toBe(PETG.life.maxReportableCycles);
  });
});

describe('how far counts move it', () => {
  it.each([-1, -0.5, 0.5, 1])('three that agree move it by more than half of their way of %d decades', (shift) => {
    const cycles = Math.round(10 ** (logLife(PETG.life, 8) + shift));
    const { life } = learned([
      flexed(8, cycles, 'broke', 'a'),
      flexed(8, cycles, 'broke', 'b'),
      flexed(8, cycles, 'broke', 'c'),
    ]);
    const moved = logLife(life, 8) - logLife(PETG.life, 8);
    expect(moved / shift).toBeGreaterThan(0.5);
    expect(moved / shift).toBeLessThan(1);
  });

  it.each([
    [-0.8, Infinity],
    [0.7, Infinity],
    [-0.8, 3000],
  ])('thirty dominate: moved by %d decades it lies on the likeliest line to a tenth of the way', (shift, stop) => {
    const flexes = strips(30, shift, 0.4, stop);
    const { life } = learned(flexes);
    // The likeliest line over what the row foretells: 10^(−x) stands for a strain.
    const tested = flexes.map((tally) => ({
      strain: 10 ** -foretoldBy(equivalentOf(tally, PETG), PETG.life),
      cycles: tally.cycles,
      whole: tally.ended === 'whole',
    }));
    const line = likeliestLine(tested);
    if (!line.ok) throw new Error('a line is found');
    for (const length of [8, 12]) {
      const x = logLife(PETG.life, length);
      expect(Math.abs(logLife(life, length) - (line.value.intercept - line.value.slope * x))).toBeLessThan(
        0.1 * Math.abs(shift),
      );
    }
  });

  it('thirty at one strain dominate its level', () => {
    const { normal } = drawsOf(9);
    const flexes = Array.from({ length: 30 }, (_, i) =>
      flexed(10, Math.round(10 ** (2 + 0.4 * normal())), 'broke', `t${i}`),
    );
    const level = likeliestLevel(
      flexes.map(({ cycles }) => ({ strain: 1, cycles, whole: false })),
      0,
    );
    if (!level.ok) throw new Error('a level is found');
    expect(Math.abs(logLife(learned(flexes).life, 10) - level.value.intercept)).toBeLessThan(0.1);
  });
});

describe('bands at the tested strain', () => {
  it('never widen when a strip is added that lives as long as foretold', () => {
    let flexes: readonly FlexTally[] = [];
    let life = PETG.life;
    for (let i = 0; i < 12; i += 1) {
      const middle = 10 ** logLife(life, 10);
      const next = [...flexes, flexed(10, Math.round(middle), 'broke', `t${i}`)];
      const now = learned(next).life;
      const [before, after] = [totalSigma(life, middle), totalSigma(now, 10 ** logLife(now, 10))];
      expect(after).toBeLessThan(before);
      expect(now.sigmaLog10N).toBeLessThan(life.sigmaLog10N);
      [flexes, life] = [next, now];
    }
  });

  it('narrow less where nothing was tested', () => {
    const { life } = learned(strips(8, 0, 0.4).map((tally) => ({ ...tally, bend: flexed(5, 1).bend })));
    const doubt = (length: number) => curveSigma(life, 10 ** logLife(life, length));
    expect(doubt(5)).toBeLessThan(doubt(12));
    expect(doubt(12)).toBeLessThan(doubt(30));
  });
});

describe('undoing', () => {
  const flexes = strips(9, -0.3, 0.5, 2000);

  it('taking a strip away gives back exactly what was', () => {
    const before = learned(flexes.slice(0, 8));
    learned(flexes);
    expect(learned(flexes.filter(({ id }) => id !== flexes[8]!.id))).toEqual(before);
  });

  it('the order in which strips were entered does not matter to the last figure', () => {
    const [one, other] = [learned(flexes), learned(flexes.toReversed())];
    expect(other.life).toEqual(one.life);
    expect(other.told.strips.toReversed()).toEqual(one.told.strips);
  });

  it('setting a strip aside teaches what taking it away does, and still tells of it', () => {
    const aside = learned(flexes.map((tally, i) => (i === 4 ? { ...tally, leftOut: true as const } : tally)));
    expect(aside.life).toEqual(learned(flexes.toSpliced(4, 1)).life);
    expect(aside.told.strips).toHaveLength(9);
    expect(aside.told.broke + aside.told.whole).toBe(8);
  });

  it('nothing counted, nothing learned', () => {
    expect(learnLife(PETG, [])).toEqual({ ok: true, value: undefined, notes: [] });
    expect(learnLife(PETG, [{ ...flexed(10, 5), leftOut: true }])).toMatchObject({ ok: true, value: undefined });
  });
});

function figures({ life, told }: LifeLearned): readonly number[] {
  const { A, b, B, c, sigmaLog10N, doubtFactor, surestLife, doubtPerDecade } = life;
  const offs = told.strips.map(({ off }) => off);
  return [A, b, B, c, sigmaLog10N, doubtFactor, surestLife!, doubtPerDecade!, told.shift, told.stretch, ...offs];
}

describe('whatever was entered', () => {
  const EVERY_ROW = ['pla', 'petg', 'abs', 'asa', 'pa6', 'pa12', 'pp', 'tpu95a', 'pc'] as const;

  it.each(EVERY_ROW)('%s: figures are figures', (id) => {
    const prior = filament(id);
    const sets: readonly (readonly FlexTally[])[] = [
      [flexed(0.5, 1)],
      [flexed(0.5, 5000)],
      [flexed(500, 3)],
      [flexed(500, 1e9, 'whole')],
      [flexed(10, 0)],
      [flexed(10, 0, 'whole')],
      Array.from({ length: 30 }, (_, i) => flexed(10, 200, 'broke', `t${i}`)),
      Array.from({ length: 17 }, (_, i) => flexed(10, 2000, 'whole', `t${i}`)),
    ];
    for (const flexes of sets) {
      const result = learnLife(prior, flexes);
      if (!result.ok) expect(result.problems[0].code).toBe('no-answer');
      else expect(figures(result.value!).every(Number.isFinite), JSON.stringify(result.value)).toBe(true);
    }
  });

  it.each([
    ['a count', flexed(10, Number.NaN)],
    ['a thickness', { ...flexed(10, 100), thickness: Number.NaN }],
    ['a length of nought', flexed(0, 100)],
    ['an endless count', flexed(10, Infinity)],
  ])('%s that is no number is passed over', (_, bad) => {
    const good = flexed(10, 300);
    expect(learned([bad, good]).life).toEqual(learned([good]).life);
  });

  it('counts that ask for a curve of no plastic are refused in words', () => {
    const flexes = Array.from({ length: 60 }, (_, i) => flexed(10, 1e9, 'broke', `t${i}`));
    expect(learnLife({ ...PETG, life: { ...PETG.life, doubtFactor: 100 } }, flexes)).toMatchObject({
      ok: false,
      problems: [{ code: 'no-answer', field: 'tallies' }],
    });
  });

  it('five hundred strips that leave next to no doubt are resolved', () => {
    const { life, told } = learned(strips(500, 0.3, 0.5, 10_000));
    expect(told.taught).toBe('level and slope');
    expectClose(logLife(life, 8) - logLife(PETG.life, 8), 0.3, {
      abs: 0.1,
      because: 'three standard deviations of the mean of 500',
    });
    expect(life.doubtFactor).toBeLessThan(1.2);
    expectClose(life.sigmaLog10N, 0.5, { rel: 0.12, because: 'three standard deviations of a spread of 400' });
  });
});

describe('a row that tests have taught stands behind another as well', () => {
  it('learning in two steps is learning in one, where both leave a straight line', () => {
    const flexes = strips(12, -0.4, 0.5);
    const first = learned(flexes.slice(0, 6)).life;
    const second = learned(flexes.slice(6), { ...PETG, life: first }).life;
    const { life } = learned(flexes);
    for (const length of [5, 12]) {
      const apart = Math.abs(logLife(second, length) - logLife(life, length));
      // What is handed on is a mean, a variance and one σ, not the whole of what is believed.
      expect(apart).toBeLessThan(0.5 * curveSigma(life, 10 ** logLife(life, length)));
    }
  });
});
