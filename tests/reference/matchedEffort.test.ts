/**
 * Sizes that an effort asks for, against figures from outside this program: the moment of a bent strip (plane-bending), the
 * five-digit table of an end-loaded leaf as in endLoadedLeaf.test.ts, the snap force of a double arch from checkvalues/I.json, and
 * two facts of the trade (common practice, no source): twelve alike push twelve times as hard; thickness tunes stiffness by the
 * cube of the line count. The wish is what the outside figure gives for a size that is known; the size has to come back.
 */
import { describe, expect, it } from 'vitest';
import { assess, type Judge } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import type { EffortWanted, Match, MatchStep } from '../../src/core/design/matchAnswer.ts';
import { matchEffort } from '../../src/core/design/matchEffort.ts';
import { radians } from '../../src/core/units.ts';
import { familyOf } from '../../src/core/flexures/known.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { checkValues, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';
import { assessed, changed, LEAF } from '../support/joints.ts';

/** As the filament’s row says [MPa]: another row must not fail a test of mechanics. */
const modulusOf = (joint: Joint) => assessed(joint).effort.modulus;

function matched(joint: Joint, wanted: EffortWanted, steps: readonly MatchStep[], judge: Judge = assess): Match {
  const answer = matchEffort(joint, wanted, { quick: judge, full: judge });
  if (!answer.ok) throw new Error(answer.problems[0].message);
  const found = answer.value.matches.find((match) => match.steps.join() === steps.join());
  if (!found) throw new Error(`no way by ${steps.join(' and ')}`);
  return found;
}

const byTheSolver: Judge = (joint) => assess(joint, bySolver({ whole: false, beyond: true }));

/** Half a millimetre deep, where a strip narrows freely: its width ratio is 1 to a part in a thousand. */
const NARROW = changed(LEAF, { sizes: { length: 30, depth: 0.5 }, movement: { amount: radians(10) } });
const THICKNESS = 2 * 0.42;

/** Effort is matched to 1 in 100, and goes by this power of the size. */
const toItsPower = (power: number, because: string) => ({ rel: 0.011 / Math.abs(power), because });

/** Moment of a strip of this depth and length [mm] at 10° [N·mm]. */
const moment = (depth: number, length: number) =>
  (modulusOf(NARROW) * depth * THICKNESS ** 3 * radians(10)) / (12 * length);

describe('a leaf bent to an arc, M = E·(b·t³/12)·θ/L', () => {
  it('gets the length that the formula says', () => {
    const { after } = matched(NARROW, { effort: moment(0.5, 44), at: radians(10) }, ['length']);
    expectClose(after.sizes['length'] ?? Number.NaN, 44, toItsPower(1, 'matched to 1 in 100, narrow to 1 in 1000'));
  });

  it('gets the depth that the formula says', () => {
    const { after } = matched(NARROW, { effort: moment(0.8, 30), at: radians(10) }, ['depth']);
    expectClose(after.sizes['depth'] ?? Number.NaN, 0.8, {
      rel: 0.02,
      because: 'matched to 1 in 100; at 0.8 mm its width stiffens it by less than 1 in 100',
    });
  });
});

describe('a leaf pushed at its tip', () => {
  it('gets the length whose load and travel stand in the table of Mattiasson: load 1, travel 0.30172', () => {
    const sizes = { lines: 1, length: 15, depth: 0.5 };
    const travel = 0.30172 * 20;
    const pushed = changed(LEAF, { sizes, movement: { drive: 'pushed', amount: travel } });
    const force = (modulusOf(pushed) * 0.5 * 0.42 ** 3) / 12 / 20 ** 2;
    const { after } = matched(pushed, { effort: force, at: travel }, ['length'], byTheSolver);
    expectClose(after.sizes['length'] ?? Number.NaN, 20, toItsPower(3, 'matched to 1 in 100, force goes by the cube'));
  });
});

describe('a double arch', () => {
  it('gets the depth at which it snaps as hard as checkvalues/I says for Q = 6', () => {
    const [row] = checkValues('I', 'I-double-').filter((one) => input(one, 'Q') === 6);
    if (!row) throw new Error('no row for Q = 6');
    const [rise, span, depth] = [6 * 0.42, 90, 2];
    const arch = changed(newJoint(familyOf({ family: 'snapArch' }), 'arch'), {
      sizes: { lines: 1, arches: 2, span, rise, block: 0, fillet: 0, depth: 3 },
      movement: { drive: 'guided', amount: 1.5 * rise },
    });
    const unit = (modulusOf(arch) * depth * 0.42 ** 3 * rise) / (12 * span ** 3);
    const force = 2 * unit * (row.expected[0] ?? Number.NaN);
    const { after } = matched(arch, { effort: force, at: 'snap' }, ['depth'], byTheSolver);
    expectClose(after.sizes['depth'] ?? Number.NaN, depth, {
      rel: 0.04,
      because:
        'matched to 1 in 100; shallow theory leaves out the square of the slope, 0.8 %, and width stiffens by up to 2 %',
    });
  });
});

describe('facts of the trade (common practice, no source)', () => {
  it('twelve alike push twelve times as hard, at the strain of one', () => {
    const one = assessed(LEAF);
    const { after, effort, assessment } = matched(LEAF, { effort: 12 * one.effort.effort, at: radians(35) }, [
      'side by side',
    ]);
    expect(after.sizes).toEqual({ ...LEAF.sizes, sideBySide: 12 });
    expectClose(effort, 12 * one.effort.effort, { rel: 1e-12, because: 'round-off' });
    expect(assessment.strain.peak).toBe(one.strain.peak);
  });

  it('one contour fewer, four lines to two, softens by the cube: to an eighth', () => {
    const four = changed(NARROW, { sizes: { lines: 4 } });
    const { effort } = assessed(four).effort;
    const { after, isMatched } = matched(four, { effort: effort / 8, at: radians(10) }, ['lines']);
    expect([after.sizes['lines'], isMatched]).toEqual([2, true]);
  });
});
