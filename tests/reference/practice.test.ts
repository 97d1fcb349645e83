/**
 * Source [common-practice], no source: what people who print say of a leaf of two lines of 0.42 mm that is bent by 40° over 2 mm. PLA
 * lasts a few bends, ABS and PC tens, ASA tens, PETG hundreds, the nylons about a thousand or more, PP most of what is rigid; TPU does
 * not wear out but sags. Several curves were set by this, so that it shows that figures arrive, not that they are true.
 */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import type { RowId } from '../../src/core/material/types.ts';
import { radians } from '../../src/core/units.ts';
import { expectClose } from '../support/close.ts';
import { changed, LEAF } from '../support/joints.ts';

/** Rooted as gently as it can be: practice does not tell roots apart. */
const FOLDED = changed(LEAF, {
  sizes: { length: 2, lines: 2, fillet: 3, pad: 8 },
  movement: { amount: radians(40), cycles: 1, held: true },
});

function foldedOf(id: RowId): Assessment {
  const answer = assess(changed(FOLDED, { profile: { filament: id } }), bySolver());
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

const medianOf = (id: RowId) => foldedOf(id).life.median;

it('the joint strains as the practice check says', () => {
  const { strain, section } = foldedOf('petg');
  expectClose(section.thickness, 0.84, { rel: 1e-12, because: 'round-off' });
  expectClose(strain.nominal, (0.84 * radians(40)) / 4, { rel: 1e-12, because: 'round-off' });
  expectClose(strain.rootFactor, 1, { abs: 0.05, because: 'a fillet of 3 mm on 0.84 mm still leaves a little' });
});

describe('half last', () => {
  it.each([
    ['pla', 1, 9],
    ['abs', 10, 99],
    ['pc', 10, 99],
    ['asa', 10, 99],
    ['petg', 100, 999],
    ['pa12', 800, 5000],
    ['pa6', 800, 5000],
  ] as const)('%s: %s to %s folds', (id, least, most) => {
    expect(medianOf(id)).toBeGreaterThanOrEqual(least);
    expect(medianOf(id)).toBeLessThanOrEqual(most);
  });

  it('PP the most of what is rigid', () => {
    const rigid = (['pla', 'abs', 'pc', 'asa', 'petg', 'pa12', 'pa6'] as const).map(medianOf);
    expect(medianOf('pp')).toBeGreaterThan(Math.max(...rigid));
  });

  it('TPU past all counting, but it sags', () => {
    const { life, notes } = foldedOf('tpu95a');
    expect(life.beyond).toBe('median');
    expect(notes.map(({ code }) => code)).toContain('sags-when-held');
  });
});
