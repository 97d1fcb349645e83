/** Carries the thin sections of a part that was checked over to where a toolpath lays them. */
import { isInside } from '../../geometry/loop.ts';
import type { Box3, Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, times3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { Stands } from '../buildDirection.ts';
import type { Flexure, FlexureRoot, PartFindings, PartSection } from '../flexure.ts';
import { turnPoint } from '../turnPart.ts';
import type { LayerPlan } from './checkedToolpath.ts';
import type { Place } from './place.ts';
import { placeOf } from './placeOf.ts';

/** Sizes of a part and of what is laid of it differ by up to a line at each side, and by a first layer that is squeezed [mm]. */
const SAME_SIZE: Mm = 1.5;
/** A thin section is there where there is material in its middle and none so far beside it, in its thicknesses. */
const BESIDE = 1;
/** Of the thin sections so many must be where the part has them, or it is another part. */
const MOST = 0.5;

type QuarterTurns = 0 | 1 | 2 | 3;

interface Carry {
  readonly scale: number;
  readonly up: Stands['up'];
  readonly turns: QuarterTurns;
  /** Middle of the part as it stands, and where it comes to; both at the plate. */
  readonly middle: Point3;
  readonly to: Point3;
}

function quarter({ x, y, z }: Point3, turns: QuarterTurns): Point3 {
  switch (turns) {
    case 0:
      return { x, y, z };
    case 1:
      return { x: -y, y: x, z };
    case 2:
      return { x: -x, y: -y, z };
    case 3:
      return { x: y, y: -x, z };
  }
}

const direct = (direction: Point3, { up, turns }: Carry) => quarter(turnPoint(direction, up), turns);

function place(point: Point3, carry: Carry): Point3 {
  const { scale, up, turns, middle, to } = carry;
  const stood = times3(turnPoint(point, up), scale);
  return along3(quarter(along3(stood, middle, -1), turns), to, 1);
}

function carrySection(section: PartSection, carry: Carry): PartSection {
  return {
    ...section,
    origin: place(section.origin, carry),
    right: direct(section.right, carry),
    up: direct(section.up, carry),
    normal: direct(section.normal, carry),
    outlines: [],
  };
}

const scaledRoot = ({ fillet, joins, shoulder }: FlexureRoot, scale: number): FlexureRoot => ({
  fillet: scale * fillet,
  joins,
  shoulder: scale * shoulder,
});

function carryFlexure(flexure: Flexure, carry: Carry): Flexure {
  const { scale } = carry;
  const { centreLine, thickness } = flexure;
  const line = centreLine.points.map(({ x, y }) => ({ x: scale * x, y: scale * y }));
  return {
    ...flexure,
    centre: place(flexure.centre, carry),
    along: direct(flexure.along, carry),
    across: direct(flexure.across, carry),
    axis: direct(flexure.axis, carry),
    thickness: { least: scale * thickness.least, mean: scale * thickness.mean },
    length: scale * flexure.length,
    bendingLength: scale * flexure.bendingLength,
    depth: scale * flexure.depth,
    roots: [scaledRoot(flexure.roots[0], scale), scaledRoot(flexure.roots[1], scale)],
    centreLine: { ...centreLine, points: line, length: scale * centreLine.length },
  };
}

/** Box of a part as it stands on the plate, at its scale. */
function stoodBox({ min, max }: Box3, { scale, up }: Stands): Box3 {
  const [a, b] = [turnPoint(min, up), turnPoint(max, up)];
  const pick = (of: (p: number, q: number) => number): Point3 => ({
    x: scale * of(a.x, b.x),
    y: scale * of(a.y, b.y),
    z: scale * of(a.z, b.z),
  });
  return { min: pick(Math.min), max: pick(Math.max) };
}

/** Box of what stands in layers. */
function boxOfPlans(plans: readonly LayerPlan[]): Box3 | undefined {
  const [low, high] = [
    { x: Infinity, y: Infinity },
    { x: -Infinity, y: -Infinity },
  ];
  for (const { outlines } of plans) {
    for (const { x, y } of outlines.flat()) {
      low.x = Math.min(low.x, x);
      low.y = Math.min(low.y, y);
      high.x = Math.max(high.x, x);
      high.y = Math.max(high.y, y);
    }
  }
  const [first, last] = [plans[0], plans.at(-1)];
  if (!first || !last || !(high.x > low.x)) return undefined;
  return { min: { ...low, z: first.bottom }, max: { ...high, z: last.z } };
}

const sizeOf = ({ min, max }: Box3) => ({ x: max.x - min.x, y: max.y - min.y, z: max.z - min.z });

function fits(part: Box3, laid: Box3, turns: QuarterTurns): boolean {
  const [a, b] = [sizeOf(part), sizeOf(laid)];
  const [x, y] = turns % 2 === 0 ? [a.x, a.y] : [a.y, a.x];
  return Math.max(Math.abs(x - b.x), Math.abs(y - b.y), Math.abs(a.z - b.z)) < SAME_SIZE;
}

/** Whether a thin section stands in the layers: material in its middle, none beside it in its thin way. */
function stands(flexure: Flexure, plans: readonly LayerPlan[]): boolean {
  const { centre, across, thickness } = flexure;
  const isLaid = ({ x, y, z }: Point3) => {
    const plan = plans.find(({ bottom, z: top }) => bottom <= z && z <= top);
    return plan !== undefined && isInside(plan.outlines, { x, y });
  };
  const off = (0.5 + BESIDE) * thickness.least;
  return isLaid(centre) && !isLaid(along3(centre, across, off)) && !isLaid(along3(centre, across, -off));
}

/** What of a part is carried over. */
export interface PartToCarry {
  readonly findings: Pick<PartFindings, 'flexures' | 'sections'>;
  /** Of the part as in its file [mm]. */
  readonly box: Box3;
  readonly stands: Stands;
}

/**
 * The places of a part's thin sections in a toolpath of it.
 *
 * The part may lie anywhere on the plate and be turned by quarter turns. A skirt or brim of the first layers is looked past. Among
 * turns that fit, the one in which most thin sections are really there is taken.
 *
 * @param part - what was found in it [mm], and how it stands and is scaled [-]
 * @param plans - what stands in the layers [mm]
 * @returns places numbered as in the part [mm]; empty where the toolpath is not of that part as it stands
 */
export function carriedPlaces(
  { findings, box, stands: how }: PartToCarry,
  plans: readonly LayerPlan[],
): readonly Place[] {
  const part = stoodBox(box, how);
  const middle = { x: (part.min.x + part.max.x) / 2, y: (part.min.y + part.max.y) / 2, z: part.min.z };
  let best: { readonly count: number; readonly carry: Carry } | undefined;
  for (const from of [0, 1, 2]) {
    const laid = boxOfPlans(plans.slice(from));
    if (!laid) continue;
    const whole = { min: { ...laid.min, z: plans[0]!.bottom }, max: laid.max };
    const to = { x: (laid.min.x + laid.max.x) / 2, y: (laid.min.y + laid.max.y) / 2, z: whole.min.z };
    for (const turns of [0, 1, 2, 3] as const) {
      if (!fits(part, whole, turns)) continue;
      const carry: Carry = { ...how, turns, middle, to };
      const count = findings.flexures.filter((flexure) => stands(carryFlexure(flexure, carry), plans)).length;
      if (count > (best?.count ?? 0)) best = { count, carry };
    }
  }
  if (!best || best.count < MOST * findings.flexures.length) return [];
  const { carry } = best;
  return findings.flexures.map((flexure) =>
    placeOf(carryFlexure(flexure, carry), carrySection(findings.sections[flexure.section]!, carry), 'carried'),
  );
}
