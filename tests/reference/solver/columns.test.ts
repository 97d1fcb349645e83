/**
 * Source [euler-column]: buckling of a straight column under four ways of holding its ends. The rows of checkvalues/I.json repeat
 * P = π²·E·I/(K·L)²; the clamped-clamped one is the same formula with K = 0.5.
 *
 * The solver's strut is pressed by a load, and by a motion, as straight as it was printed, and tells where another path
 * leaves sideways. It shortens and shears before it gives way, by shares of (t/L)², so figures are those of the thin
 * limit (`thinLimit`).
 */
import { describe, expect, it } from 'vitest';
import type { BeamModel, Motion, Support } from '../../../src/core/beam/model.ts';
import { followPath } from '../../../src/core/beam/solve.ts';
import { BUCKLING_FACTORS } from '../../../src/core/closedForms/columns.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { checkValues, type CheckValue } from '../../support/checkValues.ts';
import { expectSolved, thinLimit } from '../../support/solved.ts';

const L = 100;
const CLAMPED: CheckValue = {
  id: 'I-euler-clamped-clamped',
  quantity: 'P·L²/(E·I) and critical strain × (L/t)²',
  inputs: { K: 0.5 },
  expected: [4 * Math.PI ** 2, Math.PI ** 2 / 3],
  tolerance: { rel: 1e-9, abs: 0 },
  source: 'Euler',
};
const rowOf = (end: string) => checkValues('I', `I-euler-${end}`)[0]!;

/** How the foot at the origin and the head at (L, 0) are held besides being pressed along x. */
const COLUMNS: readonly (readonly [string, CheckValue, Omit<Support, 'at'>, Omit<Support, 'at'>])[] = [
  ['clamped and free', rowOf('clamped-free'), HELD, {}],
  ['hinged at both ends', rowOf('clamped-guided or pinned-pinned'), { x: true, y: true }, { y: true }],
  ['clamped and guided', rowOf('clamped-guided or pinned-pinned'), HELD, { turn: true }],
  ['clamped and hinged', rowOf('clamped-pinned'), HELD, { y: true }],
  ['clamped at both ends', CLAMPED, HELD, { y: true, turn: true }],
];

function column(slenderness: number, foot: Omit<Support, 'at'>, head: Omit<Support, 'at'>): BeamModel {
  const member = { shape: { kind: 'straight' }, thickness: slenderness * L, width: 1 } as const;
  return network({
    nodes: [
      { id: 'foot', x: 0, y: 0 },
      { id: 'head', x: L, y: 0 },
    ],
    members: [{ id: 'strut', from: 'foot', to: 'head', ...member }],
    supports: [
      { at: 'foot', ...foot },
      { at: 'head', ...head },
    ],
  });
}

const FOUND = {
  rel: 1e-6,
  because: 'struts 1/500 thick give way at strains of 1e-6, of which round-off takes its share',
};

describe.each(COLUMNS)('a strut %s', (_, row, foot, head) => {
  const [force = NaN] = row.expected;

  it('gives way under the load of the formula', () => {
    const figures = thinLimit((slenderness) => {
      const model = column(slenderness, foot, head);
      const unit = (model.modulus * (slenderness * L) ** 3) / 12 / L ** 2;
      const loads = [{ at: 'head', x: -1.3 * force * unit }];
      const { second } = followPath({ ...model, loads }, { accuracy: 'refined', parts: 13 });
      return [1.3 * force * (second?.leaves ?? NaN)];
    }, 2e-3);
    expectSolved(row, FOUND, ...figures);
  });

  it('gives way at the strain of the formula when its end is moved', () => {
    const figures = thinLimit((slenderness) => {
      const strain = 1.3 * (row.expected[1] ?? NaN) * slenderness ** 2;
      const motions: readonly Motion[] = [{ at: 'head', x: -strain * L }];
      const { second } = followPath(
        { ...column(slenderness, foot, head), motions },
        { accuracy: 'refined', parts: 13 },
      );
      const leaves = 1.3 * (second?.leaves ?? NaN);
      return [force * leaves, (row.expected[1] ?? NaN) * leaves];
    }, 2e-3);
    expectSolved(row, FOUND, ...figures);
  });

  it('is stable before and not after', () => {
    const strain = 1.3 * (row.expected[1] ?? NaN) * 1e-4;
    const motions: readonly Motion[] = [{ at: 'head', x: -strain * L }];
    const { points, events, second } = followPath({ ...column(0.01, foot, head), motions }, { parts: 13 });
    const leaves = second?.leaves ?? NaN;
    expect(points.filter(({ share }) => share < leaves).every(({ unstableWays }) => unstableWays === 0)).toBe(true);
    expect(points.filter(({ share }) => share > leaves).every(({ unstableWays }) => unstableWays === 1)).toBe(true);
    expect(events.filter(({ kind }) => kind === 'bifurcation').map(({ share }) => share)).toEqual([leaves]);
    // Bent aside it carries hardly more than the load under which it gave way.
    const bent = second?.path.points.at(-1);
    expect(bent?.unstableWays).toBe(0);
    expect(bent?.effort).toBeLessThan(0.9 * points.at(-1)!.effort);
  });
});

describe('the factors of the closed form', () => {
  it('are those of the rows', () => {
    const factors = Object.values(BUCKLING_FACTORS) as readonly number[];
    for (const [, row] of COLUMNS) {
      const factor = Math.PI / Math.sqrt(row.expected[0] ?? NaN);
      expect(factors.some((known) => Math.abs(known - factor) < 1e-6)).toBe(true);
    }
  });
});
