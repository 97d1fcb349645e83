/**
 * What doubt carries over from a few solves against solving the same prints, for every joint of the demonstration part:
 * all kinds of flexure are among them. And the whole answer against a count that knows nothing of how it is found.
 */
import { describe, expect, it } from 'vitest';
import { assess, assessUnderstood } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import { doubtOf } from '../../src/core/design/doubt.ts';
import { causesOf, printedAs } from '../../src/core/design/doubtCauses.ts';
import { mechanicsNear, strayOf } from '../../src/core/design/doubtMechanics.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { rememberSolved } from '../../src/core/design/rememberSolved.ts';
import { understand } from '../../src/core/design/understand.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { normalQuantile } from '../../src/core/numeric/normal.ts';
import { randomShares } from '../../src/core/numeric/random.ts';
import { USUAL_SPREAD } from '../../src/core/print/spread.ts';
import { ok, type Result } from '../../src/core/result.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { expectClose } from '../support/close.ts';
import { changed } from '../support/joints.ts';
import { noteResidual } from '../support/residuals.ts';

const JOINTS = demoPart().joints;

function valueOf<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join('; '));
  return result.value;
}

/** Two standard deviations out, alone and together. */
const CORNERS = [
  [2, 2],
  [2, -2],
  [-2, 2],
  [-2, -2],
  [2, 0],
  [0, -2],
  [1, -1],
] as const;

const STRAIN = {
  rel: 1e-3,
  because: 'third order of a print within 5 % of its size; 2·10⁻⁴ at most was seen',
} as const;
const EFFORT = {
  rel: 0.02,
  because: 'third order, and where something snaps its limit is found between states that lie elsewhere',
} as const;

describe('strain and effort carried over', () => {
  it('are of every kind of flexure', () => {
    expect(new Set(JOINTS.map(({ family }) => family)).size).toBe(FAMILIES.length);
  });

  it.each(JOINTS)('are those of the solver two standard deviations out: $id', (joint) => {
    const understood = valueOf(understand(joint));
    const solver = bySolver({ whole: false, parts: 24 }, rememberSolved());
    const response = valueOf(solver(understood));
    const nominal = valueOf(assessUnderstood(understood, () => ok(response)));
    const stray = strayOf(causesOf(understood, nominal, response, USUAL_SPREAD));
    expect(Math.min(stray.thickness, stray.length)).toBeGreaterThan(0);
    const carried = valueOf(mechanicsNear(understood, response, stray, solver, () => undefined));
    for (const [u, v] of CORNERS) {
      const draft = { thickness: Math.exp((u * stray.thickness) / 2), length: Math.exp((v * stray.length) / 2) };
      const print = printedAs(understood, draft);
      const [told, solved] = [carried, solver].map((by) => valueOf(assessUnderstood(print, by)));
      if (!told || !solved) throw new Error('two answers');
      noteResidual(`${joint.id} strain`, told.strain.peak, solved.strain.peak);
      noteResidual(`${joint.id} effort`, told.effort.effort, solved.effort.effort);
      expectClose(told.strain.peak, solved.strain.peak, STRAIN);
      expectClose(told.effort.effort, solved.effort.effort, EFFORT);
      for (const [i, { peakStrain, ratio }] of solved.life.wear.entries()) {
        expectClose(told.life.wear[i]?.peakStrain ?? 0, peakStrain, STRAIN);
        expectClose(told.life.wear[i]?.ratio ?? 0, ratio, { abs: 1e-3, because: STRAIN.because });
      }
    }
  });

  it('tell of swings beside the main one', () => {
    const [clip] = JOINTS.filter(({ id }) => id === 'gate-clip');
    if (!clip) throw new Error('no clip');
    const also = [{ amount: 1, ways: 'one way', cycles: 50_000 } as const];
    const answer = valueOf(doubtOf({ ...clip, movement: { ...clip.movement, also } }, { ...ASKED, samples: 64 }));
    expect(answer.checked?.strain).toBeLessThan(1e-3);
    expect(answer.checked?.chance).toBeLessThan(1e-4);
  });
});

const ASKED = { spread: USUAL_SPREAD, samples: 4096, how: 'quasi-random', seed: 11 } as const;

/** Prints of a leaf made one by one: its sizes and its rows changed as a user would, and the hand form asked. */
function countedByHand(joint: Joint, count: number): number {
  const draw = randomShares(2);
  const normal = () => normalQuantile(draw());
  const within = normalQuantile(0.95);
  const lasting = Array.from({ length: count }, () => {
    const lineWidth = joint.profile.lineWidth * Math.exp((0.04 / within) * normal());
    const length = (joint.sizes['length'] ?? 0) + (0.1 / within) * normal();
    const print = valueOf(assess(changed(joint, { profile: { lineWidth }, sizes: { length } })));
    const { concentration, nominal } = print.strain;
    const peak = nominal * (1 + draw() * (concentration - 1));
    const { A, b, B, c, sigmaLog10N, doubtFactor } = print.filament.life;
    // By bisection, so that nothing is shared with the life of the assessment.
    let [low, high] = [-3, 14];
    for (let i = 0; i < 50; i += 1) {
      const n = 2 * 10 ** ((low + high) / 2);
      if (A * n ** b + B * n ** c > peak) low = (low + high) / 2;
      else high = (low + high) / 2;
    }
    const decades = sigmaLog10N * normal() + (Math.log10(doubtFactor) / within) * normal();
    return low + decades >= Math.log10(joint.movement.cycles);
  });
  return lasting.filter(Boolean).length / count;
}

describe('the chance', () => {
  it.each([1500, 5000, 40_000])('of a leaf to reach %i is that of prints made one by one', (cycles) => {
    const [flap] = JOINTS;
    if (!flap) throw new Error('no joint');
    const joint = changed(flap, { movement: { cycles } });
    const { chance } = valueOf(doubtOf(joint, ASKED));
    const because = 'three standard errors of 4000 prints, and of the answer';
    expectClose(chance.share, countedByHand(joint, 4000), { abs: 3 * Math.hypot(0.0079, chance.error), because });
  });
});
