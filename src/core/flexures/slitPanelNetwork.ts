import type { BarsAcross } from '../beam/acrossStiffness.ts';
import type { Mm } from '../units.ts';
import { hold, modelOf, padOutline } from './commonNetwork.ts';
import type { Body, Dimension, Mechanics } from './network.ts';
import { FULL_TURN } from './reach.ts';
import { stripOf, stripStiffness, twistsInRow, type SlitPanelSizes } from './slitPanel.ts';

/**
 * The panel from its edge: x along it from the first row of bridges, which is held; y through the sheet.
 *
 * Each row of bridges is a pad, and the strip between two rows is a pivot half-way between them, which the twist of
 * the strip resists. A short stem, as thick as the sheet and hinged on the pivot, carries what pushes and pulls; a
 * pure moment leaves it unstrained.
 */
export const slitPanelNetwork: Mechanics<SlitPanelSizes> = {
  network: (sizes, thickness, { amount }) => {
    const { pitch, depth } = sizes;
    const last = twistsInRow(sizes);
    const strips = Array.from({ length: last }, (_, k) => k);
    const rows = [...strips, last];
    return {
      model: modelOf({
        nodes: [
          ...rows.map((k) => ({ id: `middle${k}`, x: k * pitch, y: 0 })),
          ...strips.map((k) => ({ id: `pivot${k}`, x: (k + 0.5) * pitch, y: 0 })),
        ],
        members: strips.map((k) => ({
          id: `stem${k}`,
          from: `middle${k}`,
          to: `pivot${k}`,
          shape: { kind: 'straight' },
          thickness,
          width: depth,
          hinged: 'to',
        })),
        pads: rows.map((k) => ({
          id: `row${k}`,
          nodes: [`middle${k}`, ...(k > 0 ? [`pivot${k - 1}`] : [])],
        })),
        supports: [hold('row0')],
        motions: [{ at: `row${last}`, turn: amount }],
        springs: strips.map((k) => ({
          at: `row${k + 1}`,
          to: `row${k}`,
          twist: stripStiffness(sizes, thickness),
        })),
      }),
      driven: { at: `row${last}`, direction: 'turn' },
      moving: `row${last}`,
      alike: 1,
      bodies: rows.map((k) => rowBody(sizes, thickness, k)),
      dimensions: dimensionsOf(sizes, thickness),
    };
  },

  reach: (sizes, thickness) => Math.min(FULL_TURN, slitsClose(sizes, thickness)),
  limit: slitsClose,
  across: stripsAcross,
};

/**
 * Each strip as bars side by side that run across the panel, from a bridge of one row to the next of the other, as wide
 * as the strip. The pattern is centred; what the edges leave of a bar counts with its share, as it does for the twist.
 */
function stripsAcross(sizes: SlitPanelSizes, thickness: Mm): BarsAcross {
  const { width, overlap } = stripOf(sizes);
  const each = (sizes.slit + sizes.bridge) / 2;
  const half = sizes.depth / 2;
  // A hair less, so that a whole number of bars leaves no splinter of another.
  const oneSide = Array.from({ length: Math.ceil(half / each - 1e-9) }, (_, i) => {
    const [inner, outer] = [i * each, Math.min((i + 1) * each, half)];
    return { z: (inner + outer) / 2, share: (outer - inner) / each };
  });
  return {
    alongX: width,
    alongY: thickness,
    length: overlap,
    middles: [...oneSide, ...oneSide.map(({ z, share }) => ({ z: -z, share }))],
    rows: Array.from({ length: twistsInRow(sizes) }, (_, k) => ({ x: (k + 0.5) * sizes.pitch, y: 0 })),
  };
}

/**
 * Where the edges of a slit meet. Beside a bridge lie slits of the rows before and after it, each between what hangs on
 * this row and on the one after the next, which turn against each other by two twists δ:
 *
 *     p·(1 − cos δ) + w·cos δ = t·sin δ
 *
 * Where p² > t² + (p − w)² they never meet. At the two ends of the panel the last strip turns by one twist alone:
 *
 *     (p + w)·cos δ − t·sin δ = p − w
 */
function slitsClose(sizes: SlitPanelSizes, thickness: Mm): number {
  const { pitch, slitWidth, rows } = sizes;
  const strip = pitch - slitWidth;
  const inner = Math.hypot(thickness, strip);
  const meets = rows > 2 && inner > pitch;
  const within = meets ? Math.atan2(thickness, strip) - Math.acos(pitch / inner) : Infinity;
  const [open, outer] = [pitch + slitWidth, Math.hypot(pitch + slitWidth, thickness)];
  const atEnds = Math.acos(strip / outer) - Math.atan2(thickness, open);
  return twistsInRow(sizes) * Math.min(within, atEnds);
}

/**
 * What hangs stiffly on a row of bridges: the strips before and after it, up to the slits of its neighbours. Bodies of
 * neighbours lie side by side out of the plane and share a strip, so they overlap as seen here.
 */
function rowBody({ pitch, slitWidth, rows }: SlitPanelSizes, thickness: Mm, k: number): Body {
  const box = {
    left: k === 0 ? -pitch / 2 : (k - 1) * pitch + slitWidth / 2,
    right: k === rows - 1 ? (k + 0.5) * pitch : (k + 1) * pitch - slitWidth / 2,
    bottom: -thickness / 2,
    top: thickness / 2,
  };
  return { pad: `row${k}`, outlines: [padOutline(box, [], 0)] };
}

function dimensionsOf({ pitch }: SlitPanelSizes, thickness: Mm): readonly Dimension[] {
  return [
    { kind: 'distance', parameter: 'pitch', from: { x: 0, y: 0 }, to: { x: pitch, y: 0 }, off: thickness / 2 + 3 },
    { kind: 'thickness', parameter: 'layers', member: 'stem0', share: 0.5 },
  ];
}
