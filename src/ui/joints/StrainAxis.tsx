import type { Assessment } from '../../core/design/assessment.ts';
import { strainAxis } from './axisPlan.ts';
import { WayAxis } from './WayAxis.tsx';

interface Props {
  readonly before: Assessment;
  readonly after: Assessment;
  /** The first axis says what its ticks mean. */
  readonly inWords: boolean;
}

/** Strain before (ring) and after (dot) of one way out, on an axis with the limits of the filament it proposes. */
export function StrainAxis({ before, after, inWords }: Props) {
  return <WayAxis axis={strainAxis(before, after)} inWords={inWords} />;
}
