/** What a piece is laid on, or held over, to flex its strips to the angle that was asked for: life size on paper, y down [mm]. */
import type { Piece, PiecesAsked, Strip } from '../../../core/coupons/piece.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import type { Rad } from '../../../core/units.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { GUIDE } from '../../text/testPageText.ts';
import { guideStrip, onwards, type GuideStrip } from './rounds.ts';

/** Drawn of a grip [mm]. */
export const GRIP = 12;
/** Room for a number past a grip [mm]. */
const LETTERED = 4;
/** Between the middles of two numbers [mm]. */
const CLEAR = 3.4;
/** Room for a guide on a page [mm]. */
const ROOM = { x: 182, y: 104 } as const;
/** Between profiles of one row [mm]. */
const APART = 5;

/** A loop of corners on paper. */
type Corners = readonly Point[];

/** What a guide takes up [mm]. */
export interface GuideFrame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Guide {
  readonly turn: Rad;
  readonly strips: readonly GuideStrip[];
  /** Of what holds the strips. */
  readonly outlines: readonly Corners[];
  /** Of what is to cover them, where strips have pads and no grips. */
  readonly targets: readonly Corners[];
  /** Where numbers stand, and where lines to those begin that stand farther out. */
  readonly numbers: readonly (Point & { readonly number: number; readonly from?: Point })[];
  readonly frame: GuideFrame;
}

function box(x: number, y: number, wide: number, high: number): Corners {
  return [
    { x, y },
    { x: x + wide, y },
    { x: x + wide, y: y + high },
    { x, y: y + high },
  ];
}

function frameOf({ strips, outlines, targets, numbers }: Omit<Guide, 'frame' | 'turn'>): GuideFrame {
  const arcs = strips.flatMap(({ root, reach, free }) => [
    { x: root.x - reach.left, y: root.y - reach.up },
    { x: root.x, y: root.y + reach.down },
    { x: root.x, y: root.y - free },
  ]);
  const lettered = numbers.flatMap(({ x, y }) => box(x - LETTERED / 2, y - LETTERED / 2, LETTERED, LETTERED));
  const points = [...arcs, ...lettered, ...outlines.flat(), ...targets.flat()];
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

/** Numbers past their grips, farther out where one would stand on another. */
function numbersOf(strips: readonly GuideStrip[], turn: Rad): Guide['numbers'] {
  const placed: Guide['numbers'][number][] = [];
  for (const { number, end } of strips.toReversed()) {
    const at = (steps: number) => onwards(end, turn, GRIP + LETTERED / 2 + steps * LETTERED);
    const isFree = ({ x, y }: Point) => placed.every((other) => Math.hypot(other.x - x, other.y - y) >= CLEAR);
    // At most as often as there are numbers that may be in the way of one, each on either side of its own.
    const steps = Array.from({ length: 2 * strips.length + 1 }, (_, far) => far).find((far) => isFree(at(far))) ?? 0;
    placed.push({ number, ...at(steps), ...(steps > 0 && { from: onwards(end, turn, GRIP) }) });
  }
  return placed;
}

/** Strips with grips that go straight on, a number past each. */
function gripped(strips: readonly GuideStrip[], turn: Rad, outlines: readonly Corners[]): Guide {
  const numbers = numbersOf(strips, turn);
  // At rest as well.
  const rests = strips.map(({ root, free }) => box(root.x, root.y - free - GRIP, 0, 0));
  const guide = { strips, outlines, targets: [], numbers };
  return { ...guide, turn, frame: frameOf({ ...guide, outlines: [...outlines, ...rests] }) };
}

/** Of a comb that bends in the plane of the plate, over its own picture: from the front of the piece. */
export function ownGuide({ id, strips }: Piece, { profile, turn }: PiecesAsked): Guide | undefined {
  if (id !== 'comb' || profile.lying !== 'flat') return undefined;
  const turned = strips.map(({ number, length, from }) => guideStrip(number, length, { x: from.x, y: -from.y }, turn));
  return gripped(turned, turn, []);
}

/** From the end of its spine: all strips begin at the same place, one behind the other, and turn away from their pads. */
function sideOfComb({ bodies, strips }: Piece, turn: Rad): Guide {
  const [first] = strips;
  const high = bodies[0]?.at(-1)?.from ?? 0;
  const spine = box(-(first?.thickness ?? 0) / 2, 0, high, first?.from.y ?? 0);
  return gripped(strips.map(({ number, length }) => guideStrip(number, length, { x: 0, y: 0 }, turn)), turn, [spine]); // prettier-ignore
}

/** From the front: strips stand on their foot. */
function frontOfComb({ bodies, strips, size }: Piece, turn: Rad): Guide {
  const high = bodies[0]?.[0]?.to ?? 0;
  const stood = strips.map(({ number, length, from }) => guideStrip(number, length, { x: from.x, y: 0 }, turn));
  return gripped(stood, turn, [box(0, 0, size.x, high)]);
}

/** One crease with the pad that lies still under it, and where the next one comes to lie. */
function fold({ number, length, thickness }: Strip, at: number, along: number, high: number, turn: Rad) {
  const strip = guideStrip(number, length, { x: at, y: 0 }, turn);
  const plateSide = thickness / 2;
  const corner = (forth: number, toLeft: number) => onwards(strip.end, turn, forth, toLeft);
  return {
    strip,
    outline: box(at - plateSide, 0, high, along),
    target: [
      corner(0, plateSide),
      corner(along, plateSide),
      corner(along, plateSide - high),
      corner(0, plateSide - high),
    ],
    number: { number, x: at - plateSide + high + LETTERED / 2, y: along / 2 },
  };
}

/** Creases from the side, one beside the other. */
function sideOfCreases({ bodies, strips }: Piece, turn: Rad): Guide {
  const high = bodies[0]?.at(-1)?.from ?? 0;
  const along = strips[0]?.from.x ?? 0;
  const guide = { strips: [] as GuideStrip[], outlines: [] as Corners[], targets: [] as Corners[] };
  const numbers: Guide['numbers'][number][] = [];
  let right = 0;
  for (const strip of strips) {
    const drawn = (at: number) => fold(strip, at, along, high, turn);
    const alone = drawn(0);
    const { left } = frameOf({
      strips: [alone.strip],
      outlines: [alone.outline],
      targets: [alone.target],
      numbers: [],
    });
    const one = drawn(right - left + (right > 0 ? APART : 0));
    guide.strips.push(one.strip);
    guide.outlines.push(one.outline);
    guide.targets.push(one.target);
    numbers.push(one.number);
    right = Math.max(one.number.x + LETTERED / 2, ...one.target.map(({ x }) => x));
  }
  return { ...guide, numbers, turn, frame: frameOf({ ...guide, numbers }) };
}

function sideGuide(piece: Piece, { profile, turn }: PiecesAsked, unit: LengthUnit) {
  if (piece.id === 'creases') return { guide: sideOfCreases(piece, turn), says: GUIDE.fold };
  if (piece.id !== 'comb' || profile.lying === 'flat') return undefined;
  if (profile.lying === 'crease') return { guide: sideOfComb(piece, turn), says: GUIDE.side };
  const over = piece.size.y - (piece.strips[0]?.from.y ?? 0);
  return { guide: frontOfComb(piece, turn), says: GUIDE.back(over, unit) };
}

export const guideWidth = ({ left, right }: GuideFrame): number => right - left;
export const guideHeight = ({ top, bottom }: GuideFrame): number => bottom - top;

/** A guide beside the picture, for pieces that bend out of the plane in which they are printed; nothing where it has no room. */
export function guideAside(
  piece: Piece,
  asked: PiecesAsked,
  unit: LengthUnit,
): { readonly guide: Guide; readonly says: string } | undefined {
  const found = sideGuide(piece, asked, unit);
  const fits = found && guideWidth(found.guide.frame) <= ROOM.x && guideHeight(found.guide.frame) <= ROOM.y;
  return fits ? found : undefined;
}
