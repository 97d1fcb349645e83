import { useId, useMemo } from 'react';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import { runsPath } from '../paths.ts';
import type { RampStops } from '../ramp.ts';
import type { Sheet } from '../sheet.ts';
import { MovedLayer } from './MovedLayer.tsx';
import { printedMembers } from './printedPaths.ts';
import type { Scene } from './scene.ts';
import type { StateNow } from './state.ts';

interface Props {
  readonly scene: Scene;
  readonly state: StateNow;
  readonly stops: RampStops;
  readonly swept: Bounds;
  readonly scale: number;
  readonly nominal: number;
  readonly width: number;
}

const MARGIN = 6;

/** One state of a joint, small: what stays hatched, what is printed dashed, what has moved in strain. */
export function StatePicture({ scene, state, stops, swept, scale, nominal, width }: Props) {
  const id = useId();
  const pxPerMm = scale * nominal;
  const top = Math.floor(-swept.top * pxPerMm) - MARGIN;
  const bottom = Math.ceil(-swept.bottom * pxPerMm) + MARGIN;
  const sheet = useMemo((): Sheet => {
    const rootX = width / 2 - ((swept.left + swept.right) / 2) * pxPerMm;
    return { scale, pxPerMm, width, rootX, top, bottom, small: true };
  }, [scale, pxPerMm, width, swept, top, bottom]);
  const printed = useMemo(() => {
    const still = scene.pads.filter(({ moves }) => !moves).map(({ loops }) => runsPath(sheet, loops, true));
    return {
      still: still.join(''),
      middles: printedMembers(scene, sheet)
        .map(({ middle }) => middle)
        .join(''),
    };
  }, [scene, sheet]);
  return (
    <svg aria-hidden="true" width={width} height={bottom - top} viewBox={`0 ${top} ${width} ${bottom - top}`}>
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="Lh" d="M3.5 0V7" />
      </pattern>
      <path d={printed.still} fill={`url(#${id})`} fillRule="evenodd" />
      <path className="W still" d={printed.still} />
      <path className="Lh printed" d={printed.middles} />
      <MovedLayer scene={scene} sheet={sheet} state={state} stops={stops} />
    </svg>
  );
}
