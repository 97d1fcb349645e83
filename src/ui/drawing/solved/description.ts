import { describeSolved } from '../../text/solvedDrawingText.ts';
import type { VIEWS } from '../../text/drawingText.ts';
import { scaleText } from '../sheet.ts';
import { keptApart, nearestUpTo } from './nearest.ts';
import type { SolvedLayout } from './solvedLayout.ts';

/** The whole figure in words, for those who cannot see it. */
export function descriptionOf(
  { scene, travelled, sheet, unit, centre }: SolvedLayout,
  view: keyof typeof VIEWS,
): string {
  const nearest = nearestUpTo(scene, travelled.wanted);
  return describeSolved(scene.a, {
    view,
    scale: scaleText(sheet.scale),
    unit,
    marks: travelled.marks,
    keep: keptApart(scene),
    ...(nearest ? { nearest } : {}),
    ...(centre ? { drift: centre.most } : {}),
  });
}
