/**
 * Source [plane-bending]: under a pure moment every leaf of a panel becomes an arc of the same turn, and every strip twists
 * alike, so a panel bends to part of a regular figure whose pieces all look towards one middle. Its two ends then lie as
 * mirror images, and meet where the inner corner of an end reaches the line between them: arithmetic of a regular polygon,
 * which shares nothing with the solver or with how gaps are looked for.
 */
import { describe, expect, it } from 'vitest';
import { leastGap, touchesAt } from '../../src/core/design/solvedPath.ts';
import type { Sizes } from '../../src/core/flexures/family.ts';
import { expectClose } from '../support/close.ts';
import { answered } from '../support/solvedJoints.ts';

const FULL_TURN = 2 * Math.PI;
const [LINE, LAYER] = [0.42, 0.2];
/** Told is the clear side of what is left when it is known to 0.2 %, and up to 0.005 mm before nothing is left. */
const CLOSE = 0.003;

/**
 * The turn at which an end that reaches `end` past the middle of the last piece, `deep` inside it, meets the other; its
 * corner is round about a place that lies so far in from both.
 */
function meetsAt(radiusAt: (turn: number) => number, end: number, deep: number, corner = 0): number {
  const room = (turn: number) => {
    const half = (FULL_TURN - turn) / 2;
    return (radiusAt(turn) - deep + corner) * Math.sin(half) - (end - corner) * Math.cos(half) - corner;
  };
  let [open, closed] = [1, FULL_TURN];
  for (let halvings = 0; halvings < 60; halvings += 1) {
    const middle = (open + closed) / 2;
    if (room(middle) > 0) open = middle;
    else closed = middle;
  }
  return closed;
}

/** Each slat and half of the arcs beside it, seen from the middle. */
function cellsMeetAt({ cells = 0, cell = 0, leaf = 0, fillet = 0, pad = 0 }: Sizes): number {
  const radiusAt = (turn: number) => {
    const each = turn / cells;
    const chord = ((2 * leaf) / each) * Math.sin(each / 2);
    return ((cell - leaf) * Math.cos(each / 2) + chord) / (2 * Math.sin(each / 2));
  };
  // Corners are round by half of what is left beside a root of two lines.
  const corner = Math.min(0.5, (pad / 2 - LINE - fillet) / 2);
  return meetsAt(radiusAt, (cell - leaf) / 2 - fillet, pad / 2, corner);
}

const gapAt = (amount: number) => leastGap(answered('cellPanel', { amount }).solved, amount)?.gap ?? Number.NaN;

/** Rows with pivots half-way between them: a regular polygon, whose sides end in pivots. */
function rowsMeetAt({ rows = 0, pitch = 0, layers = 0 }: Sizes): number {
  const radiusAt = (turn: number) => pitch / 2 / Math.tan(turn / (rows - 1) / 2);
  return meetsAt(radiusAt, pitch / 2, (layers * LAYER) / 2);
}
describe('the ends of a panel of equal cells', () => {
  it.each([
    [{ cells: 14, cell: 5.6, leaf: 3.4, pad: 3, fillet: 0.5 }, Math.PI],
    [{ cells: 14, cell: 5.6, leaf: 3.4, pad: 3, fillet: 0.5 }, 1.3],
    [{ cells: 9, cell: 8, leaf: 5, pad: 2, fillet: 0.4 }, 2.4],
    [{ cells: 20, cell: 5, leaf: 3, pad: 2.4, fillet: 0.4 }, 5.5],
  ])('meet where a regular ring would close: %o, asked for %f rad', (sizes, amount) => {
    const { joint, solved } = answered('cellPanel', { amount }, sizes);
    const meets = cellsMeetAt(joint.sizes);
    expect(meets).toBeLessThan(FULL_TURN);
    expectClose(touchesAt(solved), meets * (1 - CLOSE / 2), {
      rel: CLOSE / 2,
      because: 'told up to 0.3 % early, never late',
    });
  });

  it('meet at a full turn but for the ends that lie past the last leaves', () => {
    const thin = { cells: 40, cell: 6, leaf: 4, pad: 2, fillet: 0.4 };
    expect(cellsMeetAt(thin as Sizes)).toBeGreaterThan(0.99 * FULL_TURN);
    const { solved } = answered('cellPanel', { amount: 4 }, thin);
    expectClose(touchesAt(solved), FULL_TURN, {
      rel: 0.01,
      because: 'two ends of 0.6 mm on a ring of 240 mm, and 0.3 %',
    });
  });

  it('are clear of each other as far as that', () => {
    const { joint } = answered('cellPanel');
    const meets = cellsMeetAt(joint.sizes);
    expect(gapAt(0.995 * meets)).toBeGreaterThan(0.05);
    expectClose(gapAt(meets), 0, { abs: 0.01, because: 'the mesh, a thousandth of the way of the end' });
    expect(gapAt(1.005 * meets)).toBeLessThan(-0.05);
  });
});

describe('the ends of a panel of slits', () => {
  it.each([
    [{ rows: 24, pitch: 3, layers: 6, slitWidth: 0.8 }, 2.1],
    [{ rows: 30, pitch: 4, layers: 4, slitWidth: 1 }, 3],
  ])('meet where a regular polygon would close: %o, asked for %f rad', (sizes, amount) => {
    const { joint, solved } = answered('slitPanel', { amount }, sizes);
    const meets = rowsMeetAt(joint.sizes);
    expectClose(touchesAt(solved), meets * (1 - CLOSE / 2), {
      rel: CLOSE / 2,
      because: 'told up to 0.3 % early, never late',
    });
  });

  it('close their slits before that where they are narrow, as the middle of the panel does', () => {
    // Beside a bridge two strips of p − w hang on rows that turn by 2δ against each other: p·(1 − cos δ) + w·cos δ = t·sin δ.
    const [pitch, width, thick] = [3, 0.5, 12 * LAYER];
    const leftAt = (turn: number) => pitch * (1 - Math.cos(turn)) + width * Math.cos(turn) - thick * Math.sin(turn);
    const turnWith = (left: number) => {
      let [open, closed] = [0, 0.5];
      for (let halvings = 0; halvings < 60; halvings += 1) {
        const middle = (open + closed) / 2;
        if (leftAt(middle) > left) open = middle;
        else closed = middle;
      }
      return 9 * closed;
    };
    const { solved } = answered('slitPanel', { amount: 1.5 }, { rows: 10, pitch: 3, layers: 12, slitWidth: 0.5 });
    const last = solved.forward.points.at(-1)?.amount ?? 0;
    expectClose(last, turnWith(0), { rel: 1e-6, because: 'the way ends where the slits have closed; round-off' });
    // Slits that nearly are closed close slowly: the last 0.005 mm, which count as touching, take a hundredth of the way.
    expect(touchesAt(solved)).toBeGreaterThan((1 - CLOSE) * turnWith(0.005));
    expect(touchesAt(solved)).toBeLessThanOrEqual(turnWith(0.004));
  });
});
