/** From a run in a section to a flexure in space: how deep it is, whether it is free at its sides, of what kind. */
import type { Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, cross3, dot3, times3 } from '../../geometry/mesh/vector3.ts';
import type { Point } from '../../geometry/outline.ts';
import { distance } from '../../geometry/vector.ts';
import { asRad, type Mm } from '../../units.ts';
import type { CentreLine, FlexureKind } from '../flexure.ts';
import { stationOn } from './lines.ts';
import type { MeasuredRun } from './measureRun.ts';
import { inSpace, type Section } from './sectionAt.ts';
import type { Solid } from './solid.ts';

/** Shares of the length at which the sides are looked for. */
const LOOKED_AT = [0.5, 0.35, 0.65];
/** Shares of the depth at which the thickness is taken again. */
const LEVELS = [0.06, 0.25, 0.75, 0.94];
/** A side at which it is so much thicker holds it. */
const HELD = 1.6;
/** A centre line that strays from its chord by less than this share of its thickness is straight. */
const STRAIGHT = 0.25;
/** … and by less than this share of its length. */
const STRAIGHT_LENGTH = 0.01;
/** Shorter than so many times its thickness it is a neck. */
const NECK = 3.5;
/** … or where fillets make up so much of its length. */
const ROUND = 0.8;
/** Thin in the build direction to within this: 30°. */
const CREASE = Math.cos(Math.PI / 6);
/** What winds by more is a spiral run, what turns in all by less from end to end an arch. */
const WINDS = (120 * Math.PI) / 180;
const ENDS_ALIKE = (35 * Math.PI) / 180;
/** What turns there and back by more in all is folded, no arch. */
const FOLDED = (200 * Math.PI) / 180;
const TURN_STATIONS = 24;

export interface SpaceRun {
  readonly centre: Point3;
  readonly along: Point3;
  readonly across: Point3;
  readonly axis: Point3;
  readonly depth: Mm;
  readonly least: Mm;
  readonly isHeld: boolean;
  readonly centreLine: CentreLine;
}

/** What lies in front of and behind a station along the axis, with the least thickness on the way. */
function sidesAt(solid: Solid, section: Section, run: MeasuredRun, share: number) {
  const { plane } = section;
  const { at, direction } = stationOn(run.centreLine, share);
  const point = inSpace(plane, at);
  const across = direction3(plane, { x: -direction.y, y: direction.x });
  const both = solid.through(point, plane.normal);
  if (!both) return undefined;
  const depth = both.ahead.at + both.behind.at;
  const levels = LEVELS.map((level) =>
    solid.thickness(along3(point, plane.normal, level * depth - both.behind.at), across),
  ).filter((thickness) => thickness !== undefined);
  return { depth, shift: (both.ahead.at - both.behind.at) / 2, levels };
}

/** A direction of the section in space. */
export function direction3({ right, up }: Section['plane'], { x, y }: Point): Point3 {
  return along3(times3(right, x), up, y);
}

/** By how much a line turns: from end to end, and in all, there and back. */
function turnsOf(line: readonly Point[]): { readonly net: number; readonly all: number } {
  const angles = Array.from({ length: TURN_STATIONS }, (_, i) => {
    const a = stationOn(line, i / TURN_STATIONS).at;
    const b = stationOn(line, (i + 1) / TURN_STATIONS).at;
    return Math.atan2(b.y - a.y, b.x - a.x);
  });
  let net = 0;
  let all = 0;
  for (let i = 1; i < angles.length; i += 1) {
    const step = angles[i]! - angles[i - 1]!;
    const turn = Math.atan2(Math.sin(step), Math.cos(step));
    net += turn;
    all += Math.abs(turn);
  }
  return { net: Math.abs(net), all };
}

function centreLineOf({ centreLine: points, length }: MeasuredRun): CentreLine {
  const a = points[0]!;
  const b = points.at(-1)!;
  const chord = distance(a, b);
  const rise = points.reduce((most, p) => {
    const off = chord > 0 ? Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / chord : distance(a, p);
    return Math.max(most, off);
  }, 0);
  return { points, length, chord, rise, turn: asRad(turnsOf(points).net) };
}

/** How far a wall strays from the chord of a run, with its sign, where it strays most. */
function strays(wall: readonly Point[], { points, chord }: CentreLine): Mm {
  const a = points[0]!;
  const b = points.at(-1)!;
  const along2 = { x: (b.x - a.x) / chord, y: (b.y - a.y) / chord };
  const over = wall
    .map((p) => ({ x: p.x - a.x, y: p.y - a.y }))
    .map(({ x, y }) => ({ at: x * along2.x + y * along2.y, off: y * along2.x - x * along2.y }))
    .filter(({ at }) => at > -chord && at < 2 * chord);
  const inner = over.filter(({ at }) => at >= 0 && at <= chord).map(({ off }) => off);
  const [first, last] = [over[0]?.off ?? 0, over.at(-1)?.off ?? 0];
  const level = (first + last) / 2;
  return inner.reduce((most, off) => (Math.abs(off - level) > Math.abs(most) ? off - level : most), 0);
}

/** Whether a run is curved as printed. A groove from one side bends the middle, but only one of the walls. */
export function isCurved(
  { walls }: MeasuredRun,
  { centreLine, least }: Pick<SpaceRun, 'centreLine' | 'least'>,
): boolean {
  const { rise, length, chord } = centreLine;
  if (rise <= STRAIGHT * least || rise <= STRAIGHT_LENGTH * length) return false;
  if (rise > least || chord < rise) return true;
  const [l, r] = walls.map((wall) => strays(wall, centreLine));
  return l! * r! > 0 && Math.min(Math.abs(l!), Math.abs(r!)) > STRAIGHT * least;
}

/** Of what kind it is, by its shape and by the direction in which the file is built up. */
export function kindOf(run: MeasuredRun, { centreLine, across, least }: SpaceRun, build: Point3): FlexureKind {
  const curved = isCurved(run, { centreLine, least });
  if (curved && centreLine.turn > WINDS) return 'spiral run';
  if (curved && centreLine.turn < ENDS_ALIKE && turnsOf(centreLine.points).all < FOLDED) return 'arch';
  if (Math.abs(dot3(across, build)) > CREASE) return 'crease';
  const fillets = run.ends.reduce((sum, { fillet }) => sum + fillet, 0);
  return run.length < NECK * least || fillets > ROUND * run.length ? 'neck' : 'leaf';
}

/** A run in space; undefined where its middle lies outside the material, which a damaged surface can make. */
export function spaceRun(solid: Solid, section: Section, run: MeasuredRun): SpaceRun | undefined {
  const sides = LOOKED_AT.map((share) => sidesAt(solid, section, run, share));
  // A ray through the very middle may slip through the seam of a damaged surface: the next one tells as well.
  const told = sides.find((side) => side !== undefined);
  if (!told) return undefined;
  const { plane } = section;
  const middle = inSpace(plane, stationOn(run.centreLine, 0.5).at);
  const centreLine = centreLineOf(run);
  const a = run.centreLine[0]!;
  const b = run.centreLine.at(-1)!;
  const chord = centreLine.chord > 0 ? centreLine.chord : 1;
  const along = direction3(plane, { x: (b.x - a.x) / chord, y: (b.y - a.y) / chord });
  const levels = sides.flatMap((side) => side?.levels ?? []);
  const held = levels.filter((thickness) => thickness > HELD * run.mean);
  return {
    centre: along3(middle, plane.normal, told.shift),
    along,
    across: cross3(plane.normal, along),
    axis: plane.normal,
    depth: told.depth,
    least: Math.min(run.least, ...levels),
    isHeld: levels.length === 0 || 4 * held.length > levels.length,
    centreLine,
  };
}
