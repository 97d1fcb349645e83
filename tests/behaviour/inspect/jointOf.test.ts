import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeAll } from '../../../src/core/inspect/judge.ts';
import type { Flexure } from '../../../src/core/inspect/flexure.ts';
import type { Judged } from '../../../src/core/inspect/judged.ts';
import { redrawn } from '../../../src/core/inspect/redraw.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import {
  anyFlexures,
  archOf,
  AS_DROPPED,
  ASKED,
  bendingLengthOf,
  BOX,
  creaseOf,
  curved,
  neckOf,
  spiralRunOf,
  straight,
  THREE_LEAVES,
} from '../../support/flexures.ts';
import { integral } from '../../support/quadrature.ts';

const judge = (flexure: Flexure, as = AS_DROPPED): Judged => judgeAll([flexure], BOX, as, ASKED, 'part.stl')[0]!;

function nominal({ assessed }: Judged): number {
  if (!assessed.ok) throw new Error(assessed.problems[0].message);
  return assessed.value.strain.nominal;
}

const notesOf = ({ assessed }: Judged) => (assessed.ok ? assessed.notes : assessed.problems);
const MICRON = {
  rel: 1.5e-3,
  because: 'sizes of a joint are kept to a micron, half of which is 1.2e-3 of 0.4 mm',
} as const;

describe('the bending length', () => {
  it('of the three leaves is that of the look notes, by a quadrature along the leaf', () => {
    const lengths = THREE_LEAVES.map(({ thickness: { least: t } }) => {
      const slice = (x: number) => (t / (t + 2 * (0.6 - Math.sqrt(Math.max(0, 0.36 - x * x))))) ** 3;
      return 3.8 + 2 * integral(slice, 0, 0.6, 20_000);
    });
    lengths.forEach((length, i) => {
      expectClose(length, [4.34, 4.5, 4.59][i]!, { printedTo: 2, because: 'as the drawing office printed them' });
      expectClose(THREE_LEAVES[i]!.bendingLength, length, { abs: 1e-5, because: 'the slope at the end of the arc' });
    });
  });

  it('of what is redrawn is the same by the closed form of a notch', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0.3, 0.84, 1.7),
        fc.constantFrom(3, 8, 40),
        fc.constantFrom(0, 0.2, 0.6, 1.4),
        (thickness, length, fillet) => {
          const { bendingLength } = redrawn(straight(), { thickness, length, fillet });
          const because = 'Simpson’s rule on 2000 steps of a smooth slice';
          expectClose(bendingLength, bendingLengthOf(thickness, length, fillet), { abs: 1e-8, because });
        },
      ),
    );
  });
});

describe('the joint that stands for a section', () => {
  it('strains as the real length with its fillets does: t·θ/(2·bending length), no fillet counted twice', () => {
    for (const flexure of [...THREE_LEAVES, neckOf(), creaseOf(), curved(80), archOf(), spiralRunOf()]) {
      const expected = (flexure.thickness.least * radians(15)) / (2 * flexure.bendingLength);
      expectClose(nominal(judge(flexure)), expected, MICRON);
    }
  });

  it('strains the same at every scale, and pushes with the cube of it', () => {
    // Mechanics notes, M: strain 1, torque s³.
    const [one, two] = [1, 2].map((scale) => judge(THREE_LEAVES[1]!, { ...AS_DROPPED, scale })) as [Judged, Judged];
    expectClose(nominal(two), nominal(one), MICRON);
    if (!one.assessed.ok || !two.assessed.ok) throw new Error('refused');
    const ratio = two.assessed.value.effort.effort / one.assessed.value.effort.effort;
    expectClose(ratio, 8, { rel: 6e-3, because: 'the cube of sizes that are kept to a micron' });
  });

  it.each([
    ['a leaf', straight(), 'straightLeaf'],
    ['a neck', neckOf(), 'neck'],
    ['a neck without fillets', neckOf({ fillet: 0 }), 'straightLeaf'],
    ['a neck whose pads have no room for its notch', neckOf({ shoulder: 1.2 }), 'straightLeaf'],
    ['a crease', creaseOf(), 'crease'],
    ['a curved leaf', curved(80), 'straightLeaf'],
    ['an arch', archOf(), 'straightLeaf'],
    ['a spiral run', spiralRunOf(), 'straightLeaf'],
  ])('of %s is of the kind that answers it', (_, flexure, family) => {
    expect(judge(flexure).joint.family).toBe(family);
  });

  it('is a crease when the part is laid so that it is one, whatever it was called', () => {
    const told = judge(straight({ fillet: 0.3, shoulder: 4 }), { ...AS_DROPPED, up: '+y' });
    expect([told.joint.family, told.joint.profile.lying, told.landing.countOf]).toEqual(['crease', 'crease', 'layers']);
  });

  it('keeps what was measured, its lying and its name', () => {
    const { joint } = judge(straight({ number: 7 }), { ...AS_DROPPED, up: '+x' });
    expect(joint.measuredThickness).toBe(0.84);
    expect(joint.profile.lying).toBe('upright');
    expect(joint.name).toBe('part.stl no. 7');
    expect(joint.sizes).toMatchObject({ depth: 6, fillet: 0.8, pad: 10 });
    expect(joint.movement).toMatchObject({ drive: 'turned', amount: radians(15), cycles: 5000, chance: 0.95 });
  });

  it('keeps a sharp root sharp, and says that it breaks first', () => {
    const told = judge(straight({ fillet: 0 }));
    expect(told.joint.sizes['fillet']).toBe(0);
    expect(told.assessed.ok && told.assessed.value.notes.map(({ code }) => code)).toContain('sharp-root');
  });

  it('says every size that is taken at a limit, with the limit', () => {
    const told = judge(straight({ shoulder: 80, depth: 400 }));
    expect(told.joint.sizes).toMatchObject({ pad: 50, depth: 300 });
    const notes = notesOf(told).map(({ field, value, limit }) => [field, value, limit]);
    expect(notes).toContainEqual(['sizes.pad', 80, 50]);
    expect(notes).toContainEqual(['sizes.depth', 400, 300]);
  });

  it('takes no length as longer than it is: what is too short is refused', () => {
    const told = judge(straight({ thickness: 0.2, length: 0.3, fillet: 0 }));
    expect(told.joint.sizes['length']).toBe(0.3);
    expect(notesOf(told).map(({ code, field }) => [code, field])).toEqual([['below-minimum', 'sizes.length']]);
  });

  it('takes a fillet as no larger than its pads have room for, and says so', () => {
    const told = judge(straight({ fillet: 0.8, shoulder: 2 }));
    expect(told.joint.sizes['fillet']).toBe(0.58);
    expect(notesOf(told).map(({ field }) => field)).toEqual(['sizes.fillet']);
  });

  it('says that what joins something no thicker is taken as joining a pad', () => {
    const told = judge(straight({ fillet: 0, shoulder: 0.84 }));
    expect(told.assessed.ok).toBe(true);
    expect(notesOf(told).map(({ field, limit }) => [field, limit])).toContainEqual(['sizes.pad', 1.68]);
  });

  it('says where it stands for something curved, or for one of several ways', () => {
    const said = notesOf(judge(archOf())).map(({ message }) => message);
    expect(said.some((message) => message.includes('stands for the arch'))).toBe(true);
    expect(said.some((message) => message.includes('one of several ways'))).toBe(true);
    expect(notesOf(judge(straight()))).toEqual([]);
  });

  it('is assessed or refused with the field named, for anything found; a limit is never passed in silence', () => {
    fc.assert(
      fc.property(
        anyFlexures(3),
        fc.constantFrom(0.8, 1, 3.7),
        fc.constantFrom('+z', '+x', '-y'),
        (some, scale, up) => {
          for (const told of judgeAll(some, BOX, { ...AS_DROPPED, scale, up }, ASKED, 'part.stl')) {
            if (!told.assessed.ok) expect(told.assessed.problems[0].field).toMatch(/^(sizes|measuredThickness)/);
            else
              expectClose(
                nominal(told),
                (told.flexure.thickness.least * radians(15)) / (2 * told.flexure.bendingLength),
                {
                  rel: 4e-3,
                  because: 'sizes are kept to a micron, half of which is 3e-3 of 0.16 mm',
                },
              );
          }
        },
      ),
    );
  });
});
