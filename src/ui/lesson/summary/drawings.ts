/** Which drawings the page has: the joint at its true scale, and beside it enlarged where there is room. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import { NOMINAL_PX_PER_MM, SCALES } from '../../drawing/sheet.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { arcDrawn, arcExtent, type ArcDrawn } from './arcDrawn.ts';
import { solvedDrawn, solvedExtent, type SolvedDrawn } from './solvedDrawn.ts';

export type JointDrawn = ArcDrawn | SolvedDrawn;

/** Room on the page [mm]. */
export interface Room {
  readonly wide: number;
  readonly high: number;
}

export interface Drawings {
  readonly main: JointDrawn;
  /** Larger, with where it moves to; nothing where the main drawing shows that. */
  readonly enlarged: JointDrawn | undefined;
}

/** Scales of the main drawing: true, or the next of the drafting office that fits. */
const TRUE_AND_UNDER = [1, 0.5, 0.2, 0.1, 0.05];
const OVER_TRUE = SCALES.filter((scale) => scale > 1);
/** Between the two drawings [mm]. */
const BETWEEN = 6;
/** Where it goes is drawn on the main drawing only if that grows no higher [mm]. */
const MOVING_HIGH = 85;

interface Drawer {
  readonly extent: (isMoved: boolean) => Bounds;
  readonly draw: (scale: number, isMoved: boolean) => JointDrawn;
}

function drawerOf(a: Assessment, unit: LengthUnit): Drawer | undefined {
  const { solved } = a;
  if (a.travel) {
    return {
      extent: (isMoved) => arcExtent(a, isMoved),
      draw: (scale, isMoved) => arcDrawn({ a, unit, scale, isMoved }),
    };
  }
  return (
    solved && {
      extent: (isMoved) => solvedExtent(a, solved, isMoved),
      draw: (scale, isMoved) => solvedDrawn({ a, unit, scale, isMoved }, solved),
    }
  );
}

const mm = (px: number) => px / NOMINAL_PX_PER_MM;

function isWithin({ box }: JointDrawn, room: Room): boolean {
  return mm(box.width) <= room.wide && mm(box.height) <= room.high;
}

/** At the first of some scales at which it fits with its lettering. */
function firstThatFits(drawer: Drawer, scales: readonly number[], room: Room, isMoved: boolean) {
  const { left, right, top, bottom } = drawer.extent(isMoved);
  for (const scale of scales) {
    // What is too large by itself need not be lettered.
    if ((right - left) * scale > room.wide || (top - bottom) * scale > room.high) continue;
    const drawn = drawer.draw(scale, isMoved);
    if (isWithin(drawn, room)) return drawn;
  }
  return undefined;
}

/**
 * The drawings that fit: `room` for the main one, `beside` the height that an enlarged one may take, 0 for none.
 * Nothing where the solver has not answered.
 */
export function drawingsOf(a: Assessment, unit: LengthUnit, room: Room, beside: number): Drawings | undefined {
  const drawer = drawerOf(a, unit);
  if (!drawer) return undefined;
  const smallest = TRUE_AND_UNDER.at(-1) ?? 1;
  const still = firstThatFits(drawer, TRUE_AND_UNDER, room, false) ?? drawer.draw(smallest, false);
  const left = { wide: room.wide - mm(still.box.width) - BETWEEN, high: beside };
  const enlarged = firstThatFits(drawer, OVER_TRUE, left, true);
  if (enlarged) return { main: still, enlarged };
  const moving = drawer.draw(still.sheet.scale, true);
  const low = { ...room, high: Math.min(room.high, MOVING_HIGH) };
  return { main: isWithin(moving, low) ? moving : still, enlarged: undefined };
}
