import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { effortAt, peakStrainFor } from '../../core/design/curves.ts';
import { turnOf } from '../../core/design/joint.ts';
import { asRad, degrees } from '../../core/units.ts';
import { effortText } from '../text/amountText.ts';
import { bentText } from '../text/drawingText.ts';
import { percent } from '../text/numbers.ts';
import { draftingScale } from './draftingScale.ts';
import { keyedTo } from './scrubKeys.ts';
import { ScrubberFrame } from './ScrubberFrame.tsx';
import type { MoveButton } from './useDrawing.ts';
import { useWidth } from './useWidth.ts';

interface Props {
  readonly assessment: Assessment;
  readonly fraction: number;
  readonly onBent: (fraction: number) => void;
  readonly move: MoveButton;
}

/** Moves a joint that rolls to an arc through its travel: a scale in degrees, and what is felt where it stands. */
export function Scrubber({ assessment, fraction, onBent, move }: Props) {
  const full = turnOf(assessment.joint.movement);
  const [track, width] = useWidth<HTMLDivElement>();
  const scale = useMemo(() => draftingScale(full, Math.max(1, width)), [full, width]);
  const bent = asRad(full * fraction);
  const strain = peakStrainFor(assessment, { amount: bent });
  const effort = effortAt(assessment, bent).typical;
  const [most, now] = [degrees(full), degrees(bent)];
  const bendTo = (deg: number) => onBent(Math.min(1, deg / most));
  const press = (key: string, isShifted: boolean) => {
    const to = keyedTo(key, isShifted, now, { from: 0, to: most }, 1);
    if (to !== undefined) bendTo(to);
    return to !== undefined;
  };
  return (
    <ScrubberFrame
      {...{ move, track, width, scale }}
      rest={0}
      at={width * fraction}
      range={{
        label: 'Bent by, degrees',
        text: bentText(bent, full, strain),
        min: 0,
        max: most,
        value: now,
        onChange: bendTo,
        onKey: press,
      }}
      readings={[
        ['bent', `${now.toFixed(1)}°`],
        ['strain', percent(strain)],
        ['effort', effortText(effort, assessment.drive.measure)],
      ]}
    />
  );
}
