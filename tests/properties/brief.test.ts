/** Laws of the brief's value fields, for any joint in either unit. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { findFamily } from '../../src/core/flexures/known.ts';
import { stepped } from '../../src/ui/controls/draft.ts';
import { readQuantity } from '../../src/ui/controls/quantity.ts';
import { settled } from '../../src/ui/controls/settle.ts';
import { briefParts, type BriefOf } from '../../src/ui/joints/briefSpecs.ts';
import { tryChange } from '../../src/ui/joints/tryChange.ts';
import { kindText } from '../../src/ui/text/kindText.ts';
import type { LengthUnit } from '../../src/ui/text/numbers.ts';
import { joint } from '../support/partGenerators.ts';

const units = fc.constantFrom<LengthUnit>('mm', 'inch');

interface Put {
  readonly next: Joint;
  readonly said: string;
}

/** Every field of the brief of a joint, and what was put in force through them. */
function briefOf(any: Joint, unit: LengthUnit) {
  const family = findFamily(any.family);
  if (!family) throw new Error(`no family ${any.family}`);
  const puts: Put[] = [];
  const put: BriefOf['put'] = (next, said) => {
    puts.push({ next, said });
    return undefined;
  };
  const text = kindText(any.family);
  const details = text.details(any.movement.drive, any.sizes);
  const template = (any.measuredThickness === undefined ? text.brief : text.measuredBrief) + details;
  const parts = briefParts(template, { joint: any, family, unit, put });
  return { family, puts, parts };
}

describe('laws of the brief', () => {
  it('what stands in a field is read back as the value in force', () => {
    fc.assert(
      fc.property(joint, units, (any, unit) => {
        for (const part of briefOf(any, unit).parts) {
          if (part.is !== 'value') continue;
          const { figure, kind, value, label } = part.spec;
          const read = readQuantity(figure, kind, unit);
          if (read instanceof Promise || !read.ok) throw new Error(`${label} shows ${figure}, which cannot be read`);
          expect(settled(read.value, kind, unit)).toBeCloseTo(settled(value, kind, unit), 9);
        }
      }),
    );
  });

  it('a value taken is the value of the joint that is put in force, and is said with the old one', () => {
    fc.assert(
      fc.property(joint, units, fc.boolean(), fc.boolean(), (any, unit, up, tenfold) => {
        const { parts, puts, family } = briefOf(any, unit);
        for (const [at, part] of parts.entries()) {
          if (part.is !== 'value') continue;
          const value = stepped(part.spec, undefined, up ? 1 : -1, tenfold);
          part.spec.take(value, part.spec.value);
          const done = puts.at(-1);
          if (!done) throw new Error('nothing was put');
          const after = briefParts(`{${part.spec.key}}`, { joint: done.next, family, unit, put: () => undefined })[1];
          expect(after?.is === 'value' && after.spec.value, `part ${at}`).toBe(value);
          expect(done.said).toContain(part.spec.figure);
          expect(done.said).not.toMatch(/undefined|NaN/);
        }
      }),
    );
  });

  it('stepping never leaves the limits', () => {
    fc.assert(
      fc.property(joint, units, fc.boolean(), (any, unit, up) => {
        for (const part of briefOf(any, unit).parts) {
          if (part.is !== 'value') continue;
          const value = stepped(part.spec, undefined, up ? 1 : -1, true);
          // The grid of the shown unit may lie half a step beyond a limit, which `take` then refuses or takes.
          expect(value).toBeGreaterThanOrEqual(part.spec.min - 0.002);
          expect(value).toBeLessThanOrEqual(part.spec.max + 0.002);
        }
      }),
    );
  });

  it('every choice is among its options, and choosing one makes it the choice', () => {
    fc.assert(
      fc.property(joint, units, (any, unit) => {
        const { parts, puts, family } = briefOf(any, unit);
        for (const part of parts) {
          if (part.is !== 'choice') continue;
          const { options, value, key } = part.spec;
          expect(options.map((option) => option.value)).toContain(value);
          for (const option of options) {
            part.spec.take(option.value);
            const next = puts.at(-1)?.next ?? any;
            const after = briefParts(`{${key}}`, { joint: next, family, unit, put: () => undefined })[1];
            expect(after?.is === 'choice' && after.spec.value).toBe(option.value);
          }
        }
      }),
    );
  });

  it('a change that is let through leaves a joint that can be assessed, when it could be before', () => {
    fc.assert(
      fc.property(joint, fc.integer({ min: -5, max: 200 }), (any, count) => {
        const { family } = briefOf(any, 'mm');
        const asked = { ...any, sizes: { ...any.sizes, [family.roles.count]: count } };
        const { next, problem } = tryChange(any, asked, family);
        expect(assess(asked).ok).toBe(problem === undefined);
        if (problem === undefined) expect(assess(next).ok).toBe(true);
      }),
    );
  });

  it('a joint that cannot be assessed can be put right one value at a time', () => {
    const family = findFamily('straightLeaf');
    if (!family) throw new Error('no straight leaf');
    fc.assert(
      fc.property(
        joint.filter(({ family: id }) => id === 'straightLeaf'),
        (any) => {
          const broken = { ...any, sizes: { ...any.sizes, [family.roles.length]: 1e6, [family.roles.depth]: -1 } };
          const halfway = { ...broken, sizes: { ...broken.sizes, [family.roles.length]: any.sizes['length'] ?? 12 } };
          expect(tryChange(broken, halfway, family).problem).toBeUndefined();
          expect(tryChange(halfway, any, family).problem).toBeUndefined();
        },
      ),
    );
  });
});
