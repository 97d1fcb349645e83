/** Ways out of joints of every family and for every reason, as the page's worker finds them. */
import { describe, expect, it } from 'vitest';
import type { Assessment, VerdictReason } from '../../../src/core/design/assessment.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import type { Remedy } from '../../../src/core/design/remedy.ts';
import { isAsked } from '../../../src/core/flexures/drives.ts';
import type { Parameter } from '../../../src/core/flexures/family.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { newJoint } from '../../../src/store/newJoint.ts';
import { runJob } from '../../../src/workers/jobs.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';
import { expectClose } from '../../support/close.ts';

const silent = () => undefined;

/** A joint of typical sizes in its usual movement, some of it changed. */
function typical(family: string, change: Parameters<typeof changed>[1] = {}): Joint {
  return changed(newJoint(familyOf({ family }), family), change);
}

function demo(id: string): Joint {
  const found = demoPart().joints.find((joint) => joint.id === id);
  if (!found) throw new Error(`no ${id} in the demo part`);
  return found;
}

const hot = (joint: Joint): Joint => ({ ...joint, surroundings: { temperatureC: 75, moisture: 'damp' } });
const atMost = (effortAtMost: number) => ({ movement: { effortAtMost } });
const ARCH = { sizes: { rise: 1.8 }, movement: { amount: 3, cycles: 500 } };

const CASES: readonly (readonly [name: string, reason: VerdictReason, joint: Joint])[] = [
  ['rain-flap', 'life', demo('rain-flap')],
  ['a leaf held bent', 'held', changed(LEAF, { movement: { held: true, cycles: 10 } })],
  ['a leaf that pushes back hard', 'effort', typical('straightLeaf', atMost(15))],
  [
    'a leaf that the first flex breaks',
    'first flex',
    changed(LEAF, { sizes: { length: 2, lines: 4 }, movement: { amount: radians(40) }, profile: { filament: 'pla' } }),
  ],
  [
    'a leaf bent past breaking',
    'break',
    changed(LEAF, { sizes: { length: 2 }, movement: { amount: radians(40) }, profile: { filament: 'pla' } }),
  ],
  ['a measured leaf', 'printing', demo('borrowed-clip')],
  ['a crease', 'life', typical('crease')],
  ['a stiff crease', 'effort', typical('crease', { movement: { effortAtMost: 20, cycles: 100 } })],
  ['a crease in the sun', 'warmth', hot(changed(CREASE, { sizes: { length: 12 }, profile: { filament: 'petg' } }))],
  ['pole-grip', 'held', demo('pole-grip')],
  ['a neck', 'life', typical('neck')],
  ['a stiff neck', 'effort', typical('neck', { movement: { effortAtMost: 25, cycles: 100 } })],
  ['a pivot that turns far', 'life', typical('crossedLeaves', { movement: { amount: radians(30), cycles: 20_000 } })],
  ['a stiff pivot', 'effort', typical('crossedLeaves', atMost(4))],
  ['a pivot in the sun', 'warmth', hot(typical('crossedLeaves'))],
  [
    'a pivot held turned',
    'held',
    typical('crossedLeaves', { movement: { amount: radians(30), cycles: 500, held: true } }),
  ],
  ['a stage that goes far', 'life', typical('parallelLeaves', { movement: { amount: 8, cycles: 300 } })],
  ['a stiff stage', 'effort', typical('parallelLeaves', atMost(1))],
  ['a stage held aside', 'held', typical('parallelLeaves', { movement: { held: true } })],
  ['a fold that opens far', 'life', typical('foldedLeaf', { movement: { amount: 20, cycles: 20_000 } })],
  ['a stiff fold', 'effort', typical('foldedLeaf', atMost(0.5))],
  ['a fold in the sun', 'warmth', hot(typical('foldedLeaf'))],
  ['wind-vane, of several movements', 'life', demo('wind-vane')],
  ['a stiff spiral', 'effort', typical('spiral', atMost(12))],
  [
    'a spiral of long arms',
    'touches',
    typical('spiral', { sizes: { turns: 1.4 }, movement: { amount: 0.8, cycles: 500 } }),
  ],
  ['mode-button', 'life', demo('mode-button')],
  ['a low arch', 'comes back', typical('snapArch', ARCH)],
  ['an arch that should come back', 'stays', typical('snapArch', { movement: { stays: false, cycles: 500 } })],
  ['lid-lock', 'life', demo('lid-lock')],
  ['a toggle of thick necks', 'comes back', typical('toggle', { sizes: { lines: 2 }, movement: { cycles: 100 } })],
  ['a stiff toggle', 'effort', typical('toggle', atMost(0.7))],
  ['a panel', 'life', typical('cellPanel')],
  ['a stiff panel', 'effort', typical('cellPanel', { movement: { effortAtMost: 150, cycles: 100 } })],
  ['a panel in the sun', 'warmth', hot(typical('cellPanel'))],
  ['sun-blind', 'held', demo('sun-blind')],
  ['a stiff slit panel', 'effort', typical('slitPanel', atMost(37))],
  ['a slit panel wrapped often', 'life', typical('slitPanel', { movement: { cycles: 190_000 } })],
];

/** As a page asks for a joint of its own, from scratch. */
function fresh(joint: Joint): Assessment {
  const answer = runJob('assess', { joint, drawn: false }, silent);
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

const FIGURES: readonly (readonly [name: string, of: (a: Assessment) => number])[] = [
  ['strain', ({ strain }) => strain.peak],
  ['effort', ({ effort }) => effort.effort],
  ['stiffness', ({ effort }) => effort.stiffness],
  ['chance', ({ life }) => life.chance],
];

/** The size that a way out of one change of size is about. */
function sizeOf({ kinds: [kind, second], size }: Remedy, joint: Joint): string | undefined {
  if (second !== undefined) return undefined;
  return kind === 'lengthen' ? familyOf(joint).roles.length : size;
}

/** The joint with one step less of the change of a size; undefined when that is no change. */
function oneStepLess(before: Joint, after: Joint, size: string): Joint | undefined {
  const { step } = familyOf(before).parameters[size] as Parameter;
  const [was, is] = [before, after].map(({ sizes }) => sizes[size] ?? Number.NaN) as [number, number];
  return Math.abs(is - was) <= step * (1 + 1e-9)
    ? undefined
    : { ...before, sizes: { ...before.sizes, [size]: is - Math.sign(is - was) * step } };
}

describe.each(CASES)('%s, which fails by %s', (_, reason, joint) => {
  const found = runJob('waysOut', { joint }, silent);
  if (!found.ok) throw new Error(found.problems[0].message);
  const { before, remedies, isCut } = found.value;

  it('has ways out, and the search comes to its end', () => {
    expect(before.verdict.reason).toBe(reason);
    expect(remedies.length).toBeGreaterThan(0);
    expect(isCut).toBe(false);
  });

  it('passes by each when it is assessed from scratch, with the figures that were told', () => {
    for (const { after, assessment, kinds } of remedies) {
      const again = fresh(after);
      expect([kinds, again.verdict.grade]).toEqual([kinds, 'pass']);
      for (const [name, of] of FIGURES) {
        expectClose(of(again), of(assessment), {
          rel: 1e-4,
          because: `${name}: a way that stops at the amount and one that goes on beyond it are solved on meshes of their own`,
        });
      }
    }
  });

  it('are told cheapest first, and none twice', () => {
    expect(remedies.map(({ cost }) => cost)).toEqual(remedies.map(({ cost }) => cost).toSorted((x, y) => x - y));
    expect(new Set(remedies.map(({ after }) => JSON.stringify(after))).size).toBe(remedies.length);
  });

  // Strain, effort and touch fall, or where it rests turns, once and for all along each size that is told here.
  it('changes no size by a step too many', () => {
    for (const remedy of remedies) {
      const size = sizeOf(remedy, joint);
      const less = size === undefined ? undefined : oneStepLess(joint, remedy.after, size);
      if (less) expect([remedy.kinds, size, fresh(less).verdict.grade]).not.toContain('pass');
    }
  });

  it('changes only sizes that its drive asks for', () => {
    for (const { size } of remedies) {
      if (size !== undefined)
        expect(isAsked(familyOf(joint).parameters[size] as Parameter, joint.movement.drive)).toBe(true);
    }
  });
});

describe('the table above', () => {
  it('holds three reasons of every family', () => {
    for (const { id } of FAMILIES) {
      const reasons = new Set(CASES.filter(([, , { family }]) => family === id).map(([, reason]) => reason));
      expect([id, reasons.size >= 3]).toEqual([id, true]);
    }
  });
});
