import { useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Mm } from '../../core/units.ts';
import { lengthAt } from './drag.ts';
import type { Frame, Px, Span } from './frame.ts';
import { nearestCurve, neighbour, type LengthCurve } from './lengthCurves.ts';
import { evenStops, movedTo, moveOf, snapped } from './stops.ts';

interface Reading {
  readonly length: Mm;
  /** Which curve is read: a count, or the joint's own. */
  readonly curve: number | 'own';
}

interface ReadingOf {
  readonly a: Assessment;
  readonly curves: readonly LengthCurve[];
  readonly limits: Span;
  readonly snap: Mm;
}

/** A pointer reads finer than a drag stops. */
const FINER = 5;

const nameOf = (curve: LengthCurve) => (curve.own ? 'own' : curve.count);

/** The reading cursor on strain against flexing length; it begins at the joint. */
export function useLengthReading({ a, curves, limits, snap }: ReadingOf) {
  const [reading, setReading] = useState<Reading>();
  const own = curves.at(-1) as LengthCurve;
  const curve = curves.find((one) => nameOf(one) === reading?.curve) ?? own;
  const length = reading?.length ?? a.length;
  return {
    active: reading !== undefined,
    length,
    curve,
    leave: () => setReading(undefined),
    point(at: Px, frame: Frame) {
      const under = snapped(lengthAt(frame, at.x), snap / FINER, limits);
      const nearest = nearestCurve(curves, under, (strain) => Math.abs(frame.y(strain) - at.y));
      setReading({ length: under, curve: nameOf(nearest) });
    },
    /** Whether the key moves the cursor. */
    key(key: string, shift: boolean): boolean {
      if (key === 'ArrowUp' || key === 'ArrowDown') {
        setReading({ length, curve: nameOf(neighbour(curves, curve, length, key === 'ArrowUp')) });
        return true;
      }
      const move = moveOf(key, shift);
      if (move === undefined) return false;
      setReading({ length: movedTo(evenStops(limits, snap), length, move), curve: nameOf(curve) });
      return true;
    },
  };
}
