import type { Assessment } from '../../../core/design/assessment.ts';
import type { Solved } from '../../../core/design/solved.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Box } from '../../drawing/lettering.ts';
import { together, type Marks } from '../../drawing/marks.ts';
import { keep } from '../../drawing/room.ts';
import type { Sheet } from '../../drawing/sheet.ts';
import { placeDimensions } from '../../drawing/solved/dimensions.ts';
import { movedAmount, movedRoom } from '../../drawing/solved/movedAmount.ts';
import { sceneOf, type Scene } from '../../drawing/solved/scene.ts';
import { inkedRoom } from '../../drawing/solved/solvedLayout.ts';
import { stateAt, type StateNow } from '../../drawing/solved/state.ts';
import { boundsOf, edgesIn, looksAt } from '../../drawing/solved/swept.ts';
import { travelledOf, type Travelled } from '../../drawing/solved/travelled.ts';
import { boxRound, extentOn, sheetFor, type Asked } from './drawn.ts';

/** A joint that the solver has answered, drawn: as printed, and dashed where it goes. */
export interface SolvedDrawn {
  readonly is: 'solved';
  readonly scene: Scene;
  readonly sheet: Sheet;
  readonly marks: Marks;
  readonly box: Box;
  /** As far as wanted; nothing where it is drawn as printed only. */
  readonly moved: StateNow | undefined;
  readonly centre: string;
}

const LOOKS = 8;
const STAYS: Pick<Travelled, 'from' | 'wanted'> = { from: 0, wanted: 0 };

function extentOf(scene: Scene, { wanted }: Pick<Travelled, 'wanted'>): Bounds {
  const states = wanted === 0 ? [scene.rest] : looksAt(scene, { from: 0, to: wanted }, LOOKS);
  return boundsOf(states.flatMap((state) => edgesIn(scene, state)));
}

/** How far it reaches as drawn [mm]. */
export function solvedExtent(a: Assessment, solved: Solved, isMoved: boolean): Bounds {
  return extentOf(sceneOf(a, solved), isMoved ? { wanted: solved.amount } : STAYS);
}

export function solvedDrawn({ a, unit, scale, isMoved }: Asked, solved: Solved): SolvedDrawn {
  const scene = sceneOf(a, solved);
  const way = isMoved ? { from: 0, wanted: solved.amount } : STAYS;
  const extent = extentOf(scene, way);
  const sheet = sheetFor(extent, scale);
  const swept = extentOn(sheet, extent);
  const room = inkedRoom(scene, way, sheet, swept);
  const moved = isMoved ? stateAt(solved, solved.amount) : undefined;
  if (moved) for (const box of movedRoom(scene, { ...travelledOf(a, solved), from: 0 }, sheet, unit)) keep(room, box);
  const amount = moved && movedAmount(scene, sheet, moved, unit);
  const { marks: sizes } = placeDimensions({ scene, sheet, room, unit, swept });
  const marks = together(sizes, amount?.marks);
  return { is: 'solved', scene, sheet, marks, box: boxRound(swept, marks), moved, centre: amount?.moved ?? '' };
}
