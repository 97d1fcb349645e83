import { useMemo } from 'react';
import type { PlaceNear } from '../../../core/inspect/toolpath/checkedToolpath.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { lengthwise, type Lengthwise } from './lengthwise.ts';

/** How the section that is looked at lies in figures of a width; nothing before the width is known. */
export function useLengthwise(placed: PlaceNear | undefined, width: number): Lengthwise | undefined {
  const [pxPerMm] = usePxPerMm();
  return useMemo(
    () => (placed && width > 0 ? lengthwise(placed, width, pxPerMm) : undefined),
    [placed, width, pxPerMm],
  );
}
