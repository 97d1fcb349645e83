import { familyOf } from '../../../core/flexures/known.ts';
import type { Mm } from '../../../core/units.ts';
import { counted, length as lengthText } from '../../text/numbers.ts';
import { sizeName } from '../../text/solvedDrawingText.ts';
import { sliderOfSize, type HandleSpec } from '../handles.ts';
import type { SolvedLayout } from './solvedLayout.ts';

/** The handles of a drawing, in the order in which they are tabbed to. */
export function gripsOf({ scene, grips, unit }: Pick<SolvedLayout, 'scene' | 'grips' | 'unit'>): readonly HandleSpec[] {
  const family = familyOf(scene.a.joint);
  const one = scene.a.section.countOf === 'lines' ? 'line' : 'layer';
  return grips.map(({ parameter, at, perPx }): HandleSpec => {
    const isCount = family.parameters[parameter]?.kind === 'count';
    const isLevel = Math.abs(perPx.x) > 2 * Math.abs(perPx.y);
    const isUpright = Math.abs(perPx.y) > 2 * Math.abs(perPx.x);
    const slant = perPx.x * perPx.y > 0 ? 'nwse-resize' : 'nesw-resize';
    return {
      ...(isCount ? sliderOfSize(scene.a, family, parameter, 3, 1) : sliderOfSize(scene.a, family, parameter, 5, 0.5)),
      parameter,
      label: sizeName(scene.a, parameter),
      at,
      perPx,
      cursor: isLevel ? 'ew-resize' : isUpright ? 'ns-resize' : slant,
      say: (value: Mm) => (isCount ? counted(value, one) : lengthText(value, unit)),
    };
  });
}
