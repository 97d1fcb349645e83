import { useState, type PointerEvent } from 'react';
import type { Point } from '../../../core/geometry/outline.ts';
import { draggedBox, type DraggedBox } from './plateBox.ts';
import { onPlate, type PlatePlan } from './platePlan.ts';

/** A drag on the layer from above: the box as it comes, and what an element over the drawing needs to take it in. */
export function useDragBox(plan: PlatePlan, onBox: ((box: DraggedBox) => void) | undefined) {
  const [drag, setDrag] = useState<{ readonly from: Point; readonly to: Point }>();
  const placeOf = (event: PointerEvent<SVGElement>): Point => {
    const paper = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    const { sheet } = plan;
    return onPlate(sheet, { x: event.clientX - (paper?.left ?? 0), y: event.clientY - (paper?.top ?? 0) + sheet.top });
  };
  const box = drag && draggedBox(drag.from, drag.to, plan.outlines);
  const take = {
    onPointerDown: (event: PointerEvent<SVGElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const from = placeOf(event);
      setDrag({ from, to: from });
    },
    onPointerMove: (event: PointerEvent<SVGElement>) => {
      if (drag) setDrag({ from: drag.from, to: placeOf(event) });
    },
    onPointerUp: () => {
      if (box) onBox?.(box);
      setDrag(undefined);
    },
    onPointerCancel: () => setDrag(undefined),
  };
  return { box, take };
}
