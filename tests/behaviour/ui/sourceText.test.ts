import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { sourceRows } from '../../../src/ui/text/sourceText.ts';
import { LEAF } from '../../support/joints.ts';

describe('where the numbers come from', () => {
  const assessed = assess({ ...LEAF, profile: { ...LEAF.profile, filament: 'tpu95a' } });
  const rows = assessed.ok ? sourceRows(assessed.value) : [];
  const more = (name: RegExp) => rows.find((row) => name.test(row.name))?.more.join(' ');

  it('tells the note of a figure and of the life curve, which answers do without', () => {
    expect(more(/^Strain at which it stays bent/)).toContain('onset of marked set');
    expect(more(/^Life curve of/)).toContain('Set, not fatigue, governs');
  });

  it('tells how a figure was worked out', () => {
    expect(more(/^Strain stood again and again/)).toContain('0.60 × the single-use value');
  });
});
