import { useCallback, useState } from 'react';
import { NOMINAL_PX_PER_MM } from './sheet.ts';

const KEY = 'bendbook.pxPerMm';

/** Screens from a wall display to the finest phone; anything else in the store is not ours. */
export const PX_PER_MM = { min: 1.5, max: 16 } as const;

/** A stored or typed value, or the nominal one where it cannot be right. */
export function plausiblePxPerMm(value: unknown): number {
  const number = typeof value === 'string' ? Number(value) : Number.NaN;
  return number >= PX_PER_MM.min && number <= PX_PER_MM.max ? number : NOMINAL_PX_PER_MM;
}

function stored(): number {
  try {
    return plausiblePxPerMm(localStorage.getItem(KEY));
  } catch {
    return NOMINAL_PX_PER_MM;
  }
}

/** px for one true millimetre on this screen, as the user has measured it, kept between visits where that is allowed. */
export function usePxPerMm(): readonly [number, (value: number) => void] {
  const [pxPerMm, setPxPerMm] = useState(stored);
  const set = useCallback((value: number) => {
    setPxPerMm(value);
    try {
      localStorage.setItem(KEY, String(value));
    } catch {
      // Without storage the measure holds for this visit.
    }
  }, []);
  return [pxPerMm, set];
}
