/** The brief as it reads, for each way in which a joint is moved. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { radians } from '../../../src/core/units.ts';
import { briefParts, type BriefPart } from '../../../src/ui/joints/briefSpecs.ts';
import { kindText } from '../../../src/ui/text/kindText.ts';
import type { LengthUnit } from '../../../src/ui/text/numbers.ts';
import { changed, CREASE, LEAF } from '../../support/joints.ts';

const PUSHED = changed(LEAF, { movement: { drive: 'pushed', amount: 3 } });
const CENTRED = changed(LEAF, { movement: { drive: 'centred', amount: radians(8) } });

function partsOf(joint: Joint, unit: LengthUnit = 'mm', puts: { next: Joint; said: string }[] = []) {
  const { brief, details } = kindText(joint.family);
  const put = (next: Joint, said: string) => {
    puts.push({ next, said });
    return undefined;
  };
  const of = { joint, family: familyOf(joint), unit, put };
  return { brief: briefParts(brief, of), details: briefParts(details(joint.movement.drive, joint.sizes), of) };
}

function spoken(part: BriefPart): string {
  if (part.is === 'text') return part.text;
  const { spec, stop } = part;
  if (part.is === 'value') return `${part.spec.figure}${part.spec.suffix}${stop}`;
  return `${part.spec.options.find(({ value }) => value === spec.value)?.text}${stop}`;
}

const read = (parts: readonly BriefPart[]) =>
  parts
    .map(spoken)
    .join('')
    .replaceAll(/[\u00a0\u2009]/g, ' ');

describe('the brief', () => {
  it.each([
    ['a turned leaf', LEAF, 'mm', 'Bends 35° one way, 5 000 times, in PETG, 6 mm deep'],
    ['a crease, which knows one way only', CREASE, 'mm', 'Bends 100° one way, 600 times'],
    ['a pushed leaf', PUSHED, 'mm', 'Is pushed at the tip by 3 mm one way, 5 000 times'],
    ['a pushed leaf in inches', PUSHED, 'inch', 'Is pushed at the tip by 0.1181 in one way'],
    ['a leaf about a pin', CENTRED, 'mm', 'Turns about a pin 8° one way'],
  ] as const)('of %s', (_, joint, unit, begins) => {
    expect(read(partsOf(joint, unit).brief).startsWith(begins)).toBe(true);
  });

  it('reads on in the small where the choice is not the first word', () => {
    const joint = { ...PUSHED, measuredThickness: 0.8 };
    const of = { joint, family: familyOf(joint), unit: 'mm', put: () => undefined } as const;
    expect(read(briefParts(kindText('straightLeaf').measuredBrief, of))).toContain(
      'long: is pushed at the tip by 3 mm',
    );
  });

  it('asks for the sizes of its drive, and for how many are side by side in every one', () => {
    expect(read(partsOf(LEAF).details)).toContain('into pads 4 mm thick, 1 in a row, 1 side by side.');
    expect(read(partsOf(PUSHED).details)).toContain('the tip 100 % as thick as the root, 1 side by side.');
    expect(read(partsOf(CENTRED).details)).toContain('the pin 50 % of the way along the leaf, 1 side by side.');
    expect(read(partsOf(CREASE).details)).toContain('1 in a row, 1 side by side.');
  });

  it('takes another drive as far as is usual, or as far as before where it measures the same', () => {
    const puts: { next: Joint; said: string }[] = [];
    const choice = partsOf(changed(LEAF, { movement: { effortAtMost: 40 } }), 'mm', puts).brief.find(
      (part) => part.is === 'choice' && part.spec.key === 'drive',
    );
    if (choice?.is !== 'choice') throw new Error('the drive must be a choice');
    choice.spec.take('pushed');
    choice.spec.take('centred');
    expect(puts[0]?.next.movement).toEqual({ ...LEAF.movement, drive: 'pushed', amount: 2 });
    expect(puts[1]?.next.movement).toEqual({ ...LEAF.movement, drive: 'centred', effortAtMost: 40 });
    expect(puts[0]?.said).toBe('Made so that it is pushed at the tip, was: bends');
  });
});
