/**
 * Source [elastic-plastic], [unit-load-method]: what stays of a leaf that is pushed across at its tip, a cantilever with an end
 * force, whose moments statics alone decides: M = P·(L − x). Its curvatures and its spring-back are integrated here with odex, an
 * integrator from the registry that shares nothing with the core, and its force found by halving.
 */
import { describe, expect, it } from 'vitest';
import { setAlong } from '../../src/core/design/setAlong.ts';
import { solveJoint } from '../../src/core/design/solveJoint.ts';
import { understand } from '../../src/core/design/understand.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { setAfterOneBend } from '../../src/core/strength/permanentSet.ts';
import { expectClose } from '../support/close.ts';
import { LEAF } from '../support/joints.ts';
import { Solver } from '../support/odex.ts';

function leftOf(joint: Joint) {
  const understood = understand(joint);
  if (!understood.ok) throw new Error(understood.problems[0].message);
  const solved = solveJoint(understood.value);
  if (!solved.ok) throw new Error(solved.problems[0].message);
  const left = setAlong(solved.value);
  if (!left) throw new Error('nothing bends');
  return { left, thickness: understood.value.section.thickness, length: understood.value.length };
}

const PUSH = 0.3;
const pushed = leftOf({
  ...LEAF,
  sizes: { ...LEAF.sizes, length: 30 },
  movement: { ...LEAF.movement, drive: 'pushed', amount: PUSH },
});

/** Curvature over that at first yield for a moment over that at first yield. */
const curvature = (m: number) => (m <= 1 ? m : 1 / Math.sqrt(3 - 2 * m));

/** Movement of the tip over what it would be if the root just began to flow, for a moment at the root over that at yield. */
function movementAt(moment: number): number {
  const solver = new Solver(1);
  solver.absoluteTolerance = 1e-11;
  solver.relativeTolerance = 1e-11;
  return solver.solve((u) => [3 * u * curvature(moment * u)], 0, [0], 1).y[0]!;
}

/** Share of the movement that stays, where the root would be strained k times as far as at yield if nothing flowed. */
function shareLeft(k: number): number {
  let [low, high] = [0, 1.5 - 1e-9];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (movementAt(middle) < k) low = middle;
    else high = middle;
  }
  return 1 - low / k;
}

describe('a leaf pushed across at its tip', () => {
  const rootStrain = (3 * pushed.thickness * PUSH) / (2 * pushed.length ** 2);

  it.each([1.05, 1.2, 1.5, 1.8, 2.1])('keeps what direct integration says at k = %s', (k) => {
    expectClose(pushed.left(rootStrain / k) / PUSH, shareLeft(k), {
      abs: 6e-4,
      because:
        'the tip moves by L/100, shear and stretch count 1 in 1000 of the strain, and curves run straight between samples',
    });
  });

  /** Past 20/9 the root is a hinge of the full plastic moment, 1.5 times that at yield. */
  it.each([3, 5, 10])('keeps all but what the full plastic moment springs back by at k = %s', (k) => {
    expectClose(pushed.left(rootStrain / k) / PUSH, 1 - 1.5 / k, {
      abs: 3e-3,
      because: 'as above, and the hinge is one sample wide',
    });
  });

  it('keeps nothing where it never flows', () => {
    expect(pushed.left(rootStrain * 1.01)).toBe(0);
  });
});

describe('a leaf turned by a pure moment', () => {
  const turned = leftOf(LEAF);
  const { amount } = LEAF.movement;
  const strain = (turned.thickness * amount) / (2 * turned.length);

  it.each([1.01, 1.5, 3, 20])('keeps what the closed form says at k = %s', (k) => {
    const { fraction } = setAfterOneBend(strain, 1, strain / k);
    expectClose(turned.left(strain / k) / amount, fraction, { abs: 1e-9, because: 'the aim of the solver' });
  });
});
