import type { RampStops } from '../ramp.ts';
import { runsPath } from '../paths.ts';
import { onSheet, pair, type Sheet } from '../sheet.ts';
import { PIECE } from './printedPaths.ts';
import { poseIn, type Posed, type ScenePad } from './scene.ts';
import type { StateNow } from './state.ts';
import { strainCells, surfaces, type Inked } from './strainCells.ts';
import { refined, strainField } from './strainField.ts';

/** A pad that moves: drawn once as printed, then only carried. */
export interface MovingPad {
  readonly pad: ScenePad;
  readonly d: string;
}

export function movingPads(scene: Posed, sheet: Sheet): readonly MovingPad[] {
  return scene.pads.filter(({ moves }) => moves).map((pad) => ({ pad, d: runsPath(sheet, pad.loops, true) }));
}

/** The SVG transform that carries a pad to where it is in a state; turning with the clock is positive there. */
export function padTransform(sheet: Sheet, pad: ScenePad, state: StateNow): string {
  const now = poseIn(pad, state);
  const [from, to] = [onSheet(sheet, pad.printed), onSheet(sheet, now)];
  const turn = (-(now.turn - pad.printed.turn) * 180) / Math.PI;
  return `translate(${pair(to)}) rotate(${turn.toFixed(3)}) translate(${pair({ x: -from.x, y: -from.y })})`;
}

/** Members of a state: their strain by ink, and their surfaces. */
export interface MovedMembers {
  readonly cells: readonly Inked[];
  readonly plain: string;
  readonly heavy: string;
}

/** The members of one plane or of all, as they are in a state; heavier where the skin stays bent. */
export function movedMembers(
  scene: Posed,
  sheet: Sheet,
  state: StateNow,
  stops: RampStops,
  plane?: number,
): MovedMembers {
  const seen = state.shapes.flatMap((sampled, i) => {
    const member = scene.members[i];
    if (member?.isSeen !== true || (plane !== undefined && member.plane !== plane)) return [];
    const shape = refined(sampled, PIECE / sheet.pxPerMm);
    return [{ shape, field: strainField(shape, member, scene.a) }];
  });
  const lines = seen.map(({ shape, field }) => surfaces(shape, field, stops.yield, sheet));
  return {
    cells: strainCells(seen, sheet, stops),
    plain: lines.map(({ plain }) => plain).join(''),
    heavy: lines.map(({ heavy }) => heavy).join(''),
  };
}

/** Planes of a scene, the lowest first. */
export function planesIn({ members }: Posed): readonly number[] {
  return [...new Set(members.map(({ plane }) => plane))].toSorted((p, q) => p - q);
}
