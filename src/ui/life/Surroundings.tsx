import type { ReactNode } from 'react';
import { A_ROOM } from '../../core/design/joint.ts';
import { isDryNylon } from '../../core/design/warmth.ts';
import type { Filament } from '../../core/material/types.ts';
import { Sentence } from '../controls/Sentence.tsx';
import type { BriefOf } from '../joints/briefSpecs.ts';
import { inDays } from '../text/useText.ts';
import { Live } from './Live.tsx';
import { hoursOf, hoursSpec, moistureSpec, temperatureSpec } from './useSpecs.ts';

interface SurroundingsProps {
  readonly of: BriefOf;
  readonly filament: Filament;
  /** What stands after the last word. */
  readonly children: ReactNode;
}

/** Where it is used and how long it is held. */
export function Surroundings({ of, filament, children }: SurroundingsProps) {
  const takesUpWater = isDryNylon({ surroundings: { ...A_ROOM, moisture: 'dry' } }, filament);
  return (
    <Sentence className="use">
      It is used at <Live spec={temperatureSpec(of)} /> at most
      {takesUpWater && (
        <>
          , in <Live spec={moistureSpec(of)} /> air
        </>
      )}
      .
      {of.joint.movement.held && (
        <>
          {' '}
          Held bent for <Live spec={hoursSpec(of)} />
          {inDays(hoursOf(of.joint))} at a time.
        </>
      )}
      {children}
    </Sentence>
  );
}
