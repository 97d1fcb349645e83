/** What holds of the likeliest line and its intervals, whatever was counted. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likeliestIntervals, medianInterval } from '../../../src/core/life/likeliestIntervals.ts';
import {
  likeliestLevel,
  likeliestLine,
  type LikeliestLine,
  type Tested,
} from '../../../src/core/life/likeliestLine.ts';
import type { Interval } from '../../../src/core/life/regression.ts';
import type { Result } from '../../../src/core/result.ts';
import { expectClose } from '../../support/close.ts';

/** Strains evenly over three decades, some the same; lives from one flex to a billion, the ends among them. */
const strains = fc.array(fc.double({ min: -3, max: 0, noNaN: true }), { minLength: 1, maxLength: 6 });
const lives = fc.oneof(
  fc.constantFrom(1, 1e9),
  fc.double({ min: 0, max: 9, noNaN: true }).map((decades) => Math.round(10 ** decades)),
);
const anyTested: fc.Arbitrary<readonly Tested[]> = strains.chain((levels) =>
  fc.array(
    fc.record({
      strain: fc.constantFrom(...levels.map((level) => 10 ** level)),
      cycles: lives,
      whole: fc.boolean(),
    }),
    { minLength: 1, maxLength: 30 },
  ),
);

const REFUSALS = ['below-minimum', 'no-answer'];

/** Those that a line or a level can be found for; any other set is refused in words. */
function found(tested: readonly Tested[]): readonly LikeliestLine[] {
  const all: readonly Result<LikeliestLine>[] = [likeliestLine(tested), likeliestLevel(tested, -3)];
  return all.flatMap((one) => {
    if (one.ok) return [one.value];
    expect(REFUSALS).toContain(one.problems[0].code);
    return [];
  });
}

function expectAbout(value: number, [low, high]: Interval): void {
  expect(low).toBeLessThanOrEqual(value);
  expect(value).toBeLessThanOrEqual(high);
}

describe('whatever was counted', () => {
  it('a line that is found is made of figures, and its intervals lie about it', () => {
    fc.assert(
      fc.property(anyTested, (tested) => {
        for (const line of found(tested)) {
          expect([line.intercept, line.slope, line.sigma].every(Number.isFinite)).toBe(true);
          const { intercept, slope, sigma } = likeliestIntervals(line, 0.9);
          expectAbout(line.intercept, intercept);
          expectAbout(line.slope, slope);
          // The σ of greatest likelihood is too small by chance, so that only its high end must lie beyond it.
          expect(sigma[0]).toBeLessThanOrEqual(sigma[1]);
          expect(line.sigma).toBeLessThanOrEqual(sigma[1]);
          const { median, low, high } = medianInterval(line, tested[0]!.strain, 0.9);
          expectAbout(Math.log10(median), [Math.log10(low), Math.log10(high)]);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('the order of entry does not matter', () => {
    fc.assert(
      fc.property(anyTested, (tested) => {
        const [here, there] = [found(tested), found(tested.toReversed())];
        expect(there).toHaveLength(here.length);
        for (const [i, { sigma, middle, intercept, slope }] of here.entries()) {
          const other = there[i]!;
          const tolerance = { abs: 1e-5 * sigma, because: 'both rest where a rise is below round-off' };
          expectClose(other.intercept + other.slope * middle, intercept + slope * middle, tolerance);
          expectClose(other.sigma, sigma, tolerance);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('one more that is still whole never shortens the life at its strain', () => {
    fc.assert(
      fc.property(anyTested, lives, (tested, cycles) => {
        const level = likeliestLevel(tested, -3);
        const more = likeliestLevel([...tested, { strain: tested[0]!.strain, cycles, whole: true }], -3);
        if (!level.ok || !more.ok) return;
        expect(more.value.intercept).toBeGreaterThanOrEqual(level.value.intercept - 1e-5 * level.value.sigma);
      }),
      { numRuns: 100 },
    );
  });
});

const all = (count: number, one: (index: number) => Tested) => Array.from({ length: count }, (_, i) => one(i));

describe('what is counted without end or at its ends', () => {
  it.each([
    ['none broke', all(12, (i) => ({ strain: 0.02 + 0.01 * i, cycles: 1000, whole: true })), 'below-minimum'],
    ['all at one strain', all(12, (i) => ({ strain: 0.05, cycles: 100 + i, whole: false })), 'below-minimum'],
    ['all alike', all(12, () => ({ strain: 0.05, cycles: 1, whole: false })), 'below-minimum'],
    ['all on one line', all(12, (i) => ({ strain: 10 ** -i, cycles: 10 ** i, whole: false })), 'no-answer'],
  ])('%s: refused in words', (_, tested, code) => {
    expect(likeliestLine(tested)).toMatchObject({ ok: false, problems: [{ code }] });
  });

  it('five hundred at one strain give a level, with an interval as narrow as their mean', () => {
    const level = likeliestLevel(
      all(500, (i) => ({ strain: 1, cycles: 10 ** (3 + (i % 5) / 4), whole: false })),
      -3,
    );
    if (!level.ok) throw new Error(level.problems[0].message);
    // Five alike steps of a quarter: mean 3.5, variance 2/16; 1.648 is Student's t of 499 at 90 %.
    expectClose(level.value.intercept, 3.5, { rel: 1e-9, because: 'round-off' });
    expectClose(level.value.sigma, Math.sqrt(2 / 16), { rel: 1e-9, because: 'round-off' });
    const [low, high] = likeliestIntervals(level.value, 0.9).intercept;
    expectClose((high - low) / 2, 1.648 * Math.sqrt(2 / 16 / 499), {
      rel: 1e-3,
      because: 't is given to four figures',
    });
  });
});
