import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import type { Spare } from '../../../src/core/design/remedy.ts';
import { quickFirst } from '../../../src/core/design/quickFirst.ts';
import { roomToSpare } from '../../../src/core/design/roomToSpare.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

/** A value of a joint moved to where a limit is told, or to a share beyond it. */
function movedTo(joint: Joint, { value, limit, now }: Spare, beyond: number): Joint {
  const to = limit * (1 + Math.sign(limit - now) * beyond);
  const { roles } = familyOf(joint);
  if (value === 'amount') return { ...joint, movement: { ...joint.movement, amount: to } };
  if (value === 'cycles') return { ...joint, movement: { ...joint.movement, cycles: Math.floor(to) } };
  const name = value === 'count' ? roles.count : roles.length;
  return { ...joint, sizes: { ...joint.sizes, [name]: value === 'count' ? Math.round(limit) : to } };
}

describe('a leaf that passes', () => {
  const joint = changed(LEAF, { sizes: { length: 30 } });
  const a = assessed(joint);
  const grade = (spare: Spare, beyond: number) => assessed(movedTo(joint, spare, beyond)).verdict.grade;

  it('is told four limits, each of which passes and not a little beyond', () => {
    const spares = roomToSpare(a);
    expect(spares.map((spare) => spare.value)).toEqual(['amount', 'length', 'cycles', 'count']);
    for (const spare of spares) {
      expect(grade(spare, -0.001), spare.value).toBe('pass');
      if (spare.value !== 'count') expect(grade(spare, 0.01), spare.value).not.toBe('pass');
    }
    const [count] = spares.filter(({ value }) => value === 'count');
    expect(grade({ ...count!, limit: count!.limit + 1 }, 0)).not.toBe('pass');
  });

  it('has no room when it fails', () => {
    expect(roomToSpare(assessed(changed(joint, { movement: { amount: radians(170) } })))).toEqual([]);
  });
});

const quick = (one: Joint) => assess(one, bySolver({ whole: false, parts: 12 }));
const full = (one: Joint) => assess(one, bySolver({ beyond: false }));

/** Demo joints with room: what stops each is said beside it, as the drawing shows it. */
const ROOMY: readonly (readonly [id: string, what: string, change: Parameters<typeof changed>[1]])[] = [
  ['gate-clip', 'strain', {}],
  ['sensor-shuttle', 'life', {}],
  ['bucket-pivot', 'life', {}],
  ['trunk-cover', 'ends that meet', { sizes: { cells: 10 } }],
  ['wind-vane', 'arms that touch', { movement: { amount: radians(10), also: [], cycles: 100, held: false } }],
];

describe.each(ROOMY)('%s, stopped by %s', (id, _, change) => {
  const joint = changed(
    demoPart().joints.find((one) => one.id === id)!,
    change,
  );
  const gradeOf = (one: Joint) => {
    const judged = full(one);
    return judged.ok ? judged.value.verdict.grade : 'refused';
  };
  const a = assess(joint, bySolver()) as { readonly ok: true; readonly value: Assessment };
  const spares = roomToSpare(a.value, quickFirst(quick, full));

  it('passes at every limit that is told', () => {
    expect(spares).toHaveLength(4);
    for (const spare of spares) expect(gradeOf(movedTo(joint, spare, -0.001)), spare.value).toBe('pass');
  });

  it('does not pass, or is not allowed, past its largest amount', () => {
    // Limits are searched for to half a per cent; a per cent beyond is past them.
    expect(gradeOf(movedTo(joint, spares[0]!, 0.01))).not.toBe('pass');
  });
});
