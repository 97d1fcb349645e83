import type { Point } from '../../../core/geometry/outline.ts';
import type { Mm } from '../../../core/units.ts';
import { CENTRE_PATH } from '../../text/solvedDrawingText.ts';
import { letteringWidth } from '../lettering.ts';
import { scaleText } from '../sheet.ts';
import type { Scene } from './scene.ts';
import { looksAt } from './swept.ts';
import { stateAt } from './state.ts';
import type { Travelled } from './travelled.ts';

/** Where the centre of a turn wanders, drawn many times larger than life in a circle beside the joint. */
export interface CentrePath {
  readonly pad: string;
  readonly centre: Point;
  readonly scale: number;
  /** Where it has gone, from one end of the way to the other, as seen from the centre as printed [mm]. */
  readonly points: readonly Point[];
  /** Furthest from there up to the wanted amount [mm]. */
  readonly most: Mm;
}

/** Radius of the circle it is drawn in [px]. */
export const CIRCLE = 46;
const SCALES = [100, 50, 20, 10] as const;
/** A centre that moves by less than this stays put [mm]. */
const STILL: Mm = 5e-4;
const LOOKS = 24;

/**
 * The path of the centre of a pad that is turned about a place of its own and yet drifts off it; nothing where it is
 * held there, where no centre was named, or where it swings so far that it is no centre.
 */
export function centrePathOf(scene: Scene, travelled: Travelled, pxPerMm: number): CentrePath | undefined {
  const { driven, model } = scene.solved.network;
  const centre = model.pads.find(({ id }) => id === driven.at)?.at;
  if (driven.direction !== 'turn' || !centre) return undefined;
  const offset = ({ poses }: { readonly poses: Scene['rest']['poses'] }): Point => {
    const now = poses[driven.at] ?? { ...centre, turn: 0 };
    return { x: now.x - centre.x, y: now.y - centre.y };
  };
  const back = travelled.from < 0 ? looksAt(scene, { from: 0, to: travelled.from }, LOOKS).slice(1).toReversed() : [];
  const points = [...back, ...looksAt(scene, { from: 0, to: travelled.to }, LOOKS)].map(offset);
  const most = Math.max(...points.map(({ x, y }) => Math.hypot(x, y)));
  const scale = SCALES.find((times) => most * times * pxPerMm <= CIRCLE - 6);
  return most > STILL && scale !== undefined ? { pad: driven.at, centre, scale, points, most } : undefined;
}

/** How wide the circle is with the words under it [px]. */
export function captionedWidth({ scale }: CentrePath): number {
  return Math.max(2 * CIRCLE, letteringWidth(`${CENTRE_PATH}, ${scaleText(scale)}`, 12)) + 8;
}

/** How far off the centre is in a state [mm]. */
export function driftAt(scene: Scene, { pad, centre }: CentrePath, amount: number): Point {
  const now = stateAt(scene.solved, amount).poses[pad] ?? { ...centre, turn: 0 };
  return { x: now.x - centre.x, y: now.y - centre.y };
}
