import { useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { strainSpreadAtCycles } from '../../core/design/curves.ts';
import { clamp, type Frame, type Px, type Span } from './frame.ts';
import { cycleStops, movedTo, moveOf } from './stops.ts';

/** Two figures, as finely as a life is ever said. */
function twoFigures(cycles: number): number {
  return Number(cycles.toPrecision(2));
}

/** The reading cursor on strain against life; it begins at the joint's median, as far as that has been counted. */
export function useLifeReading(a: Assessment, span: Span) {
  const [at, setAt] = useState<number>();
  const counted = a.filament.life.maxReportableCycles;
  const cycles = at ?? twoFigures(clamp(a.life.median, [span[0], counted]));
  return {
    active: at !== undefined,
    cycles,
    /** Nothing where nobody has counted: no life is given there. */
    spread: cycles <= counted ? strainSpreadAtCycles(a, cycles) : undefined,
    leave: () => setAt(undefined),
    point({ x: place }: Px, { x, box }: Frame) {
      setAt(twoFigures(x.invert(clamp(place, [box.left, box.right]))));
    },
    /** Whether the key moves the cursor. */
    key(key: string, shift: boolean): boolean {
      const move = moveOf(key, shift);
      if (move === undefined) return false;
      setAt(movedTo(cycleStops(span), cycles, move));
      return true;
    },
  };
}
