/**
 * Joints answered by the solver, against figures from outside it: rows and lessons of the reference on mechanics (computed
 * there for this project by other methods), and closed forms.
 */
import { describe, expect, it } from 'vitest';
import { softStiff } from '../../../src/core/beam/softStiff.ts';
import { assess } from '../../../src/core/design/assess.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import type { SolvedPath } from '../../../src/core/design/solved.ts';
import { leastGap, secondRest } from '../../../src/core/design/solvedPath.ts';
import { bendingStrain } from '../../../src/core/closedForms/leafBending.ts';
import { leafAboutPin } from '../../../src/core/closedForms/leafAboutPin.ts';
import { archForceUnit } from '../../../src/core/closedForms/snapArch.ts';
import { spiralStiffness } from '../../../src/core/closedForms/spiralArm.ts';
import { shearStrain } from '../../../src/core/flexures/slitPanel.ts';
import { armLength } from '../../../src/core/flexures/spiralSizes.ts';
import type { Sizes } from '../../../src/core/flexures/family.ts';
import { radians } from '../../../src/core/units.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { DRIVEN, jointOf, solvedOf } from '../../support/families.ts';
import { changed } from '../../support/joints.ts';
import { noteResidual } from '../../support/residuals.ts';

function jointBy(id: string, sizes: Sizes, amount?: number): Joint {
  const found = DRIVEN.find((one) => one.id === id);
  if (!found) throw new Error(`nothing is ${id}`);
  return jointOf(found.kind, found.drive, sizes, amount);
}

/** Effort at the wanted amount of one narrow joint, per MPa. */
function effortOf(joint: Joint): number {
  const { solved } = solvedOf(joint);
  const at = solved.forward.points.find(({ amount }) => Math.abs(amount - joint.movement.amount) < 1e-9);
  if (!at) throw new Error('the wanted amount is no point of the way');
  return at.effort / solved.widthRatio;
}

const problemsOf = (joint: Joint) => {
  const answered = assess(joint, bySolver());
  return answered.ok ? [] : answered.problems;
};

describe('a hub kept central on three short arms', () => {
  // Lesson 7 of the reference: arms solved there as unstretched curves, 17 % over section H and 1.66 times its strain.
  const joint = jointBy('spiral centred', { hub: 6, ring: 23, turns: 1.25, lines: 2 }, radians(35));
  const { sizes, section, solved } = solvedOf(changed(joint, { movement: { ways: 'both ways' } }));
  const { depth = NaN } = sizes;
  const length = armLength({ hub: 6, ring: 23, turns: 1.25 });

  it('takes 17 % more torque than even bending', () => {
    const even = spiralStiffness(1, depth, section.thickness, length, 3) * radians(35);
    noteResidual('spiral torque', effortOf(joint) / even, 1.17);
    expectClose(effortOf(joint) / even, 1.17, { printedTo: 2 });
  });

  it('strains 1.66 times as much when it is wound up, and a little less when it is let out', () => {
    const even = bendingStrain(section.thickness, length, radians(35));
    const timesOn = (path: SolvedPath | undefined) => {
      const at = path?.points.find(({ amount }) => Math.abs(Math.abs(amount) - radians(35)) < 1e-9);
      return Math.max(at?.peakWithin ?? NaN, at?.peakAtEnds ?? NaN) / even;
    };
    const [out, up] = [timesOn(solved.forward), timesOn(solved.back)];
    noteResidual('spiral strain', up, 1.66);
    const THICK = {
      rel: 0.01,
      because: 'the lesson has a thin line and two decimals; 0.84 mm thick makes half a per cent',
    };
    expectClose(up, 1.66, THICK);
    expect(out).toBeLessThan(up);
    expect(out).toBeGreaterThan(1.6);
  });
});

describe('two arches with a guided middle', () => {
  const [SPAN, LINES] = [100, 2];
  const THICKNESS = 0.42 * LINES;
  const sizesFor = (ratio: number) => ({
    span: SPAN,
    lines: LINES,
    rise: ratio * THICKNESS,
    block: 0,
    arches: 2,
    apart: 6,
  });
  const rows = checkValues('I', 'I-double-').filter((row) => input(row, 'Q') <= 6);

  it.each(rows)('$id: snaps and rests where the modal rows say', (row) => {
    const ratio = input(row, 'Q');
    const sizes = sizesFor(ratio);
    const [top = NaN, , bottom = NaN, bottomAt = NaN, , , poised = NaN, snapped = NaN] = row.expected;
    const { solved, sizes: acting } = solvedOf(jointBy('snapArch guided', sizes, 1.9 * sizes.rise));
    const unit = archForceUnit(solved.widthRatio, 2 * (acting['depth'] ?? NaN), THICKNESS, SPAN, sizes.rise);
    const { events } = solved.forward;
    const lowest = events.findLast(({ kind }) => kind === 'limit');
    const first = events.find(({ kind }) => kind !== 'rest');
    const rests = events.filter(({ kind }) => kind === 'rest');
    const slope = { rel: 0.03, because: 'shallow theory leaves out the square of the slope, up to π·h/L = 0.16' };
    for (const [what, value, expected] of [
      ['snap load', (first?.effort ?? NaN) / unit, top],
      ['return load', (lowest?.effort ?? NaN) / unit, bottom],
      ['return travel', (lowest?.amount ?? NaN) / sizes.rise, bottomAt],
      ['poised', (rests[0]?.amount ?? NaN) / sizes.rise, poised],
      ['snapped', (rests[1]?.amount ?? NaN) / sizes.rise, snapped],
    ] as const) {
      noteResidual(`arch ${what}`, value, expected);
      expectClose(value, expected, slope);
    }
    expect(rests.map(({ stable }) => stable)).toEqual([false, true]);
    expect(secondRest(solved)).toBe(rests[1]);
  });

  it('too low for their thickness come back', () => {
    const sizes = sizesFor(2.2);
    const { solved } = solvedOf(jointBy('snapArch guided', sizes, 1.9 * sizes.rise));
    expect(secondRest(solved)).toBeUndefined();
    expect(solved.forward.points.slice(1).every(({ effort }) => effort > 0)).toBe(true);
  });
});

/** Section I: one arch is bistable only for Q > 5.65, in the limit of a shallow one. */
function arch(ratio: number): Joint {
  const rise = ratio * 0.84;
  return jointBy('snapArch pressed', { span: 250, lines: 2, rise, block: 0, arches: 1 }, 1.98 * rise);
}

describe('one arch, free to lean', () => {
  it.each([
    [5.4, false],
    [5.9, true],
  ])('of %s times its thickness: stays is %s', (ratio, stays) => {
    expect(secondRest(solvedOf(arch(ratio)).solved) !== undefined).toBe(stays);
  });

  it.each([
    [5.4, true, 'comes back'],
    [5.4, false, undefined],
    [5.9, true, undefined],
    [5.9, false, 'stays'],
  ] as const)('of %s times its thickness, wanted to stay %s: %s', (ratio, stays, reason) => {
    const joint = changed(arch(ratio), { movement: { stays, cycles: 10 }, profile: { filament: 'pp' } });
    const { verdict } = solvedOf(joint);
    if (reason === undefined) expect(['stays', 'comes back']).not.toContain(verdict.reason);
    else expect(verdict).toMatchObject({ grade: 'fail', reason });
  });
});

describe('how hard it may push back', () => {
  const snapping = jointBy('snapArch guided', { span: 100, rise: 3, block: 0, apart: 6 }, 5.5);
  const { effort } = solvedOf(snapping).effort;

  it('is held against the hump on the way, not the effort at the end', () => {
    const { solved, effort: answer } = solvedOf(snapping);
    const atEnd = solved.forward.points.find(({ amount }) => Math.abs(amount - 5.5) < 1e-9)?.effort ?? NaN;
    expect(answer.effort).toBeGreaterThan(3 * answer.modulus * Math.abs(atEnd));
  });

  it.each([
    [0.99, 'fail'],
    [1.01, 'pass'],
  ])('allowed %s of what it takes: %s', (share, grade) => {
    const { verdict } = solvedOf(changed(snapping, { movement: { effortAtMost: share * effort, cycles: 10 } }));
    expect(verdict.grade).toBe(grade);
    if (grade === 'fail') {
      expect(verdict.reason).toBe('effort');
      expectClose(verdict.margin, share, { rel: 1e-9, because: 'round-off' });
    }
  });
});

/** A spiral that nothing but its own arms stops. */
function wound(angleDeg: number): Joint {
  const joint = jointBy('spiral centred', { lines: 2, turns: 1.25, hub: 6, ring: 23 }, radians(angleDeg));
  return changed(joint, { movement: { cycles: 10 }, profile: { filament: 'tpu95a' } });
}

describe('what touches itself', () => {
  it('is found where a spiral is turned until its arms meet, and not before', () => {
    const free = solvedOf(wound(35));
    expect(leastGap(free.solved, radians(35))?.gap).toBeGreaterThan(0);
    expect(free.verdict.reason).not.toBe('touches');
    const met = solvedOf(wound(60));
    expect(leastGap(met.solved, radians(60))?.gap).toBeLessThanOrEqual(0);
    expect(met.verdict).toMatchObject({ grade: 'fail', reason: 'touches' });
  });
});

describe('a leaf that turns by 5° about a pin in its middle', () => {
  // Lesson 2 of the reference: an inextensible model is wrong by a factor of two at small angles.
  const LENGTH = 27;
  const joint = jointBy('straightLeaf centred', { length: LENGTH, lines: 2, centre: 0.5 }, radians(5));
  const { section, strain } = solvedOf(joint);
  const form = leafAboutPin(section.thickness, LENGTH, radians(5), 0.5);

  it('takes twice the torque of a leaf that does not stretch, as its closed form says', () => {
    const bending = (section.width * section.thickness ** 3 * radians(5)) / (12 * LENGTH);
    const times = effortOf(joint) / bending;
    noteResidual('pin torque', times, form.stiffness);
    expectClose(times, form.stiffness, { rel: 0.005, because: 'small slopes of the form, and shear of the solver' });
    expectClose(times, 2, { rel: 0.05, because: 'a factor of two in words' });
  });

  it('strains as its closed form says', () => {
    noteResidual('pin strain', strain.nominal, form.strain);
    expectClose(strain.nominal, form.strain, {
      rel: 0.005,
      because: 'small slopes of the form, and shear of the solver',
    });
  });
});

describe('a panel with slits', () => {
  const a = solvedOf(jointBy('slitPanel wrapped', {}));

  it('strains as its strips twist, which its network does not see', () => {
    const sizes = a.sizes as Parameters<typeof shearStrain>[0];
    const told = shearStrain(sizes, a.section.thickness, a.joint.movement.amount) / Math.sqrt(3);
    expectClose(a.strain.nominal, told, { rel: 1e-9, because: 'round-off' });
    expect(Math.max(...a.solved.forward.points.map(({ peakWithin }) => peakWithin))).toBeLessThan(1e-9);
  });

  it('turns as stiffly about z as its network does, whole bars or not', () => {
    for (const depth of [66, 71.3, 87.9]) {
      const { solved } = solvedOf(jointBy('slitPanel wrapped', { depth }));
      const [, first] = solved.forward.points;
      const slope = (first?.effort ?? Number.NaN) / (first?.amount ?? Number.NaN);
      expectClose(solved.stiffness.free.turnZ, slope, { rel: 1e-9, because: 'round-off' });
    }
  });

  it('is held stiffest along itself, softest as it wraps, then where it sags', () => {
    const { soft, stiff, gives } = softStiff(a.solved.stiffness.free, a.sizes['depth'] ?? Number.NaN);
    expect([soft.direction, gives[1]?.direction, stiff.direction]).toEqual(['turnZ', 'y', 'x']);
  });

  it('does not push back more because its strips are wide: before the solver answers nor after', () => {
    const [hand, solved] = [assess(a.joint), assess(a.joint, bySolver())];
    expect([hand, solved].map((one) => one.ok && one.value.effort.widthRatio)).toEqual([1, 1]);
  });
});

describe('a movement that pads or lengths forbid', () => {
  it('is refused with how far it goes', () => {
    const problem = problemsOf(jointBy('straightLeaf pushed', { length: 20 }, 21));
    expect(problem).toMatchObject([{ code: 'above-maximum', field: 'movement.amount', value: 21, limit: 20 }]);
    expect(problem[0]?.message).toMatch(/^travel 21 mm is above 20 mm \(.*\); ask for less/);
  });

  it.each(['straightLeaf turned', 'straightLeaf centred', 'crease turned', 'neck turned', 'cellPanel wrapped'])(
    '%s: can be asked for as far as is said, and not much further',
    (id) => {
      const found = DRIVEN.find((one) => one.id === id);
      const sizes = { ...(id.includes('cell') ? { cells: 3 } : {}), ...(id.startsWith('straight') ? { pad: 40 } : {}) };
      const [problem] = problemsOf(jointBy(id, sizes, found?.drive.max));
      expect(problem).toMatchObject({ code: 'above-maximum', field: 'movement.amount', unit: 'rad' });
      const limit = Number(problem?.limit);
      expect(problemsOf(jointBy(id, sizes, limit))).toEqual([]);
      expect(problemsOf(jointBy(id, sizes, limit + radians(0.11)))).not.toEqual([]);
    },
  );

  it.each([
    // 8.3 mm of roof, its neck of 5 mm and its link of 40 mm hanging down.
    ['toggle pressed', 40 * Math.sin(radians(12)) + 45],
    // Half waves of 28 mm along and 3 mm up, half as long again: √((1.5·L)² − 28²) with L² = 28² + π²·9/8.
    ['snapArch pressed', 3 + Math.sqrt(2.25 * (28 ** 2 + (Math.PI ** 2 * 9) / 8) - 28 ** 2)],
    ['parallelLeaves held', 25 * Math.sqrt(1.25)],
  ])('%s: no further than its parts are long, or half as long again where they are stretched', (id, limit) => {
    const [problem] = problemsOf(jointBy(id, {}, 100));
    expect(problem).toMatchObject({ code: 'above-maximum', field: 'movement.amount', value: 100 });
    expectClose(Number(problem?.limit), limit, { abs: 0.01, because: 'told in hundredths, rounded down' });
  });

  it('is not refused where a reach is only where curves end', () => {
    expect(problemsOf(jointBy('spiral centred', { lines: 1 }, radians(200)))).toEqual([]);
    expect(problemsOf(jointBy('snapArch guided', { rise: 3 }, 6.5))).toEqual([]);
  });
});
