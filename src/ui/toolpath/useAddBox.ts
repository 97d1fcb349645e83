import type { DrawnBox } from '../../core/inspect/toolpath/drawnPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { MOST_BOXES, useToolpaths, withBox } from '../../store/toolpaths.ts';
import { BOXES } from '../text/toolpathBoxText.ts';
import { firstBox } from './boxSpecs.ts';
import { boxNumber } from './places.ts';
import { choosePlace, useShown } from './shown.ts';

/** Adds a box and looks at it: one that was dragged out, or a first one to be changed; nothing once there are too many. */
export function useAddBox(places: readonly Place[]): ((box?: Partial<DrawnBox>) => void) | undefined {
  const { toolpath } = useShown();
  const { values, change } = useToolpaths();
  const { boxes } = values;
  if (boxes.length >= MOST_BOXES) return undefined;
  return (box = {}) => {
    const number = boxNumber(places, boxes.length);
    change(withBox(values, { ...firstBox(toolpath), ...box }), BOXES.added(number));
    choosePlace(number);
  };
}
