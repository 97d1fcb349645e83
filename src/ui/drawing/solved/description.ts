import { describeSolved } from '../../text/solvedDrawingText.ts';
import type { VIEWS } from '../../text/drawingText.ts';
import { scaleText } from '../sheet.ts';
import { keptApart, nearestUpTo, nearMarks } from './nearest.ts';
import type { SolvedLayout } from './solvedLayout.ts';
import { stateAt } from './state.ts';

/** The whole figure in words, for those who cannot see it. */
export function descriptionOf(
  { scene, travelled, sheet, unit, centre }: SolvedLayout,
  view: keyof typeof VIEWS,
): string {
  const nearest = nearestUpTo(scene, travelled.wanted);
  const placesAt = (amount: number) => nearMarks(scene, sheet, stateAt(scene.solved, amount)).length;
  return describeSolved(scene.a, {
    view,
    scale: scaleText(sheet.scale),
    unit,
    marks: travelled.marks,
    keep: keptApart(scene),
    ...(nearest ? { nearest: { ...nearest, places: placesAt(nearest.amount) } } : {}),
    ...(centre ? { drift: centre.most } : {}),
  });
}
