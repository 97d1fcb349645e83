import { describe, expect, it } from 'vitest';
import type { SlitPanelSizes } from '../../../src/core/flexures/slitPanel.ts';
import { slitPanelNetwork } from '../../../src/core/flexures/slitPanelNetwork.ts';
import { gapFinder } from '../../../src/core/geometry/gaps.ts';
import { expectClose } from '../../support/close.ts';

const SIZES: SlitPanelSizes = { layers: 40, rows: 6, pitch: 3, slitWidth: 0.8, slit: 20, bridge: 2, depth: 66 };
const WRAPPED = { drive: 'wrapped', widthRatio: 1 } as const;

/** Gaps of a panel whose every strip is twisted by so much, its rows turned about the middles of the strips by hand. */
function gapsAt(sizes: SlitPanelSizes, thickness: number, twist: number) {
  const { model, bodies } = slitPanelNetwork.network(sizes, thickness, { ...WRAPPED, amount: 1 });
  const half = sizes.pitch / 2;
  let [x, y] = [0, 0];
  const poses = Object.fromEntries(
    Array.from({ length: sizes.rows }, (_, k) => {
      const [cos, sin] = [Math.cos(k * twist), Math.sin(k * twist)];
      if (k > 0) [x, y] = [x + half * cos, y + half * sin];
      const pose = { x, y, turn: k * twist };
      [x, y] = [x + half * cos, y + half * sin];
      return [`row${k}`, pose];
    }),
  );
  const stems = model.members.map(({ from, to }) => {
    const [a, b] = [from, to].map((id) => model.nodes.find((node) => node.id === id) ?? { x: 0, y: 0 });
    return { x: [a?.x ?? 0, b?.x ?? 0], y: [0, 0], angle: [0, 0], thickness: [thickness, thickness] };
  });
  const away = stems.map((stem) => ({ ...stem, y: [1000, 1000] }));
  return gapFinder(model, bodies, stems)(away, poses);
}

const limitOf = (sizes: SlitPanelSizes, thickness: number) =>
  slitPanelNetwork.limit?.(sizes, thickness, 'wrapped') ?? Number.NaN;

describe('a slit panel seen from the side', () => {
  it('leaves between the bodies of every other row the width of a slit, flat', () => {
    const { least } = gapsAt(SIZES, 8, 0);
    expectClose(least?.gap ?? Number.NaN, 0.8, { abs: 1e-9, because: 'round-off' });
    expect([least?.a.what, least?.b.what]).toEqual(['row0', 'row2']);
  });

  it('has its slits closed by two twists each where it can go no further', () => {
    for (const thickness of [3, 5, 8]) {
      const twist = limitOf(SIZES, thickness) / 5;
      expectClose(gapsAt(SIZES, thickness, twist).least?.gap ?? Number.NaN, 0, { abs: 1e-6, because: 'round-off' });
      // Twisted a little less it is open: by t·cos δ less than half as much again, for each radian.
      const before = gapsAt(SIZES, thickness, 0.99 * twist).least?.gap ?? Number.NaN;
      expect(before).toBeGreaterThan(0.001);
      expect(before).toBeLessThan(0.02 * thickness * twist);
    }
  });

  it('is not held up by its inner slits where strips are wide and thin: those at its ends close last', () => {
    const limit = limitOf(SIZES, 1.2) / 5;
    expect(gapsAt(SIZES, 1.2, limit).least?.gap ?? 0).toBeGreaterThan(0.1);
    // The last strip turns by one twist: its upper corner, p + w ahead of the slit's other edge, comes back onto it.
    expectClose(3.8 * Math.cos(limit) - 1.2 * Math.sin(limit), 2.2, { abs: 1e-9, because: 'round-off' });
  });
});
