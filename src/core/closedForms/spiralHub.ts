/** A hub on spiral arms in a fixed ring, at small movements, by unit loads. */
import type { Mm } from '../units.ts';

/** Arms of one hub, evenly spaced round it. */
export interface HubArms {
  /** Radii of the middle line where arms begin and end [mm]. */
  readonly inner: Mm;
  readonly outer: Mm;
  readonly turns: number;
  readonly arms: number;
  readonly thickness: Mm;
}

/** How a hub is moved: turned about its fixed centre, turned by a pure moment, or pushed along x by a pure force. */
export type HubDrive = 'centred' | 'turned' | 'shifted';

/** What a unit of movement takes: 1 rad, or 1 mm. */
export interface HubAnswer {
  /** Moment or force over E·I of one arm [1/mm] or [1/mm³]. */
  readonly effort: number;
  /** Largest surface strain of any arm [1/rad] or [1/mm]. */
  readonly strain: number;
  /** Where that is: which arm, from 0, and how far round from the hub [rad]. */
  readonly hardest: { readonly arm: number; readonly angle: number };
  /** Of one arm, times E·I, about the centre of the hub: C_xx, C_xy, C_yy [mm³], C_xm, C_ym [mm²], C_mm [mm]. */
  readonly flexibility: Readonly<Record<'xx' | 'xy' | 'yy' | 'xm' | 'ym' | 'mm', number>>;
}

type Row = readonly [number, number, number];
type Matrix = readonly [Row, Row, Row];

/** A place on an arm: what moment and what normal force a unit force or moment at the centre makes there. */
interface Place {
  readonly moment: Row;
  readonly normal: Row;
  /** Length of arm for each radian of its angle. */
  readonly speed: Mm;
  /** From the hub [rad]. */
  readonly angle: number;
}

const PLACES_PER_TURN = 64;

/**
 * How hard a hub on spiral arms is to move, and how its arms strain.
 *
 *     C = ∫ (c·cᵀ + (t²/12)·n·nᵀ) ds,   c = (y, −x, 1),   n = (tangent, 0)
 *     K/(E·I) = Σ over arms of R·C⁻¹·Rᵀ
 *
 * Bending and stretch of each arm, at small movements; shear is left out. Holds for short arms too, where even bending
 * of a long spiral does not.
 *
 * @param hub - arms [-], radii and thickness [mm]
 * @param drive - how it is moved [-]
 * @returns effort over E·I [1/mm] or [1/mm³] and strain [1/rad] or [1/mm], for a unit of movement
 *
 * Source: unit-load-method.
 * @example hubMoved({ inner: 3, outer: 15, turns: 2, arms: 1, thickness: 0.84 }, 'turned').effort * 113.860127 // → 1.000
 */
export function hubMoved(hub: HubArms, drive: HubDrive): HubAnswer {
  const places = placesAlong(hub);
  const compliance = complianceOf(places, hub.thickness);
  const one = inverse(compliance);
  const turns = Array.from({ length: hub.arms }, (_, k) => (2 * Math.PI * k) / hub.arms);
  const whole = turns.map((angle) => turned(one, angle)).reduce(add);
  const moved = movement(whole, drive);
  const force = times(whole, moved);
  // An arm bends most where it ends as often as between, and there the middle of a step is not near enough.
  const strained = [placeAt(hub, 0), ...places, placeAt(hub, 1)];
  const most = turns
    .map((angle, arm) => ({ arm, ...largestStrain(strained, times(one, back(moved, angle)), hub.thickness) }))
    .reduce((largest, at) => (at.strain > largest.strain ? at : largest));
  const [[xx, xy, xm], [, yy, ym], [, , mm]] = compliance;
  return {
    effort: drive === 'shifted' ? force[0] : force[2],
    strain: most.strain,
    hardest: { arm: most.arm, angle: most.angle },
    flexibility: { xx, xy, yy, xm, ym, mm },
  };
}

/** An arm from the hub outwards, in equal steps of its angle, each told by its middle. */
function placesAlong(hub: HubArms): readonly (Place & { readonly length: Mm })[] {
  const steps = Math.ceil(PLACES_PER_TURN * Math.max(1, hub.turns));
  return Array.from({ length: steps }, (_, i) => {
    const place = placeAt(hub, (i + 0.5) / steps);
    return { ...place, length: (place.speed * 2 * Math.PI * hub.turns) / steps };
  });
}

/** The place at a share of the angle from hub to ring. */
function placeAt({ inner, outer, turns }: HubArms, share: number): Place {
  const sweep = 2 * Math.PI * turns;
  const a = (outer - inner) / sweep;
  const r = inner + a * sweep * share;
  const [c, s] = [Math.cos(sweep * share), Math.sin(sweep * share)];
  const speed = Math.hypot(r, a);
  return {
    moment: [r * s, -r * c, 1],
    normal: [(a * c - r * s) / speed, (a * s + r * c) / speed, 0],
    speed,
    angle: sweep * share,
  };
}

function complianceOf(places: readonly (Place & { readonly length: Mm })[], thickness: Mm): Matrix {
  const stretch = thickness ** 2 / 12;
  return places
    .map(({ moment, normal, length }) => add(outer(moment, length), outer(normal, stretch * length)))
    .reduce(add);
}

/** The movement of the hub for a unit of what is driven, the rest held or free. */
function movement(stiffness: Matrix, drive: HubDrive): Row {
  if (drive === 'centred') return [0, 0, 1];
  const driven = drive === 'turned' ? 2 : 0;
  const give = inverse(stiffness);
  return map(give[driven], (value) => value / give[driven][driven]);
}

interface StrainedPlace {
  readonly strain: number;
  readonly angle: number;
}

function largestStrain(places: readonly Place[], force: Row, thickness: Mm): StrainedPlace {
  return places
    .map(({ moment, normal, angle }) => ({
      strain: (thickness / 2) * Math.abs(dot(moment, force)) + (thickness ** 2 / 12) * Math.abs(dot(normal, force)),
      angle,
    }))
    .reduce((most, place) => (place.strain > most.strain ? place : most));
}

const map = (row: Row, f: (value: number, at: number) => number): Row => [f(row[0], 0), f(row[1], 1), f(row[2], 2)];
const dot = (a: Row, b: Row): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Row, b: Row): Row => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const times = (m: Matrix, v: Row): Row => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];
const rows = (f: (at: 0 | 1 | 2) => Row): Matrix => [f(0), f(1), f(2)];
const outer = (v: Row, factor: number): Matrix => rows((i) => map(v, (value) => factor * v[i] * value));
const add = (a: Matrix, b: Matrix): Matrix => rows((i) => map(a[i], (value, j) => value + (b[i][j] ?? 0)));

/** Of a symmetric matrix, by cross products of its rows. */
function inverse(m: Matrix): Matrix {
  const [a, b, c] = [cross(m[1], m[2]), cross(m[2], m[0]), cross(m[0], m[1])];
  const determinant = dot(m[0], a);
  return rows((i) => map([a, b, c][i] ?? a, (value) => value / determinant));
}

/** A movement as an arm sees it that stands turned by an angle. */
function back([x, y, turn]: Row, angle: number): Row {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * x + s * y, c * y - s * x, turn];
}

/** R·K·Rᵀ for an arm turned by an angle. */
function turned(stiffness: Matrix, angle: number): Matrix {
  const columns = rows((j) => back(times(stiffness, back(unit(j), angle)), -angle));
  return rows((i) => [columns[0][i], columns[1][i], columns[2][i]]);
}

function unit(at: 0 | 1 | 2): Row {
  return [at === 0 ? 1 : 0, at === 1 ? 1 : 0, at === 2 ? 1 : 0];
}
