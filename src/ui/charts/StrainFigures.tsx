import { useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import './charts.css';
import type { LifeDomain } from './domains.ts';
import { dragged, type LengthDomain } from './lengthCurves.ts';
import { StrainLength } from './StrainLength.tsx';
import { StrainLife } from './StrainLife.tsx';
import type { Sizing } from './useSizing.ts';

interface StrainFiguresProps extends Pick<Sizing, 'onSize'> {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
  /** The papers as they usually are; without one for length there is no such figure. */
  readonly life: LifeDomain;
  readonly length: LengthDomain | undefined;
}

/** The paper of the figure that is being dragged in: it must not move under the hand. */
interface Held {
  readonly life?: LifeDomain;
  readonly length?: LengthDomain;
}

/** Strain against life, and against flexing length: the joint's point can be dragged in both. */
export function StrainFigures({ assessment, unit, onSize, ...usual }: StrainFiguresProps) {
  const [held, setHeld] = useState<Held>({});
  const life = held.life ?? usual.life;
  const length = usual.length && (held.length ?? usual.length);
  const names = dragged(assessment);
  const hold = (paper: Held) => (isHeld: boolean) => setHeld(isHeld ? paper : {});
  const common = { assessment, unit };
  return (
    <>
      <StrainLife {...common} domain={life} sizing={{ names, onSize, onHold: hold({ life }) }} />
      {length && <StrainLength {...common} domain={length} sizing={{ names, onSize, onHold: hold({ length }) }} />}
    </>
  );
}
