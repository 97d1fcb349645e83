/** Whether two networks are built alike, and how far their sizes are apart. */
import type { BeamModel } from './model.ts';

/** Sizes, places over the extent of the network, and angles [rad] may differ by so much. */
const NEAR = 0.25;
/** Numbers that say what is joined, not how large it is. */
const EXACT: ReadonlySet<string> = new Set(['plane']);
const PLACES: ReadonlySet<string> = new Set(['x', 'y', 'rise']);
const TURNS: ReadonlySet<string> = new Set(['turn', 'turns', 'heading']);

type Room = (key: string, a: number, b: number) => boolean;

const byRatio: Room = (_, p, q) => Math.abs(p - q) <= NEAR * Math.max(Math.abs(p), Math.abs(q));
const exactly: Room = (_, p, q) => p === q;

/**
 * Whether two networks have the same members, pads, supports and so on by the same names, with no size, place or amount
 * more than a quarter apart.
 *
 * @param a - checked network [-]
 * @param b - checked network [-]
 */
export function isNear(a: BeamModel, b: BeamModel): boolean {
  const extent = Math.min(extentOf(a), extentOf(b));
  const byPlace: Room = (key, p, q) => {
    if (PLACES.has(key)) return Math.abs(p - q) <= NEAR * extent;
    return TURNS.has(key) ? Math.abs(p - q) <= NEAR : byRatio(key, p, q);
  };
  const { nodes, pads, members, ...acting } = a;
  const { nodes: nodesB, pads: padsB, members: membersB, ...actingB } = b;
  return (
    isAlike(nodes, nodesB, byPlace) &&
    isAlike(pads, padsB, byPlace) &&
    isAlike(members, membersB, byPlace) &&
    isAlike(acting, actingB, byRatio)
  );
}

/** Whether two networks are the same to the last digit. */
export function isSame(a: BeamModel, b: BeamModel): boolean {
  return a === b || isAlike(a, b, exactly);
}

function extentOf({ nodes }: BeamModel): number {
  const along = (of: 'x' | 'y') => {
    const places = nodes.map((node) => node[of]);
    return Math.max(...places) - Math.min(...places);
  };
  return Math.hypot(along('x'), along('y'));
}

function isAlike(a: unknown, b: unknown, room: Room, key = ''): boolean {
  if (typeof a === 'number' && typeof b === 'number') return a === b || (!EXACT.has(key) && room(key, a, b));
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [p, q] = [a as Readonly<Record<string, unknown>>, b as Readonly<Record<string, unknown>>];
  const keys = Object.keys(p);
  return keys.length === Object.keys(q).length && keys.every((each) => isAlike(p[each], q[each], room, each));
}
