/** Laws of the words of kinds: a brief asks for every size that its drive asks for, and for no other. */
import { describe, expect, it } from 'vitest';
import { isAsked } from '../../src/core/flexures/drives.ts';
import type { FlexureFamily } from '../../src/core/flexures/family.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { kindText } from '../../src/ui/text/kindText.ts';

const DRIVEN = FAMILIES.flatMap((family) => family.drives.map((drive) => [family.id, drive.id, family] as const));

/** Sizes that mean nothing beside others: a gap between planes that are one, a distance between arches that are one. */
const IDLE: Readonly<Record<string, { readonly size: string; readonly where: Readonly<Record<string, number>> }>> = {
  crossedLeaves: { size: 'gap', where: { fused: 1 } },
  snapArch: { size: 'apart', where: { arches: 1 } },
};

function wordsOf(family: FlexureFamily, drive: string, sizes = newJoint(family, 'Any').sizes) {
  const text = kindText(family.id);
  const details = text.details(drive, sizes);
  return { sized: `${text.brief} ${details}`, measured: `${text.measuredBrief} ${details}` };
}

/** Names of sizes that a template asks for, roles taken back to their sizes. */
function asked(template: string, { roles }: FlexureFamily): readonly string[] {
  return [...template.matchAll(/\{([\w.]+)\}/g)].flatMap(([, name = '']) =>
    name.startsWith('sizes.') ? name.slice('sizes.'.length) : (roles[name as keyof typeof roles] ?? []),
  );
}

describe('laws of the words of kinds', () => {
  it.each(DRIVEN)('the brief of a %s, %s, asks once for every size that is asked for', (_, drive, family) => {
    const sizes = Object.entries(family.parameters).flatMap(([name, size]) => (isAsked(size, drive) ? [name] : []));
    expect(asked(wordsOf(family, drive).sized, family).toSorted()).toEqual(sizes.toSorted());
  });

  it.each(DRIVEN)('as measured, a %s, %s, asks for its thickness in the place of its count', (_, drive, family) => {
    const { measured, sized } = wordsOf(family, drive);
    const others = asked(sized, family).filter((name) => name !== family.roles.count);
    expect(asked(measured, family).toSorted()).toEqual(others.toSorted());
    expect(measured).toContain('{thickness}');
  });

  it('what acts in no way is not asked for', () => {
    for (const family of FAMILIES) {
      const idle = IDLE[family.id];
      if (!idle) continue;
      const sizes = { ...newJoint(family, 'Any').sizes, ...idle.where };
      expect(asked(wordsOf(family, family.drives[0].id, sizes).sized, family)).not.toContain(idle.size);
    }
  });

  it.each(FAMILIES.map((family) => [family.id, family] as const))(
    'a %s asks for how it is used, and what snaps for whether it stays',
    (id, family) => {
      const { sized } = wordsOf(family, family.drives[0].id);
      for (const name of ['drive', 'amount', 'ways', 'cycles', 'filament', 'held', 'chance', 'wish', 'nozzle'])
        expect(sized.split(`{${name}}`)).toHaveLength(2);
      expect(sized.includes('{stays}')).toBe(family.snaps === true);
      expect(Object.keys(kindText(id).drives)).toEqual(family.drives.map((drive) => drive.id));
    },
  );
});
