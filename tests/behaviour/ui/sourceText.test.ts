import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { sourceRows } from '../../../src/ui/text/sourceText.ts';
import { assessed as answer, changed, LEAF } from '../../support/joints.ts';

const names = (joint: Joint) => sourceRows(answer(joint)).map(({ name }) => name);
const namesIn = (filament: string) => names(changed(LEAF, { profile: { filament } }));

describe('where the numbers come from', () => {
  const assessed = assess({ ...LEAF, profile: { ...LEAF.profile, filament: 'tpu95a' } });
  const rows = assessed.ok ? sourceRows(assessed.value) : [];
  const more = (name: RegExp) => rows.find((row) => name.test(row.name))?.more.join(' ');

  it('tells the note of a figure and of the life curve, which answers do without', () => {
    expect(more(/^Strain at which it stays bent/)).toContain('onset of marked set');
    expect(more(/^Life curve of/)).toContain('Set, not fatigue, governs');
  });

  it('tells of several movements, and of the other end of a swing, only where there are such', () => {
    expect(names(LEAF).join()).not.toMatch(/Wear of|Exponent of/);
    const also = [{ amount: 0.1, ways: 'both ways', cycles: 10 }] as const;
    const swings = names(changed(LEAF, { movement: { ways: 'both ways', also } }));
    expect(swings).toContain('Wear of several movements');
    expect(swings).toContain('Exponent of the other end of a swing, 0.5');
  });

  it('tells what holding, warmth and damp rest on', () => {
    expect(namesIn('petg').filter((name) => /held|glassy|sags|dry/.test(name))).toHaveLength(4);
    expect(namesIn('pa6').join()).toMatch(/Modulus when dry.*Strain at which it stays bent when dry/);
  });

  it('tells how a figure was worked out', () => {
    expect(more(/^Strain stood again and again/)).toContain('0.60 × the single-use value');
  });
});
