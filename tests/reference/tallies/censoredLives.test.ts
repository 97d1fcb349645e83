/**
 * Source [censored-likelihood]: against things outside this program. Where all broke: rows K-E739 and K-synth of
 * checkvalues/K.json (regressed elsewhere) and least squares of jstat. With run-outs: the likelihood itself, put together from
 * densities and shares of jstat and searched by brute force. Corpus: twelve strain-controlled tests of a plastic.
 */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { likeliestIntervals, medianInterval } from '../../../src/core/life/likeliestIntervals.ts';
import { likeliestLevel, likeliestLine, type Tested } from '../../../src/core/life/likeliestLine.ts';
import { intervalsOf, lineThrough } from '../../../src/core/life/regression.ts';
import { studentQuantile } from '../../../src/core/numeric/fDistribution.ts';
import { checkValues, expectRow, numbers, type CheckValue } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { corpusOf, corpusPart } from '../../support/corpus.ts';

function valueOf<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: unknown },
): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const testedIn = (row: CheckValue): readonly Tested[] =>
  numbers(row, 'eps').map((strain, i) => ({ strain, cycles: numbers(row, 'N')[i]!, whole: false }));

const ALL_BROKE = [...checkValues('K', 'K-E739-fit'), ...checkValues('K', 'K-synth')];

describe('where all broke', () => {
  it.each(ALL_BROKE)('$id: the line of least squares', (row) => {
    const { intercept, slope } = valueOf(likeliestLine(testedIn(row)));
    expectRow(row, intercept, slope);
  });

  it.each(ALL_BROKE)('$id: σ² is that of least squares times (k − 2)/k, intervals are those of Student', (row) => {
    const tested = testedIn(row);
    const [line, least] = [valueOf(likeliestLine(tested)), valueOf(lineThrough(tested))];
    const k = tested.length;
    expectClose(line.sigma ** 2, (least.deviation ** 2 * (k - 2)) / k, { rel: 1e-10, because: 'round-off' });
    const [by, student] = [likeliestIntervals(line, 0.95), intervalsOf(least, 0.95)];
    for (const name of ['intercept', 'slope'] as const) {
      for (const end of [0, 1] as const) {
        expectClose(by[name][end], student[name][end], {
          rel: 1e-7,
          because: 'where the likelihood falls is solved to 10⁻⁹',
        });
      }
    }
  });

  it.each(ALL_BROKE)('$id: so does jstat', (row) => {
    const tested = testedIn(row);
    const fitted = jStat.models.ols(
      tested.map(({ cycles }) => Math.log10(cycles)),
      tested.map(({ strain }) => [1, Math.log10(strain)]),
    );
    const { intercept, slope } = valueOf(likeliestLine(tested));
    expectClose(intercept, fitted.coef[0]!, { rel: 1e-8, because: 'it inverts the normal equations' });
    expectClose(slope, fitted.coef[1]!, { rel: 1e-8, because: 'it inverts the normal equations' });
  });

  it('the median at a strain has the interval of Student', () => {
    const tested = testedIn(ALL_BROKE[0]!);
    const [line, least] = [valueOf(likeliestLine(tested)), valueOf(lineThrough(tested))];
    const x = Math.log10(0.003);
    const { count, deviation, middle, spread } = least;
    const half = studentQuantile(0.95, count - 2) * deviation * Math.sqrt(1 / count + (x - middle) ** 2 / spread);
    const { median, low, high } = medianInterval(line, 0.003, 0.9);
    expectClose(Math.log10(high / median), half, {
      rel: 1e-7,
      because: 'where the likelihood falls is solved to 10⁻⁹',
    });
    expectClose(Math.log10(median / low), half, { rel: 1e-7, because: 'where the likelihood falls is solved to 10⁻⁹' });
  });
});

/** Invented: two of nine still whole. */
const RUN_OUTS: readonly Tested[] = [
  [0.09, 70, false],
  [0.09, 130, false],
  [0.06, 260, false],
  [0.06, 700, false],
  [0.04, 900, false],
  [0.04, 2100, false],
  [0.025, 4800, false],
  [0.025, 6000, true],
  [0.02, 6000, true],
].map(([strain, cycles, whole]) => ({ strain: strain as number, cycles: cycles as number, whole: whole as boolean }));

/** ln L by the densities and shares of another library. */
function byJstat(tested: readonly Tested[], intercept: number, slope: number, sigma: number): number {
  return tested.reduce((sum, { strain, cycles, whole }) => {
    const [middle, y] = [intercept + slope * Math.log10(strain), Math.log10(cycles)];
    return sum + Math.log(whole ? jStat.normal.cdf(2 * middle - y, middle, sigma) : jStat.normal.pdf(y, middle, sigma));
  }, 0);
}

/** Level at the middle strain, slope and σ, in steps that get finer. */
const around = (size: number) =>
  [-2, -1, 0, 1, 2].flatMap((a) =>
    [-2, -1, 0, 1, 2].flatMap((b) => [-2, -1, 0, 1, 2].map((c) => [a * size, b * size, c * size])),
  );

describe('with run-outs', () => {
  const line = valueOf(likeliestLine(RUN_OUTS));
  const top = byJstat(RUN_OUTS, line.intercept, line.slope, line.sigma);
  it('has the likelihood that another library gives', () => {
    expectClose(line.likelihood, top, { rel: 1e-6, because: 'the library gives eight figures of erfc' });
  });

  it.each([0.1, 0.01, 0.001])('nothing within two steps of %d is likelier by brute force', (size) => {
    const likelier = around(size).filter(([level = 0, slope = 0, spread = 0]) => {
      const other = line.slope + slope;
      const intercept = line.intercept + line.slope * line.middle + level - other * line.middle;
      return byJstat(RUN_OUTS, intercept, other, line.sigma * Math.exp(spread)) > top + 1e-6;
    });
    expect(likelier).toEqual([]);
  });

  it('a brute search from afar ends at the same place', () => {
    let best = { level: 3, slope: -2, logSigma: 0, value: -Infinity };
    for (let size = 0.5; size > 1e-5; size /= 1.5) {
      for (const [a = 0, b = 0, c = 0] of around(size)) {
        const tried = { level: best.level + a, slope: best.slope + b, logSigma: best.logSigma + c };
        const value = byJstat(RUN_OUTS, tried.level - tried.slope * line.middle, tried.slope, Math.exp(tried.logSigma));
        if (value > best.value) best = { ...tried, value };
      }
    }
    expectClose(best.slope, line.slope, {
      rel: 1e-3,
      because: 'the top is flat: a search by values sees no smaller step',
    });
    expectClose(Math.exp(best.logSigma), line.sigma, { rel: 1e-3, because: 'the top is flat' });
    expectClose(best.level, line.intercept + line.slope * line.middle, { rel: 1e-3, because: 'the top is flat' });
  });

  it('counts run-outs as more than, not as broken there', () => {
    const asBroken = valueOf(likeliestLine(RUN_OUTS.map((one) => ({ ...one, whole: false }))));
    const life = (fitted: typeof line) => fitted.intercept + fitted.slope * Math.log10(0.02);
    expect(life(line)).toBeGreaterThan(life(asBroken) + 0.05);
  });

  it('where the slope is given as it is, the level is the same', () => {
    const level = valueOf(likeliestLevel(RUN_OUTS, line.slope));
    expectClose(level.intercept, line.intercept, { rel: 1e-6, because: 'both rest where a rise is below round-off' });
    expectClose(level.sigma, line.sigma, { rel: 1e-6, because: 'both rest where a rise is below round-off' });
  });
});

interface Row {
  readonly name: string;
  readonly cycles: number;
  readonly stress: number;
  readonly strain: number;
  readonly elastic: number;
  readonly plastic: number;
}

function rowsOf(text: string): readonly Row[] {
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [name = '', cycles, , stress, strain, elastic, plastic] = line.split(',');
      return { name: name.replace('.csv', ''), cycles: Number(cycles), stress: Number(stress), strain: Number(strain), elastic: Number(elastic), plastic: Number(plastic) }; // prettier-ignore
    });
}

/** How many standard deviations of a new specimen each lies from the line through the others, and how far odd ones lie. */
function offOthers(rows: readonly Row[], figure: (row: Row) => number) {
  const points = rows.map((row) => ({ strain: row.strain, cycles: figure(row) }));
  const limit = studentQuantile(1 - 0.005 / rows.length, rows.length - 3);
  const off = points.map((point, i) => {
    const { intercept, slope, deviation, count, middle, spread } = valueOf(lineThrough(points.toSpliced(i, 1)));
    const x = Math.log10(point.strain);
    const error = deviation * Math.sqrt(1 + 1 / count + (x - middle) ** 2 / spread);
    return (Math.log10(point.cycles) - intercept - slope * x) / error;
  });
  return { limit, off };
}

const FILE = 'csv/strain-life-summary.csv';

describe.skipIf(!corpusOf('csv').some(({ file }) => file === FILE))('twelve tests of a plastic', () => {
  const rows = corpusOf('csv').some(({ file }) => file === FILE)
    ? rowsOf(new TextDecoder().decode(corpusPart(FILE)))
    : [];

  /**
   * The rule: on logarithmic paper stress rises with strain as a straight line; a row is odd where its stress lies farther from
   * the line through the others than one set in a hundred would hold by chance. That the elastic part is stress over one modulus and
   * that both parts add up holds for every row, so that it flags none; a plastic part below nought would flag 9-4 as well,
   * whose elastic part is 6 % above the whole, as far as a modulus is ever known.
   */
  it('only the stress of 12-9 does not belong to its strain', () => {
    const { limit, off } = offOthers(rows, ({ stress }) => stress);
    expect(rows.filter((_, i) => Math.abs(off[i]!) > limit).map(({ name }) => name)).toEqual(['12-9']);
    expect(rows.filter(({ plastic }) => plastic < 0).map(({ name }) => name)).toEqual(['12-9', '9-4']);
    expect(rows.every(({ elastic, plastic, strain }) => Math.abs(elastic + plastic - strain) < 1e-15)).toBe(true);
  });

  it('no life is odd: what is wrong with 12-9 is not its count', () => {
    const { limit, off } = offOthers(rows, ({ cycles }) => cycles);
    expect(off.every((one) => Math.abs(one) < limit)).toBe(true);
  });

  /** By scipy.stats.linregress, outside this program: all twelve rows, and without 12-9. */
  it.each([
    [[], -9.007071257346869, -7.0055989488483235],
    [['12-9'], -8.760268694318976, -6.826677733999836],
  ] as const)('without %j: the line of another program', (without, intercept, slope) => {
    const kept = rows.filter(({ name }) => !(without as readonly string[]).includes(name));
    const line = valueOf(likeliestLine(kept.map(({ strain, cycles }) => ({ strain, cycles, whole: false }))));
    expectClose(line.intercept, intercept, { rel: 1e-9, because: 'round-off' });
    expectClose(line.slope, slope, { rel: 1e-9, because: 'round-off' });
  });

  it('12-9 changes the slope by less than a third of its standard deviation', () => {
    const others = valueOf(lineThrough(rows.filter(({ name }) => name !== '12-9')));
    expect(Math.abs(valueOf(lineThrough(rows)).slope - others.slope)).toBeLessThan(others.slopeError / 3);
  });
});
