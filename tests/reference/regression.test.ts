/**
 * Source [linear-regression]: rows of checkvalues/K.json. `K-E739` holds the worked example of a standard: data as
 * remembered from ASTM E739, which nobody here has opened; that they give the A, B, intervals and F remembered from it
 * makes them credible. `K-synth` is free of that doubt: invented data, regressed by another program.
 */
import { describe, expect, it } from 'vitest';
import { bandAt, intervalsOf, lackOfFit, lineThrough, type Counted } from '../../src/core/life/regression.ts';
import { fQuantile, studentQuantile } from '../../src/core/numeric/fDistribution.ts';
import { checkValues, expectRow, input, numbers, type CheckValue } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

function countedIn(row: CheckValue): readonly Counted[] {
  const cycles = numbers(row, 'N');
  return numbers(row, 'eps').map((strain, i) => ({ strain, cycles: cycles[i]! }));
}

function lineOf(counted: readonly Counted[]) {
  const line = lineThrough(counted);
  if (!line.ok) throw new Error(line.problems[0].message);
  return line.value;
}

const [E739] = checkValues('K', 'K-E739-fit');
const REMEMBERED = countedIn(E739!);
/** Two, two, three and two specimens at four levels. */
const LEVELS = [
  [0, 2],
  [2, 4],
  [4, 7],
  [7, 9],
].map(([from, to]) => REMEMBERED.slice(from, to));

describe('data as remembered from ASTM E739', () => {
  const line = lineOf(REMEMBERED);

  it.each(checkValues('K', 'K-E739-fit'))('$id', (row) => {
    expectRow(row, line.intercept, line.slope, line.deviation ** 2, line.deviation);
  });

  it.each(checkValues('K', 'K-E739-CI'))('$id', (row) => {
    const { intercept, slope } = intervalsOf(line, 0.95);
    expectRow(row, studentQuantile(0.975, input(row, 'k') - 2), ...intercept, ...slope);
  });

  it.each(checkValues('K', 'K-E739-band-'))('$id', (row) => {
    const { median, low, high } = bandAt(line, input(row, 'eps_p'), 0.95);
    expectRow(row, median, low, high);
    expectClose(fQuantile(0.95, 2, 7), input(row, 'F'), { rel: 1e-12, because: 'round-off' });
  });

  it.each(checkValues('K', 'K-E739-linF'))('$id: four levels lie on a line', (row) => {
    const { ratio, limit } = lackOfFit(line, LEVELS, 0.95)!;
    expectRow(row, ratio, limit);
    expect(ratio).toBeLessThan(limit);
  });
});

it.each(checkValues('K', 'K-synth'))('$id: invented data', (row) => {
  const { intercept, slope, deviation, slopeError, explained } = lineOf(countedIn(row));
  expectRow(row, intercept, slope, deviation, slopeError, explained);
});

describe('what a line cannot be laid through', () => {
  it.each([
    ['two specimens', REMEMBERED.slice(0, 2), 'below-minimum', 'counted'],
    ['one strain', REMEMBERED.slice(0, 3).map(({ cycles }) => ({ strain: 0.01, cycles })), 'below-minimum', 'counted'],
    ['no strain', [...REMEMBERED, { strain: 0, cycles: 10 }], 'not-a-number', 'counted[9]'],
    ['no count', [{ strain: 0.1, cycles: Number.NaN }, ...REMEMBERED], 'not-a-number', 'counted[0]'],
    ['an endless run', [{ strain: 0.1, cycles: Infinity }, ...REMEMBERED], 'not-a-number', 'counted[0]'],
  ] as const)('%s', (_, counted, code, field) => {
    expect(lineThrough(counted)).toMatchObject({ ok: false, problems: [{ code, field }] });
  });

  it('levels that are too few, or all of one specimen, are not judged', () => {
    const line = lineOf(REMEMBERED);
    expect(lackOfFit(line, LEVELS.slice(0, 2), 0.95)).toBeUndefined();
    expect(
      lackOfFit(
        line,
        REMEMBERED.map((one) => [one]),
        0.95,
      ),
    ).toBeUndefined();
  });
});
