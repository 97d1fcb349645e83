import { describe, expect, it, vi } from 'vitest';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf, findFamily, takeFamilies } from '../../../src/core/flexures/known.ts';

describe('families that have been taken in', () => {
  it('are that of the first screen, and all once the whole list has been imported', async () => {
    vi.resetModules();
    const known = await import('../../../src/core/flexures/known.ts');
    expect(FAMILIES.filter(({ id }) => known.findFamily(id)).map(({ id }) => id)).toEqual(['straightLeaf']);
    const every = await import('../../../src/core/flexures/index.ts');
    for (const family of every.FAMILIES) expect(known.findFamily(family.id)).toBe(family);
  });

  it('stay as they are when they are taken in again', () => {
    const before = familyOf({ family: 'toggle' });
    takeFamilies(FAMILIES);
    takeFamilies([{ ...before }]);
    expect(findFamily('toggle')).toBe(before);
  });

  it('are none but those that were taken in', () => {
    expect(findFamily('hinge')).toBeUndefined();
    expect(() => familyOf({ family: 'hinge' })).toThrow(RangeError);
  });
});

describe('words of kinds that have been taken in', () => {
  it('are those of the same families', async () => {
    vi.resetModules();
    const known = await import('../../../src/core/flexures/known.ts');
    const text = await import('../../../src/ui/text/kindText.ts');
    const alike = () => FAMILIES.filter(({ id }) => text.hasKindText(id) === (known.findFamily(id) !== undefined));
    expect(alike()).toHaveLength(FAMILIES.length);
    await import('../../../src/ui/joints/everyKind.ts');
    expect(alike()).toHaveLength(FAMILIES.length);
    expect(FAMILIES.filter(({ id }) => !text.hasKindText(id))).toEqual([]);
  });
});
