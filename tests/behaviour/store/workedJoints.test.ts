import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { readPart } from '../../../src/files/partFile.ts';
import { writePart } from '../../../src/files/partText.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { newJoint, newMeasuredJoint, ofAnotherKind, USUAL_PROFILE } from '../../../src/store/newJoint.ts';

function verdictOf(joint: Joint) {
  const assessed = assess(joint);
  if (!assessed.ok) throw new Error(assessed.problems.map(({ message }) => message).join('; '));
  return assessed.value.verdict;
}

function solved(joint: Joint) {
  const assessed = assess(joint, bySolver());
  if (!assessed.ok) throw new Error(assessed.problems.map(({ message }) => message).join('; '));
  return assessed.value.verdict;
}

const changedTurn = (joint: Joint, amount: number): Joint => ({ ...joint, movement: { ...joint.movement, amount } });

describe('worked joints', () => {
  it.each(FAMILIES.map((family) => [family.id, family] as const))(
    'a new %s can be assessed and does not fail',
    (_, family) => {
      expect(verdictOf(newJoint(family, 'New')).grade).not.toBe('fail');
    },
  );

  it.each(FAMILIES.map((family) => [family.id, family] as const))(
    'a new %s after any other takes over printer and filament',
    (_, family) => {
      for (const other of FAMILIES) {
        const like = newJoint(other, 'Before');
        const joint = newJoint(family, 'New', {
          ...like,
          profile: { ...like.profile, filament: 'pla', lineWidth: 0.45 },
        });
        expect(joint.profile).toMatchObject({ filament: 'pla', lineWidth: 0.45 });
        expect(family.lyings).toContain(joint.profile.lying);
        expect(() => verdictOf(joint)).not.toThrow();
      }
    },
  );

  it('a measured one is judged by how it lands on whole lines', () => {
    expect(verdictOf(newMeasuredJoint('Neck')).reason).toBe('printing');
  });

  it('the demo part says that it is invented, and has every kind', () => {
    const part = demoPart();
    expect(part.invented).toBe(true);
    expect(new Set(part.joints.map(({ family }) => family))).toEqual(new Set(FAMILIES.map(({ id }) => id)));
  });

  it('the demo part has its sizes in the order of their kinds, in which they are saved', () => {
    // It may be changed and saved before its kinds have come, and the same part gives the same text.
    for (const joint of demoPart().joints) {
      expect(Object.keys(joint.sizes)).toEqual(Object.keys(familyOf(joint).parameters));
    }
  });

  it.each([
    ['rain-flap', 'caution', 'life'],
    ['battery-door', 'pass', 'within all limits'],
    ['bucket-pivot', 'pass', 'within all limits'],
    ['wind-vane', 'caution', 'life'],
    ['gate-clip', 'pass', 'within all limits'],
    ['mode-button', 'fail', 'life'],
    ['sensor-shuttle', 'pass', 'within all limits'],
    ['trunk-cover', 'pass', 'within all limits'],
    ['pole-grip', 'caution', 'held'],
    ['tray-spring', 'pass', 'within all limits'],
    ['lid-lock', 'caution', 'life'],
    ['sun-blind', 'caution', 'held'],
    ['borrowed-clip', 'caution', 'printing'],
  ])('the demo part’s %s is a %s by the solver: %s', (id, grade, reason) => {
    const joint = demoPart().joints.find((one) => one.id === id);
    if (!joint) throw new Error(`no ${id} in the demo part`);
    expect(solved(joint)).toMatchObject({ grade, reason });
  });

  it.each(
    FAMILIES.flatMap((family) =>
      family.drives.flatMap((drive) =>
        family.lyings.map((lying) => [family.id, drive.id, lying, family, drive] as const),
      ),
    ),
  )(
    'a new %s, %s and lying %s, is refused neither by hand forms nor by the solver',
    (_, _drive, lying, family, drive) => {
      const joint = newJoint(family, 'New', { profile: { ...USUAL_PROFILE, lying } }, drive);
      expect(joint.movement.drive).toBe(drive.id);
      expect(() => verdictOf(joint)).not.toThrow();
      const quick = assess(joint, bySolver({ parts: 6, whole: false }));
      expect(quick.ok ? [] : quick.problems).toEqual([]);
    },
  );

  it('asks of what snaps that it stays, and of nothing else', () => {
    for (const family of FAMILIES) {
      expect(newJoint(family, 'New').movement.stays).toBe(family.snaps ? true : undefined);
    }
  });

  it('made another kind it keeps name, printer, use and, of the same measure, how far', () => {
    const before = { ...newJoint(familyOf({ family: 'straightLeaf' }), 'Lid'), id: 'lid' };
    const asked = {
      ...before,
      movement: { ...before.movement, amount: radians(8), cycles: 77, held: true, effortAtMost: 9 },
    };
    const crossed = ofAnotherKind(asked, familyOf({ family: 'crossedLeaves' }));
    expect(crossed).toMatchObject({ id: 'lid', name: 'Lid', profile: before.profile });
    expect(crossed.movement).toMatchObject({ drive: 'turned', amount: radians(8), cycles: 77, held: true });
    // A torque says nothing of what another kind should take.
    expect(crossed.movement.effortAtMost).toBeUndefined();
    const arch = ofAnotherKind(asked, familyOf({ family: 'snapArch' }));
    expect(arch.movement).toMatchObject({ drive: 'pressed', amount: 5, cycles: 77, stays: true });
  });

  it('made another kind that cannot go so far it goes as far as is usual', () => {
    const far = changedTurn(newJoint(familyOf({ family: 'straightLeaf' }), 'Lid'), radians(170));
    expect(ofAnotherKind(far, familyOf({ family: 'crossedLeaves' })).movement.amount).toBe(radians(12));
  });

  it('made another kind it keeps where it is used, and its other movements where they measure alike', () => {
    const before = newJoint(familyOf({ family: 'straightLeaf' }), 'Lid');
    const also = [{ amount: radians(3), ways: 'one way', cycles: 1000 }] as const;
    const asked: Joint = {
      ...before,
      surroundings: { temperatureC: 40, moisture: 'damp' },
      movement: { ...before.movement, amount: radians(8), ways: 'between', least: radians(-2), also },
    };
    const crossed = ofAnotherKind(asked, familyOf({ family: 'crossedLeaves' }));
    expect(crossed.surroundings).toEqual(asked.surroundings);
    expect(crossed.movement).toMatchObject({ ways: 'between', least: radians(-2), also });
    const arch = ofAnotherKind(asked, familyOf({ family: 'snapArch' }));
    expect(arch.surroundings).toEqual(asked.surroundings);
    expect(Object.keys(arch.movement)).not.toContain('also');
    expect(Object.keys(arch.movement)).not.toContain('least');
  });

  it('made any other kind it can be assessed', () => {
    for (const from of FAMILIES) {
      for (const to of FAMILIES) expect(() => verdictOf(ofAnotherKind(newJoint(from, 'Joint'), to))).not.toThrow();
    }
  });

  it('the demo part can be saved and opened again', () => {
    expect(readPart(writePart(demoPart()))).toMatchObject({ ok: true, value: { part: demoPart() } });
  });
});
