import { sizeName } from '../../text/solvedDrawingText.ts';
import { handleOf, type HandleSpec } from '../handles.ts';
import type { SolvedLayout } from './solvedLayout.ts';

/** The handles of a drawing, in the order in which they are tabbed to. */
export function gripsOf({ scene, grips, unit }: Pick<SolvedLayout, 'scene' | 'grips' | 'unit'>): readonly HandleSpec[] {
  return grips.map((grip) => handleOf(scene.a, unit, grip, sizeName(scene.a, grip.parameter)));
}
