/** What all pieces are made to: thicknesses as laid, heights in whole layers, widths of grips and marks. */
import { plain } from '../problems.ts';
import { exactLayers, thicknessOfLayers } from '../print/wholeLayers.ts';
import { thicknessOfLines } from '../print/wholeLines.ts';
import type { Lying } from '../print/profile.ts';
import type { Mm } from '../units.ts';
import type { PiecesAsked, Strip } from './piece.ts';

/** Between bodies, and between thin parts, so that a brim and a finger find room [mm]. Ours. */
export const CLEAR: Mm = 8;
/** A pad is at least so many times as thick as what bends between pads. Ours: along the same length it then bends 27 times less. */
const PAD_SHARE = 3;

export interface Making {
  readonly asked: PiecesAsked;
  readonly lying: Lying;
  readonly count: number;
  readonly countOf: Strip['countOf'];
  /** Of strips of `count` lines or layers. */
  readonly thickness: Mm;
  readonly depth: Mm;
  /** Of pads of strips that lie as a crease, and of feet: in whole layers. */
  readonly padHeight: Mm;
  /** Of raised bars over what they stand on: in whole layers. */
  readonly rise: Mm;
  /** Width of marks and of what is left between them. */
  readonly mark: { readonly width: Mm; readonly between: Mm };
}

/** The least height of whole layers that is not under a length. */
function wholeHeight(least: Mm, { profile }: PiecesAsked): Mm {
  return thicknessOfLayers(Math.max(1, Math.ceil(exactLayers(least, profile) - 1e-9)), profile);
}

/** As thick as so many lines or layers are laid in a piece that lies so. */
export function thicknessIn(asked: PiecesAsked, count: number): Mm {
  const { profile } = asked;
  return profile.lying === 'crease' ? thicknessOfLayers(count, profile) : thicknessOfLines(count, profile);
}

/**
 * What pieces are made to.
 *
 * @param asked - checked [mm, rad]
 * @param lying - as the piece is to lie, where not as asked [-]
 */
export function makingOf(asked: PiecesAsked, lying: Lying = asked.profile.lying): Making {
  const to = { ...asked, profile: { ...asked.profile, lying } };
  const { profile, count, depth } = to;
  const thickness = thicknessIn(to, count);
  const layer = profile.layerHeight;
  return {
    asked: to,
    lying,
    count,
    countOf: lying === 'crease' ? 'layers' : 'lines',
    thickness,
    depth,
    padHeight: wholeHeight(Math.max(3, lying === 'crease' ? PAD_SHARE * thickness : 0), to),
    // At least 0.8 mm, which every nozzle makes visible.
    rise: layer * Math.ceil(0.8 / layer - 1e-9),
    // Two lines stand between notches, or they would be laid as one wall with whatever is beside them.
    mark: { width: Math.max(1, 1.2 * profile.lineWidth), between: Math.max(1, 2.1 * profile.lineWidth) },
  };
}

/** How wide in plan a strip is that lies, and how high. */
export function lyingSizes({ lying, thickness, depth, padHeight }: Making): {
  readonly wide: Mm;
  readonly high: Mm;
  readonly padHigh: Mm;
} {
  return lying === 'crease'
    ? { wide: depth, high: thickness, padHigh: padHeight }
    : { wide: thickness, high: depth, padHigh: depth };
}

/** Width across of what is held between two fingers [mm]. */
export function gripWidth({ lying, thickness, depth }: Making): Mm {
  return Math.max(8, lying === 'crease' ? depth : PAD_SHARE * thickness);
}

/** A strain as problems print it. */
export const percent = (strain: number): string => `${plain(100 * strain)} %`;
