import type { Box3, Point3, TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import type { Point } from '../../geometry/outline.ts';
import { radians, type Mm } from '../../units.ts';
import type { PlateUp } from '../judged.ts';
import { turnPoint } from '../turnPart.ts';

/**
 * The dimetric axes of ISO 5456-3, from memory: one falls to the right at 7°, drawn in full; one rises to the right at 42°,
 * drawn at half; up is up, in full. The eye is in front, above and to the right.
 */
const ACROSS = radians(7);
const AWAY = radians(42);
const HALVED = 0.5;

/** Recommended scales are 1, 2 and 5 times a power of ten: ISO 5455, from memory. */
const STEPS = [1, 2, 5] as const;

/** A linear form over the coordinates of the file: coefficients of x, y and z, and what is added. */
export type Form = readonly [x: number, y: number, z: number, plus: number];

/** How a part lies in its picture. */
export interface Placing {
  /** Size of the picture [mm on paper]. */
  readonly width: Mm;
  readonly height: Mm;
  /** Length on paper over length of the part, along the axes drawn in full. */
  readonly scale: number;
  /** From the left edge of the picture [mm on paper]. */
  readonly right: Form;
  /** From the upper edge, downwards [mm on paper]. */
  readonly down: Form;
  /** How much nearer the eye, measured along the line of sight [mm of the part]. */
  readonly nearer: Form;
}

/** How large the picture may be [mm on paper]. */
export interface Room {
  readonly width: Mm;
  readonly height: Mm;
}

/**
 * Where a point of the part is in its picture.
 *
 * @param placing - of the picture [mm]
 * @param point - in the coordinates of the file [mm]
 * @returns x to the right and y downwards from its upper left corner [mm on paper]
 */
export function toPicture(placing: Placing, point: Point3): Point {
  return { x: valueOf(placing.right, point), y: valueOf(placing.down, point) };
}

/**
 * What a linear form is at a point.
 *
 * @param form - coefficients [any unit]
 * @param point - where [mm]
 * @returns its value [any unit]
 */
export function valueOf(form: Form, { x, y, z }: Point3): number {
  return form[0] * x + form[1] * y + form[2] * z + form[3];
}

/**
 * Lays a part on paper: turned with a direction of the file upwards, its longer side across, at the largest recommended
 * scale at which it fits.
 *
 * @param mesh - the part [mm]
 * @param box - its box [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @param room - how large the picture may be [mm on paper], > 0
 * @returns the placing, with the picture as small as the part leaves it
 */
export function placePart(mesh: TriangleMesh, box: Box3, up: PlateUp, room: Room): Placing {
  const forms = axonometry(box, up);
  const [right, down] = [rangeOf(mesh, forms.right), rangeOf(mesh, forms.down)];
  const scale = fittingScale(right.most - right.least, down.most - down.least, room);
  return {
    width: (right.most - right.least) * scale,
    height: (down.most - down.least) * scale,
    scale,
    right: onPaper(forms.right, scale, right.least),
    down: onPaper(forms.down, scale, down.least),
    nearer: forms.nearer,
  };
}

/**
 * A linear form over the coordinates of the file, told by the axes of the picture: across to the right, away from the eye,
 * and up.
 *
 * @param box - of the part [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @param across - how much it gains per mm across [per mm]
 * @param away - how much per mm away [per mm]
 * @param upward - how much per mm up [per mm]
 * @returns the form [-], 0 at the origin
 */
export function axonometricForm(box: Box3, up: PlateUp, across: number, away: number, upward: number): Form {
  const [a, b] = [turnPoint(box.min, up), turnPoint(box.max, up)];
  // Turned by a quarter about the upright where the part is deeper than it is wide: never mirrored.
  const isTurned = Math.abs(a.y - b.y) > Math.abs(a.x - b.x);
  const weigh = (direction: Point3): number => {
    const { x, y, z } = turnPoint(direction, up);
    return across * (isTurned ? y : x) + away * (isTurned ? -x : y) + upward * z;
  };
  return [weigh({ x: 1, y: 0, z: 0 }), weigh({ x: 0, y: 1, z: 0 }), weigh({ x: 0, y: 0, z: 1 }), 0];
}

/** Forms for a scale of 1, about the origin. */
function axonometry(box: Box3, up: PlateUp): { readonly right: Form; readonly down: Form; readonly nearer: Form } {
  const [sin7, cos7] = [Math.sin(ACROSS), Math.cos(ACROSS)];
  const [sin42, cos42] = [HALVED * Math.sin(AWAY), HALVED * Math.cos(AWAY)];
  // The line of sight is what the picture does not show: both other forms vanish along it.
  const sight = { across: cos42 / cos7, away: -1, up: (cos42 * sin7) / cos7 + sin42 };
  const length = Math.hypot(sight.across, sight.away, sight.up);
  return {
    right: axonometricForm(box, up, cos7, cos42, 0),
    down: axonometricForm(box, up, sin7, -sin42, -1),
    nearer: axonometricForm(box, up, sight.across / length, sight.away / length, sight.up / length),
  };
}

function rangeOf({ points, corners }: TriangleMesh, [x, y, z]: Form) {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < corners.length; i += 1) {
    const at = 3 * corners[i]!;
    const value = x * points[at]! + y * points[at + 1]! + z * points[at + 2]!;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return corners.length === 0 ? { least: 0, most: 0 } : { least, most };
}

/** Lengths come from scale 1 and not from the box, so that a lean part is drawn as large as it can be. */
function fittingScale(width: Mm, height: Mm, room: Room): number {
  const largest = Math.min(room.width / width, room.height / height);
  if (!(largest > 0 && largest < Infinity)) return 1;
  const power = Math.floor(Math.log10(largest));
  // 5 · 10⁻¹ is not 0.5 in every run of the rounding; a part in 10⁹ is below any line.
  const scales = [power - 1, power, power + 1].flatMap((k) => STEPS.map((step) => Number(`${step}e${k}`)));
  return Math.max(...scales.filter((scale) => scale <= largest * (1 + 1e-9)));
}

function onPaper([x, y, z]: Form, scale: number, least: number): Form {
  return [x * scale, y * scale, z * scale, -least * scale];
}
