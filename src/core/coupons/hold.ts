/** The hold piece: a block with a bent slot, and a strip to leave in it. */
import type { Loop } from '../geometry/loop.ts';
import type { Point } from '../geometry/outline.ts';
import { plain, type Problem } from '../problems.ts';
import { ok, type Result } from '../result.ts';
import { degrees, radians, type Mm, type Rad } from '../units.ts';
import { boxOfDraft, draftOf, pieceFrom, placedAt, together, type Draft } from './draft.ts';
import { looseStrip } from './lyingStrips.ts';
import { CLEAR, makingOf, type Making } from './making.ts';
import { kindBars } from './marks.ts';
import type { Piece, PiecesAsked } from './piece.ts';
import { arcPoints, barAt, circle, counterClockwise, type Part } from './slabs.ts';
import { HIGHEST, uprightRow } from './uprightStrips.ts';

/** So much wider than the strip is thick [mm]. Ours: as printers lay holes too narrow, from common practice, no source. */
const SLOT_SPARE: Mm = 0.4;
/** Walls on either side of the slot; the outer one carries the ticks and the mark [mm]. */
const INNER: Mm = 8;
const OUTER: Mm = 10;
/** Ticks at every so many degrees find room on a rim of this radius at least [mm]. */
const RIM: Mm = 23.5;
const TICK: Rad = radians(5);
const MOST_TURN: Rad = radians(140);
/** Width of the block at most [mm]. */
const WIDEST: Mm = 60;
/** On a small plate narrower by so much at each cut [mm], and turned less. */
const NARROWER: Mm = 6;
const TURNED_LESS: Rad = radians(15);
/** A larger radius turns so little in so wide a block that nothing can be read [mm]. */
const LARGEST: Mm = 60;
/** The strip stands out of both ends of the slot by this much before its grips begin [mm]. */
const STANDS_OUT: Mm = 1;
const FLOOR: Mm = 2;

/** How the slot runs: radius of its middle and how far it turns. */
interface Slot {
  readonly radius: Mm;
  readonly turn: Rad;
  readonly rim: Mm;
}

function slotOf(
  { asked, thickness, lying }: Making,
  cut: number,
): { readonly slot: Slot; readonly notes: readonly Problem[] } {
  // Tighter, the inner wall of the slot would have no radius of its own.
  const least = Math.max(3, 1.5 * thickness);
  const radius = Math.min(Math.max(asked.holdRadius, least), LARGEST);
  const rim = Math.max(radius + thickness / 2 + SLOT_SPARE / 2 + OUTER, RIM);
  const fits = 2 * Math.asin(Math.min(1, (WIDEST - NARROWER * cut) / 2 / rim));
  // A strip that stands must not be longer than it stands well.
  const longest = lying === 'upright' ? (HIGHEST - 2 * STANDS_OUT) / radius : Infinity;
  const turn = TICK * Math.floor(Math.min(MOST_TURN - TURNED_LESS * cut, fits, longest) / TICK + 1e-9);
  return { slot: { radius, turn: turn as Rad, rim }, notes: boundNotes(asked.holdRadius, radius) };
}

function boundNotes(asked: Mm, radius: Mm): readonly Problem[] {
  if (asked === radius) return [];
  const isTight = asked < radius;
  return [
    {
      code: isTight ? 'below-minimum' : 'above-maximum',
      message: `A slot of radius ${plain(asked)} mm is ${isTight ? 'tighter than the strip goes into' : 'too wide for the block'}, so that of the piece is ${plain(radius)} mm; ${isTight ? 'take fewer lines or layers for a tighter one' : 'a joint bent less than that keeps less of a set than is read here'}`,
      field: 'holdRadius',
      value: asked,
      limit: radius,
    },
  ];
}

export function hold(asked: PiecesAsked, cut: number): Result<Piece> {
  const making = makingOf(asked);
  const { slot, notes } = slotOf(making, cut);
  const length = slot.radius * slot.turn + 2 * STANDS_OUT;
  const strain = making.thickness / (2 * slot.radius);
  const one = { number: 1, length, strain };
  const strip = making.lying === 'upright' ? uprightRow(making, [one]) : looseStrip(making, one);
  const body = block(making, slot);
  const beside = placedAt(strip, { x: boxOfDraft(body).max.x + CLEAR, y: boxOfDraft(body).min.y });
  const piece = pieceFrom('hold', together(body, beside), { slotTurn: slot.turn, slotRadius: slot.radius });
  return ok(piece, notes);
}

/** Between two radii, about straight up from the origin. */
function sector(from: Mm, to: Mm, turn: number): Loop {
  const [start, end] = [(Math.PI - turn) / 2, (Math.PI + turn) / 2];
  const inner = from > 0 ? arcPoints(ORIGIN, from, end, start) : [ORIGIN];
  return counterClockwise([...arcPoints(ORIGIN, to, start, end), ...inner]);
}

const ORIGIN: Point = { x: 0, y: 0 };

function block(making: Making, { radius, turn, rim }: Slot): Draft {
  const half = (making.thickness + SLOT_SPARE) / 2;
  const top = FLOOR + making.depth;
  const inner = radius - half;
  // A wall too near the middle for a hole there goes all round it: the strip leaves the slot without touching it.
  const core = inner - INNER < 4 ? [circle(ORIGIN, inner)] : [];
  const walls = [sector(Math.max(0, inner - INNER), rim, turn), ...core].map((loop): Part => ({
    loop,
    from: 0,
    to: top,
  }));
  // The slot goes on a little past the faces of the block, so that no skin is left there.
  const slot = sector(inner, radius + half, turn + 0.2);
  const bars = kindBars('hold', { x: 0, y: radius + half + 3.5 }, top, making);
  const parts = [...walls, ...bars, ...ticks(turn, rim, top, making)];
  return draftOf({ parts, cuts: [{ loop: slot, from: FLOOR, to: Infinity }] }, []);
}

/** Every 5° along the rim, those of 30° from the middle longer. */
function ticks(turn: Rad, rim: Mm, top: Mm, { rise }: Making): readonly Part[] {
  const count = Math.floor(turn / TICK / 2);
  return Array.from({ length: 2 * count - 1 }, (_, i) => i - count + 1).map((step): Part => {
    const angle = Math.PI / 2 + step * TICK;
    const at = { x: rim * Math.cos(angle), y: rim * Math.sin(angle) };
    const isLong = Math.round(degrees((step * TICK) as Rad)) % 30 === 0;
    const inward = { x: -Math.cos(angle), y: -Math.sin(angle) };
    return { loop: barAt(at, inward, 0.9, 0.5, isLong ? 3.5 : 2.5), from: top, to: top + rise };
  });
}
