import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import type { CellPanelSizes } from './cellPanel.ts';
import { hold, modelOf, padOutline, type PadRoot } from './commonNetwork.ts';
import type { Body, Dimension, Mechanics } from './network.ts';
import { arcReach, FULL_TURN } from './reach.ts';

/** x along the panel from the middle of the first slat, which is held; y through it. */
export const cellPanelNetwork: Mechanics<CellPanelSizes> = {
  network: (sizes, thickness, { amount, widthRatio }) => {
    const { cells, depth } = sizes;
    const leaves = Array.from({ length: cells }, (_, k) => k);
    const slats = [...leaves, cells];
    return {
      model: modelOf({
        nodes: leaves.flatMap((k) => leafEnds(sizes, k)),
        members: leaves.map((k) => ({
          id: `leaf${k}`,
          from: `from${k}`,
          to: `to${k}`,
          shape: { kind: 'straight' },
          thickness,
          width: depth,
          widthRatio,
        })),
        pads: slats.map((k) => ({
          id: `slat${k}`,
          nodes: [...(k > 0 ? [`to${k - 1}`] : []), ...(k < cells ? [`from${k}`] : [])],
          at: { x: k * sizes.cell, y: 0 },
        })),
        supports: [hold('slat0')],
        motions: [{ at: `slat${cells}`, turn: amount }],
      }),
      driven: { at: `slat${cells}`, direction: 'turn' },
      moving: `slat${cells}`,
      alike: 1,
      bodies: slats.map((k) => slatBody(sizes, thickness, k)),
      dimensions: dimensionsOf(sizes),
    };
  },

  reach: (sizes) => Math.min(FULL_TURN, slatsMeet(sizes)),
  limit: slatsMeet,
};

function slatsMeet({ cells, leaf, fillet, pad }: CellPanelSizes): number {
  return cells * arcReach(leaf, pad / 2, fillet);
}

type LeafEnd = Point & { readonly id: string };

function leafEnds({ cell, leaf }: CellPanelSizes, k: number): readonly [LeafEnd, LeafEnd] {
  const middle = (k + 0.5) * cell;
  return [
    { id: `from${k}`, x: middle - leaf / 2, y: 0 },
    { id: `to${k}`, x: middle + leaf / 2, y: 0 },
  ];
}

function slatBody(sizes: CellPanelSizes, thickness: Mm, k: number): Body {
  const { cell, cells, leaf, fillet, pad } = sizes;
  const half = (cell - leaf) / 2 - fillet;
  const grown = { heading: 0, thickness, fillet };
  const roots: PadRoot[] = [
    ...(k > 0 ? [{ ...grown, side: 'left' as const, heading: Math.PI, end: leafEnds(sizes, k - 1)[1] }] : []),
    ...(k < cells ? [{ ...grown, side: 'right' as const, end: leafEnds(sizes, k)[0] }] : []),
  ];
  const box = { left: k * cell - half, right: k * cell + half, bottom: -pad / 2, top: pad / 2 };
  return { pad: `slat${k}`, outlines: [padOutline(box, roots)] };
}

function dimensionsOf({ cell, leaf, pad }: CellPanelSizes): readonly Dimension[] {
  const half = (cell - leaf) / 2;
  return [
    { kind: 'distance', parameter: 'cell', from: { x: 0, y: 0 }, to: { x: cell, y: 0 }, off: pad / 2 + 6 },
    { kind: 'distance', parameter: 'leaf', from: { x: half, y: 0 }, to: { x: half + leaf, y: 0 }, off: pad / 2 + 3 },
    { kind: 'distance', parameter: 'pad', from: { x: 0, y: pad / 2 }, to: { x: 0, y: -pad / 2 }, off: -half - 3 },
    { kind: 'thickness', parameter: 'lines', member: 'leaf0', share: 0.5 },
  ];
}
