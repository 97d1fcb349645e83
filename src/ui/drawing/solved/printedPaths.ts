import { sideOf } from '../../../core/geometry/band.ts';
import type { Mm } from '../../../core/units.ts';
import { runsPath } from '../paths.ts';
import { FINEST, onSheet, through, type Sheet } from '../sheet.ts';
import { carriedOn, runsOf } from './runs.ts';
import type { Scene } from './scene.ts';
import type { FineShape } from './strainField.ts';

/** A member as printed: its lines where they can be told apart, the whole of it where they cannot. */
export interface PrintedMember {
  readonly id: string;
  readonly plane: number;
  /** Middles of the lines, to be drawn one line wide. */
  readonly beads: string;
  /** The whole member, closed: filled where its lines are too fine, hatched where it is thicker than they fill. */
  readonly whole: string;
  readonly fill: 'bead' | 'hatch' | 'none';
  readonly edges: string;
  readonly middle: string;
}

/** Pieces of a middle line are about so long on the sheet [px]. */
export const PIECE = 7;
/** A thickness may be so far off a whole number of lines before it is drawn without them, as a share of a line. */
const WHOLE = 0.08;
/** More lines than this in a member are the filling of a body. */
const MOST_LINES = 12;

export function printedMembers(scene: Scene, sheet: Sheet): readonly PrintedMember[] {
  const { lineWidth, lying } = scene.a.joint.profile;
  return runsOf(scene, PIECE / sheet.pxPerMm).map(({ id, plane, shape, roots }): PrintedMember => {
    const offs = lying === 'flat' && lineWidth * sheet.pxPerMm >= FINEST ? linesOf(shape, lineWidth) : undefined;
    // The lines round a thick member run on into its pads, which have none across its end.
    const laid = offs?.isFilled === false ? carriedOn(shape, roots, 1.5 * lineWidth) : shape;
    return {
      id,
      plane,
      beads: offs?.lines.map((off) => offset(laid, off, sheet)).join('') ?? '',
      whole: runsPath(sheet, [[...side(laid, 0.5), ...side(laid, -0.5).toReversed()]], true),
      fill: offs === undefined ? 'bead' : offs.isFilled ? 'none' : 'hatch',
      edges: runsPath(sheet, [side(shape, 0.5), side(shape, -0.5)]),
      middle: runsPath(sheet, [side(shape, 0)]),
    };
  });
}

const side = (shape: FineShape, share: number) => shape.x.map((_, i) => sideOf(shape, i, share));

/** A line at a distance from the middle, or from a surface where the thickness changes; left is positive. */
type Off = { readonly fromMiddle: Mm } | { readonly fromSide: 0.5 | -0.5; readonly by: Mm };

/** Where lines are laid in a member: evenly across an even one, once round the edges of one whose thickness changes. */
function linesOf(
  shape: FineShape,
  width: Mm,
): { readonly lines: readonly Off[]; readonly isFilled: boolean } | undefined {
  const [least, most] = [Math.min(...shape.thickness), Math.max(...shape.thickness)];
  const count = Math.round(most / width);
  if (most - least < width / 20 && count >= 1 && count <= MOST_LINES && Math.abs(most / width - count) < WHOLE) {
    const lines = Array.from({ length: count }, (_, k): Off => ({
      fromMiddle: (k - (count - 1) / 2) * (most / count),
    }));
    return { lines, isFilled: true };
  }
  if (least < 1.9 * width) return undefined;
  return { lines: ([0.5, -0.5] as const).map((fromSide) => ({ fromSide, by: width / 2 })), isFilled: false };
}

function offset(shape: FineShape, off: Off, sheet: Sheet): string {
  const points = shape.x.map((_, i) => {
    const thickness = shape.thickness[i]!;
    const share =
      'fromMiddle' in off ? off.fromMiddle / thickness : off.fromSide - (Math.sign(off.fromSide) * off.by) / thickness;
    return onSheet(sheet, sideOf(shape, i, share));
  });
  return through(points);
}
