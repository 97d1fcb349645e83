/** Laws of how filaments are laid out, ordered and marked. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawnCurve, peakSpreadAt } from '../../src/core/life/curveOf.ts';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { rowAxis } from '../../src/ui/filaments/axes.ts';
import { markedAfter, markedInstead, MOST_MARKED, stillHere } from '../../src/ui/filaments/comparing.ts';
import { spreadNames } from '../../src/ui/filaments/endNames.ts';
import { addressOf, filamentIn } from '../../src/ui/filaments/route.ts';
import { neighbour } from '../../src/ui/filaments/tableKeys.ts';
import { neighboursOf } from '../../src/ui/filaments/useNeighbours.ts';

const id = fc.constantFrom(...FILAMENTS.map((row) => row.id));
const presses = fc.array(fc.tuple(id, fc.option(fc.nat(3), { nil: undefined })), { maxLength: 30 });

describe('marks', () => {
  it('are never more than three, none twice, and a fourth only asks', () => {
    fc.assert(
      fc.property(presses, (all) => {
        let marked: readonly string[] = [];
        for (const [pressed, drop] of all) {
          const after = markedAfter(marked, pressed);
          if (after.asked !== undefined) expect(after.marked).toEqual(marked);
          marked = markedInstead(after.marked, after.asked, drop === undefined ? undefined : after.marked[drop]);
          expect(marked.length).toBeLessThanOrEqual(MOST_MARKED);
          expect(new Set(marked).size).toBe(marked.length);
        }
      }),
    );
  });
});

describe('names at the ends of curves', () => {
  const ends = fc.array(
    fc.integer({ min: 0, max: 4000 }).map((n) => n / 10),
    { minLength: 1, maxLength: 20 },
  );

  it('keep their order and their distance, and stay on paper that has room', () => {
    fc.assert(
      fc.property(ends, (heights) => {
        const names = spreadNames(
          heights.map((end, at) => ({ key: String(at), end })),
          14,
          [0, 400],
        );
        expect(names.map(({ end }) => end)).toEqual(heights.toSorted((a, b) => a - b));
        for (const [at, { stands }] of names.entries()) {
          const above = names[at - 1];
          if (above) expect(stands - above.stands).toBeGreaterThanOrEqual(14 - 1e-9);
          expect(stands).toBeGreaterThanOrEqual(0 - 1e-9);
          expect(stands).toBeLessThanOrEqual(400 + 1e-9);
        }
      }),
    );
  });

  it('stand at their ends where those are far enough apart', () => {
    const names = spreadNames(
      [10, 40, 80].map((end) => ({ key: String(end), end })),
      14,
      [0, 400],
    );
    expect(names.map(({ stands }) => stands)).toEqual([10, 40, 80]);
  });
});

describe('an axis of a column', () => {
  const figures = fc.array(
    fc.integer({ min: 1, max: 10_000_000 }).map((n) => n / 1000),
    { minLength: 2, maxLength: 30 },
  );

  it('has a place for every figure, in their order, and ticks only where it reaches', () => {
    fc.assert(
      fc.property(fc.constantFrom('log' as const, 'linear' as const), figures, (kind, values) => {
        const axis = rowAxis(kind, values);
        const sorted = values.toSorted((a, b) => a - b);
        for (const [at, value] of sorted.entries()) {
          const place = axis.at(value);
          expect(place >= 0 && place <= 1).toBe(true);
          if (at > 0) expect(place).toBeGreaterThanOrEqual(axis.at(sorted[at - 1] as number) - 1e-12);
        }
        for (const { share } of axis.ticks) expect(share >= 0 && share <= 1).toBe(true);
      }),
    );
  });
});

describe('a drawn curve', () => {
  const severity = fc.integer({ min: 100, max: 500 }).map((n) => n / 100);

  it('falls, ends where counting ends, and lies inside its bands, the narrower inside the wider', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FILAMENTS), severity, ({ life }, s) => {
        const { median, scatter, total } = drawnCurve(life, s);
        expect(median.at(-1)?.cycles).toBe(life.maxReportableCycles);
        for (const [at, point] of median.entries()) {
          const before = median[at - 1];
          if (before) {
            expect(point.cycles).toBeGreaterThan(before.cycles);
            expect(point.strain).toBeLessThanOrEqual(before.strain);
          }
          const [narrow, wide] = [scatter[at], total[at]];
          if (!narrow || !wide) throw new Error('a band ends before its median');
          const order = [wide.low, narrow.low, point.cycles, narrow.high, wide.high];
          expect(order).toEqual(order.toSorted((a, b) => a - b));
        }
      }),
    );
  });

  it('has early failures at less strain than late ones', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FILAMENTS), fc.integer({ min: 0, max: 600 }), ({ life }, n) => {
        const { low, half, high } = peakSpreadAt(10 ** (n / 100), life, 1);
        expect(low).toBeLessThanOrEqual(half);
        expect(half).toBeLessThanOrEqual(high);
      }),
    );
  });
});

describe('addresses and keys', () => {
  it('lead back to the filament that they were made of', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (key) => {
        expect(filamentIn(addressOf(key))).toBe(key);
      }),
    );
    expect(filamentIn(addressOf())).toBeUndefined();
    expect(filamentIn('#filaments/%')).toBe('%');
  });

  it('go round all filaments and back', () => {
    const ids = FILAMENTS.map((row) => row.id);
    for (const one of ids) {
      const { before, after } = neighboursOf(ids, one);
      expect(neighboursOf(ids, after).before).toBe(one);
      expect(neighboursOf(ids, before).after).toBe(one);
    }
    let at = ids[0] as string;
    const seen = ids.map(() => (at = neighboursOf(ids, at).after));
    expect(new Set(seen)).toEqual(new Set(ids));
  });

  it('step between the things of a table, and stop at its edges', () => {
    const rows = [
      ['a', 'b', 'c'],
      ['d', 'e'],
    ];
    expect(neighbour(rows, 'b', 'ArrowDown')).toBe('e');
    expect(neighbour(rows, 'c', 'ArrowDown')).toBe('e');
    expect(neighbour(rows, 'd', 'ArrowUp')).toBe('a');
    expect(neighbour(rows, 'a', 'ArrowRight')).toBe('b');
    expect(neighbour(rows, 'a', 'ArrowLeft')).toBeUndefined();
    expect(neighbour(rows, 'd', 'ArrowDown')).toBeUndefined();
    expect(neighbour(rows, 'a', 'x')).toBeUndefined();
    expect(neighbour(rows, 'z', 'ArrowDown')).toBeUndefined();
  });
});

describe('marks of filaments that are not here any more', () => {
  it('take no room, and nothing changes where all are here', () => {
    const all = ['petg', 'pa12', 'pp'];
    expect(stillHere(all)).toBe(all);
    expect(stillHere(['petg', 'own-gone', 'pp'])).toEqual(['petg', 'pp']);
    expect(markedAfter(stillHere(['petg', 'own-gone', 'pp']), 'pla')).toEqual({
      marked: ['petg', 'pp', 'pla'],
      asked: undefined,
    });
  });
});
