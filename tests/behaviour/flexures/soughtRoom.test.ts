/** Rooms, what is laid over air and what may stay, by examples reckoned by hand. */
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { soughtOf } from '../../../src/core/flexures/soughts.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { typicalSizes } from '../../support/networks.ts';
import { everyShape, SEARCHED, shapeOf, USUAL } from '../../support/soughts.ts';

/** Two lines of 0.42 mm. */
const T = 0.84;

function kindOf(id: string) {
  const family = FAMILIES.find((one) => one.id === id);
  if (!family) throw new Error(`no kind ${id}`);
  const sought = soughtOf(id);
  return { sought, with: (sizes = {}) => typicalSizes(family, sizes) };
}

/** What is laid over air: flat, as a crease, upright. */
function laid(id: string, sizes = {}) {
  const { sought, with: sized } = kindOf(id);
  return LYINGS.map((lying) => sought.unsupported?.(sized(sizes), T, lying) ?? { bridge: 0, ledge: 0 });
}

describe('room', () => {
  it('of a leaf is its length with both fillets, and in a row as thick as the pads between', () => {
    const leaf = kindOf('straightLeaf');
    const one = leaf.sought.room(leaf.with({ length: 12, fillet: 0.8, depth: 6 }), T);
    expect(one.along).toBeCloseTo(13.6, 9);
    expect(one.across).toBeCloseTo(2.44, 9);
    expect(one.depth).toBe(6);
    const row = leaf.sought.room(leaf.with({ length: 12, fillet: 0.8, inRow: 2, pad: 4 }), T);
    expect(row.along).toBeCloseTo(29.7, 9);
    expect(row.across).toBe(4);
  });

  it('of crossed leaves is two planes and what is open between them, or one where they are fused', () => {
    const crossed = kindOf('crossedLeaves');
    expect(crossed.sought.room(crossed.with({ depth: 3, gap: 0.4, fused: 0 }), T).depth).toBeCloseTo(6.4, 9);
    expect(crossed.sought.room(crossed.with({ depth: 3, gap: 0.4, fused: 1 }), T).depth).toBe(3);
    // Without fillets a leaf of 20 mm at 45° is 14.142 mm high, and half a thickness' slant more at each end.
    const { along } = crossed.sought.room(crossed.with({ length: 20, fillet: 0, between: Math.PI / 2 }), T);
    expect(along).toBeCloseTo(Math.SQRT1_2 * 20 + Math.SQRT1_2 * T, 9);
  });

  it('of an arch has fillets at its crown only where there is a block', () => {
    const arch = kindOf('snapArch');
    const across = (block: number) => arch.sought.room(arch.with({ arches: 1, rise: 3, fillet: 0.6, block }), T).across;
    expect(across(4)).toBeCloseTo(3 + T + 1.2, 9);
    expect(across(0)).toBeCloseTo(3 + T + 0.6, 9);
  });

  it('of a slit panel is the sheet', () => {
    const panel = kindOf('slitPanel');
    expect(panel.sought.room(panel.with({ rows: 20, pitch: 3, depth: 66 }), 1.2)).toEqual({
      along: 60,
      across: 1.2,
      depth: 66,
    });
  });
});

describe('laid over air', () => {
  it('is the pad on an upright leaf, on both sides, and nothing of a leaf that lies flat', () => {
    const [flat, , upright] = laid('straightLeaf', { pad: 4 });
    expect(flat).toEqual({ bridge: 0, ledge: 0 });
    expect(upright).toEqual({ bridge: 0, ledge: (4 - T) / 2 });
  });

  it('is the whole upper leaf of two that are stacked, and nothing where they are fused', () => {
    expect(laid('crossedLeaves', { length: 16, fused: 0 })[0]).toEqual({ bridge: 16, ledge: 0 });
    expect(laid('crossedLeaves', { length: 16, fused: 1 })[0]).toEqual({ bridge: 0, ledge: 0 });
  });

  it('is the pad from leaf to leaf where they stand upright', () => {
    expect(laid('parallelLeaves', { spacing: 15, fillet: 0.8 })[2]).toEqual({ bridge: 15 - T, ledge: 0.8 });
  });

  it('is a turn from run to run where they stand, and one that begins on nothing from three runs on', () => {
    expect(laid('foldedLeaf', { runs: 2, spacing: 5 })[2]).toEqual({ bridge: 5 - T, ledge: 0 });
    expect(laid('foldedLeaf', { runs: 3, spacing: 5 })[2]).toEqual({ bridge: 5 - T, ledge: 5 + T });
  });

  it('is what of a round notch is flatter than 45°: seven tenths of its radius', () => {
    expect(laid('neck', { along: 2, deep: 2 })[2]?.ledge).toBeCloseTo(Math.SQRT2, 9);
    expect(laid('neck')[0]).toEqual({ bridge: 0, ledge: 0 });
  });

  it('is nothing of what lies on the plate', () => {
    expect(laid('crease')[1]).toEqual({ bridge: 0, ledge: 0 });
    expect(laid('slitPanel')[1]).toEqual({ bridge: 0, ledge: 0 });
  });
});

describe('what may stay', () => {
  it('is every shape of a kind that snaps but those of which it is cautioned that they spring back', () => {
    for (const { family, sought } of SEARCHED.filter((kind) => kind.family.snaps)) {
      // Every seventh shape is enough to meet both answers in every kind, and takes a seventh of the time.
      const shapes = everyShape(sought.rungs).filter((_, i) => i % 7 === 0);
      const seen = new Set<boolean>();
      for (const tried of shapes) {
        const { sizes, thickness } = shapeOf(family, sought, tried, USUAL);
        const codes = family.check(sizes, thickness, USUAL).map(({ code }) => code);
        // What has no room is refused before it is asked whether it stays.
        if (codes.includes('no-room')) continue;
        // One arch with a block leans back out of a rest that its closed form promises.
        if (sizes['arches'] === 1 && (sizes['block'] ?? 0) > 0) continue;
        const stays = sought.mayStay?.(sizes, thickness);
        expect(stays).toBe(!codes.includes('no-second-rest'));
        seen.add(stays === true);
      }
      expect(seen.size).toBe(2);
    }
  });

  it('is said of kinds that snap and of no other', () => {
    for (const { family, sought } of SEARCHED) expect(sought.mayStay !== undefined).toBe(family.snaps === true);
  });

  it('is one arch alone from 5.65 times its thickness, and from 2.31 where a stem guides it', () => {
    const { sought, with: sized } = kindOf('snapArch');
    const stays = (ratio: number, drive?: string, block = 0) =>
      sought.mayStay?.(sized({ arches: 1, block, rise: ratio * T }), T, drive);
    expect([stays(5.6), stays(5.7)]).toEqual([false, true]);
    expect([stays(2.3, 'guided'), stays(2.32, 'guided')]).toEqual([false, true]);
    expect([stays(9, 'pressed', 3), stays(9, 'guided', 3)]).toEqual([false, true]);
  });
});
