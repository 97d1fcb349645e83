import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { readPart, writePart } from '../../../src/files/partFile.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { newJoint, newMeasuredJoint } from '../../../src/store/newJoint.ts';

function verdictOf(joint: Joint) {
  const assessed = assess(joint);
  if (!assessed.ok) throw new Error(assessed.problems.map(({ message }) => message).join('; '));
  return assessed.value.verdict;
}

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

  it('the demo part shows a caution, a pass and a section that is not whole lines, and says that it is invented', () => {
    const part = demoPart();
    expect(part.invented).toBe(true);
    expect(part.joints.map((joint) => verdictOf(joint))).toMatchObject([
      { grade: 'caution', reason: 'life' },
      { grade: 'pass' },
      { grade: 'caution', reason: 'printing' },
    ]);
  });

  it('the demo part can be saved and opened again', () => {
    expect(readPart(writePart(demoPart()))).toMatchObject({ ok: true, value: demoPart() });
  });
});
