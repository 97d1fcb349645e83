/** A slit panel seen from above: the sheet with its slits. */
import type { Path } from '../geometry/outline.ts';
import { roundedOutline, type Corner } from '../geometry/roundedOutline.ts';
import type { Mm } from '../units.ts';
import type { SlitPanelSizes } from './slitPanel.ts';

/** Round-off in a row of lengths [mm]. */
const HAIR: Mm = 1e-9;

/**
 * The sheet from above: x along the panel from its held edge, y across it, the pattern centred on y = 0. Every other row
 * is shifted by half. Slits have round ends; those that meet an edge are open there.
 *
 * What an edge leaves of a bridge counts from half a bridge on, and what it leaves of a slit from its round end on: less
 * is a splinter or a nick, and is left out.
 *
 * @param sizes - of the panel, checked [mm]
 * @returns closed outlines [mm]: the outer one counter-clockwise, then slits clockwise, row by row
 */
export function slitPanelPlan(sizes: SlitPanelSizes): readonly Path[] {
  const [length, edge] = [sizes.rows * sizes.pitch, sizes.depth / 2];
  const slits = Array.from({ length: sizes.rows }, (_, row) => slitsOf(sizes, row)).flat();
  const below = slits.filter(({ bottom }) => bottom === -edge).flatMap((slit) => notch(slit, slit.top, -edge));
  const above = slits.filter(({ top }) => top === edge).flatMap((slit) => notch(slit, slit.bottom, edge));
  const outer = [
    sharp(0, -edge),
    ...below,
    sharp(length, -edge),
    sharp(length, edge),
    ...above.toReversed(),
    sharp(0, edge),
  ];
  const inside = slits.filter(({ bottom, top }) => bottom > -edge && top < edge);
  return [roundedOutline(outer), ...inside.map(hole)];
}

/** What is cut out for one slit: a box, its ends round where they lie within the sheet [mm]. */
interface Slit {
  readonly left: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
  readonly round: Mm;
}

/** The slits of one row; one that runs into an edge ends there exactly. */
function slitsOf({ pitch, slitWidth, slit, bridge, depth }: SlitPanelSizes, row: number): readonly Slit[] {
  const [edge, each, middle] = [depth / 2, slit + bridge, (row + 0.5) * pitch];
  const round = Math.min(slitWidth, slit) / 2;
  const shift = row % 2 === 0 ? 0 : each / 2;
  const isSplinter = (land: Mm) => land < bridge / 2 - HAIR;
  const most = Math.ceil(edge / each) + 1;
  return Array.from({ length: 2 * most + 1 }, (_, i) => (i - most) * each + shift).flatMap((centre) => {
    const bottom = isSplinter(centre - slit / 2 + edge) ? -edge : centre - slit / 2;
    const top = isSplinter(edge - centre - slit / 2) ? edge : centre + slit / 2;
    if (top - bottom < round) return [];
    return [{ left: middle - slitWidth / 2, right: middle + slitWidth / 2, bottom, top, round }];
  });
}

const sharp = (x: Mm, y: Mm): Corner => ({ x, y, radius: 0 });

/** A slit that is open at an edge, along x. */
function notch({ left, right, round }: Slit, tip: Mm, edge: Mm): readonly Corner[] {
  return [
    sharp(left, edge),
    { x: left, y: tip, radius: round },
    { x: right, y: tip, radius: round },
    sharp(right, edge),
  ];
}

/** Begun in the middle of its right side, away from its ends. */
function hole({ left, right, bottom, top, round }: Slit): Path {
  return roundedOutline([
    { x: right, y: bottom, radius: round },
    { x: left, y: bottom, radius: round },
    { x: left, y: top, radius: round },
    { x: right, y: top, radius: round },
  ]);
}
