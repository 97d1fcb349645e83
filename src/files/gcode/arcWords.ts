/** The arc that the words of a line ask for. Common practice where ISO 6983 leaves it open, no source. Source: iso-6983. */
import { arcOfRadius, arcRound, type Arc } from './arcs.ts';
import { I, J, K, P, R, type Words } from './words.ts';

/** Axes of each plane in which arcs run, and the one along which they climb; with the words of their centres. */
const PLANES = {
  17: { a: 0, b: 1, c: 2, i: I, j: J },
  18: { a: 2, b: 0, c: 1, i: K, j: I },
  19: { a: 1, b: 2, c: 0, i: J, j: K },
} as const;

export type PlaneNumber = keyof typeof PLANES;
export type Plane = (typeof PLANES)[PlaneNumber];
export const planeOf = (number: PlaneNumber): Plane => PLANES[number];

/** Whole turns more than these are a slip of the file. */
const MOST_TURNS = 1000;
/** No circle reaches farther from where 0 is [mm]. */
const FARTHEST = 1e6;

export interface ArcAsked {
  /** Places by axis [mm]. */
  readonly start: readonly number[];
  readonly end: readonly number[];
  readonly plane: Plane;
  readonly isClockwise: boolean;
  /** Of the words to mm. */
  readonly scale: number;
  /** By axis [mm]: what centres are told from where they are not told from the start. */
  readonly origin: readonly number[] | undefined;
}

/**
 * The arc that I, J and K, or R ask for; P asks for whole turns beyond.
 *
 * @returns undefined where they ask for none, or for one that does not go with its ends
 */
export function arcOf(words: Words, asked: ArcAsked): Arc | undefined {
  const { start, end, plane, isClockwise, scale, origin = start } = asked;
  const { a, b, i, j } = plane;
  const [from, to] = [[start[a]!, start[b]!] as const, [end[a]!, end[b]!] as const];
  const told = (place: number) => (words.has(place) ? words.value[place]! * scale : 0);
  const hasCentre = words.has(i) || words.has(j);
  if (!hasCentre && !words.has(R)) return undefined;
  const centre = [origin[a]! + told(i), origin[b]! + told(j)] as const;
  const arc = hasCentre ? arcRound(from, to, centre, isClockwise) : arcOfRadius(from, to, told(R), isClockwise);
  if (!arc || !(reachOf(arc) <= FARTHEST)) return undefined;
  const turns = words.has(P) ? Math.min(MOST_TURNS, Math.max(0, Math.floor(words.value[P]!))) : 0;
  return { ...arc, turn: arc.turn + Math.sign(arc.turn) * turns * 2 * Math.PI };
}

const reachOf = ({ centre, radii }: Arc) => Math.max(...centre.map(Math.abs)) + Math.max(...radii);
