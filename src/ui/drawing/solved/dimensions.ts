import type { MemberShape } from '../../../core/beam/answer.ts';
import { familyOf } from '../../../core/flexures/known.ts';
import type { Dimension } from '../../../core/flexures/network.ts';
import { sideOf } from '../../../core/geometry/band.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import { along, distance, from, unit } from '../../../core/geometry/vector.ts';
import { dimensionFigure, namedFigure } from '../../text/solvedDrawingText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import type { Grip } from '../handles.ts';
import { labelBox, letteringWidth, type Label } from '../lettering.ts';
import { measured, NO_MARKS, together, type Marks } from '../marks.ts';
import { densified } from '../polygon.ts';
import { onSheet, through, type Sheet } from '../sheet.ts';
import { leftOnSheet, placeDistance } from './distances.ts';
import { placeLeader } from './leaders.ts';
import { isFree, keepLabel, keepLine, type Room } from '../room.ts';
import type { Scene } from './scene.ts';

export interface Dimensioned {
  readonly marks: Marks;
  readonly grips: readonly Grip[];
}

interface Drawing {
  readonly scene: Scene;
  readonly sheet: Sheet;
  readonly room: Room;
  readonly unit: LengthUnit;
  /** All that is drawn in any state, on the sheet [px]: y down. */
  readonly swept: Bounds;
}

type Of<K extends Dimension['kind']> = Extract<Dimension, { kind: K }>;

/** All dimensions of a network that find a place, in its order. */
export function placeDimensions(drawing: Drawing): Dimensioned {
  const { sideBySide: _, ...roles } = familyOf(drawing.scene.a.joint).roles;
  const main = new Set<string>(Object.values(roles));
  const placed = drawing.scene.solved.network.dimensions.flatMap((dimension): readonly Dimensioned[] => {
    const one = placeOne(drawing, dimension, main.has(dimension.parameter));
    return one ? [one] : [];
  });
  return { marks: together(...placed.map(({ marks }) => marks)), grips: placed.flatMap(({ grips }) => grips) };
}

function placeOne(drawing: Drawing, dimension: Dimension, isMain: boolean): Dimensioned | undefined {
  switch (dimension.kind) {
    case 'distance':
      return distanceOf(drawing, dimension, isMain);
    case 'thickness':
      return thicknessOf(drawing, dimension, isMain);
    case 'angle':
      return angleOf(drawing, dimension);
    case 'diameter':
    case 'radius':
      return roundOf(drawing, dimension, isMain);
  }
}

/** Half of what a handle needs round it [px]. */
function reachOf({ small }: Sheet, isMain: boolean): number {
  if (!isMain) return 0;
  return small ? 16 : 12;
}

function distanceOf({ scene, sheet, room, unit: lengths }: Drawing, dimension: Of<'distance'>, isMain: boolean) {
  const [a, b] = [onSheet(sheet, dimension.from), onSheet(sheet, dimension.to)];
  const drawn = distance(dimension.from, dimension.to);
  if (!(drawn > 0)) return undefined;
  const { kind } = familyOf(scene.a.joint).parameters[dimension.parameter] ?? {};
  const isHeld = isMain && kind === 'length';
  const side = leftOnSheet(a, b);
  const out = dimension.off < 0 ? { x: -side.x, y: -side.y } : side;
  const text = dimensionFigure(scene.a, dimension, drawn, lengths);
  const way = unit(from(a, b));
  const grows = (scene.a.sizes[dimension.parameter] ?? drawn) / drawn / sheet.pxPerMm;
  const held = (at: Point): readonly Grip[] =>
    isHeld ? [{ parameter: dimension.parameter, at, perPx: { x: way.x * grows, y: way.y * grows } }] : [];
  const reach = reachOf(sheet, isHeld);
  const line = placeDistance(room, a, b, out, text, reach);
  if (line) return { marks: line.marks, grips: held(line.end) };
  if (sheet.small) return undefined;
  // Where a line would stand too far off, a leader names what it measures instead.
  const tips = [0.35, 0.65, 0.2, 0.8].flatMap((share) =>
    [out, { x: -out.x, y: -out.y }].map((square) => ({ tip: along(a, from(a, b), share), out: square })),
  );
  const named = placeLeader(room, tips, namedFigure(scene.a, dimension.parameter, text), reach);
  return named && { marks: named.marks, grips: held(named.elbow) };
}

/** Both surfaces of a member at a share of its length, and the ways out of them. */
function tipsAt(
  shape: MemberShape,
  share: number,
  sheet: Sheet,
): readonly { readonly tip: Point; readonly out: Point }[] {
  const i = Math.round(share * (shape.x.length - 1));
  const middle = onSheet(sheet, sideOf(shape, i, 0));
  return [0.5, -0.5].map((side) => {
    const tip = onSheet(sheet, sideOf(shape, i, side));
    return { tip, out: unit(from(middle, tip)) };
  });
}

/** Places along a member from which its thickness may be pointed at, the proposed one first. */
const ELSEWHERE = [0, -0.12, 0.12, -0.25, 0.25];

function thicknessOf({ scene, sheet, room, unit: lengths }: Drawing, dimension: Of<'thickness'>, isMain: boolean) {
  const { shapes } = scene.rest;
  const own = shapes.find(({ member }) => member === dimension.member);
  if (!own) return undefined;
  const isSame = (shape: MemberShape) =>
    shape.thickness.length === own.thickness.length && shape.thickness.every((t, i) => t === own.thickness[i]);
  // Any member as thick may be pointed at where the one proposed has no clear paper beside it.
  const others = shapes.filter((shape) => shape !== own && isSame(shape));
  const shares = ELSEWHERE.map((off) => Math.min(0.95, Math.max(0.05, dimension.share + off)));
  const tips = [
    ...shares.flatMap((share) => tipsAt(own, share, sheet)),
    ...others.flatMap((shape) => tipsAt(shape, 0.5, sheet)),
  ];
  const isCounted = isMain && scene.a.joint.measuredThickness === undefined;
  const text = dimensionFigure(scene.a, dimension, scene.a.section.thickness, lengths);
  const placed = placeLeader(room, tips, text, reachOf(sheet, isCounted));
  if (!placed) return undefined;
  const { lineWidth, layerHeight } = scene.a.joint.profile;
  // The middle line stays where it is, so each face moves by half.
  const grows = 2 / sheet.pxPerMm / (scene.a.section.countOf === 'lines' ? lineWidth : layerHeight);
  const { out, elbow, marks } = placed;
  const grip = { parameter: dimension.parameter, at: elbow, perPx: { x: out.x * grows, y: out.y * grows } };
  return { marks, grips: isCounted ? [grip] : [] };
}

/** Radii at which the arc of an angle is tried, shares of the proposed one. */
const ARCS = [1, 0.75, 1.3, 0.55, 1.6, 2];

function angleOf({ scene, sheet, room, unit: lengths }: Drawing, dimension: Of<'angle'>): Dimensioned | undefined {
  const { centre, from: start, to, radius } = dimension;
  const text = dimensionFigure(scene.a, dimension, radius, lengths);
  const middle = (start + to) / 2;
  const at = (r: number, angle: number) =>
    onSheet(sheet, { x: centre.x + r * Math.cos(angle), y: centre.y + r * Math.sin(angle) });
  for (const r of ARCS.map((share) => share * radius)) {
    for (const beyond of [12, -14, 20]) {
      const tip = at(r + beyond / sheet.pxPerMm, middle);
      const away = Math.sign(beyond) * Math.cos(middle);
      const anchor: Label['anchor'] = away > 0.35 ? 'start' : away < -0.35 ? 'end' : 'middle';
      const label: Label = { text, x: tip.x, y: tip.y + 4, anchor, tone: 'pencil', size: 13 };
      if (!isFree(room, labelBox(label), 2)) continue;
      keepLabel(room, label);
      const arc = Array.from({ length: 25 }, (_, i) => at(r, start + ((to - start) * i) / 24));
      keepLine(room, arc);
      const heads = [arc.slice(0, 4), arc.toReversed().slice(0, 4)].flatMap(([tipAt, , , behind]) =>
        tipAt && behind
          ? [{ ...tipAt, turn: (Math.atan2(tipAt.y - behind.y, tipAt.x - behind.x) * 180) / Math.PI }]
          : [],
      );
      const rays = [start, to].map((angle) => through([onSheet(sheet, centre), at(r + 5 / sheet.pxPerMm, angle)]));
      return { marks: { ...NO_MARKS, lines: through(arc) + rays.join(''), arrows: heads, labels: [label] }, grips: [] };
    }
  }
  return undefined;
}

/** A circle at least so wide against all that is drawn is dimensioned beyond it. */
const OUTER = 0.55;

/** A diameter across the circle where its figure fits in, beyond the drawing where the circle is most of it. */
function roundOf(drawing: Drawing, dimension: Of<'diameter' | 'radius'>, isMain: boolean): Dimensioned | undefined {
  const { scene, sheet, room, unit: lengths, swept } = drawing;
  const { centre, radius, angle, parameter } = dimension;
  const text = dimensionFigure(scene.a, dimension, radius, lengths);
  const at = onSheet(sheet, centre);
  const r = radius * sheet.pxPerMm;
  const grow = (dimension.kind === 'diameter' ? 2 : 1) / sheet.pxPerMm;
  const grips = (end: Point, out: Point): readonly Grip[] =>
    isMain ? [{ parameter, at: end, perPx: { x: out.x * grow, y: out.y * grow } }] : [];
  if (dimension.kind === 'diameter' && 2 * r > OUTER * (swept.right - swept.left)) {
    const [a, b] = [
      { x: at.x - r, y: swept.bottom },
      { x: at.x + r, y: swept.bottom },
    ];
    const placed = placeDistance(room, a, b, { x: 0, y: 1 }, text, reachOf(sheet, isMain));
    const down = [a, b]
      .map(({ x, y }) =>
        through([
          { x, y: at.y + 6 },
          { x, y: y + 4 },
        ]),
      )
      .join('');
    if (placed) {
      const marks = { ...placed.marks, lines: placed.marks.lines + down };
      return { marks, grips: grips(placed.end, { x: 1, y: 0 }) };
    }
  }
  const out = { x: Math.cos(angle), y: -Math.sin(angle) };
  if (dimension.kind === 'diameter' && 2 * r > letteringWidth(text, 13) + 40) {
    const ends = [-1, 1].map((sign) => ({ x: at.x + sign * r * out.x, y: at.y + sign * r * out.y }));
    const [a = at, b = at] = ends;
    const label = besideLine(at, out, text);
    keepLabel(room, label);
    room.words.ink(densified(ends, 4));
    return { marks: { ...measured(a, b, false), labels: [label] }, grips: grips(b, out) };
  }
  const tip = { x: at.x + r * out.x, y: at.y + r * out.y };
  const placed = placeLeader(room, [{ tip, out }], text, reachOf(sheet, isMain));
  return placed && { marks: placed.marks, grips: grips(placed.elbow, out) };
}

/** A figure beside the middle of a line that runs a way, under it: as near as it can stand without being hit. */
function besideLine(middle: Point, way: Point, text: string): Label {
  const side = way.x < 0 ? { x: way.y, y: -way.x } : { x: -way.y, y: way.x };
  const [wide, high] = [letteringWidth(text, 13), 10];
  const off = (Math.abs(side.x) * wide + Math.abs(side.y) * high) / 2 + 4;
  const at = { x: middle.x + side.x * off, y: middle.y + side.y * off };
  return { text, x: at.x, y: at.y + high / 2, anchor: 'middle', tone: 'pencil', size: 13 };
}
