import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Remedy } from '../../core/design/remedy.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { remedyCosts, remedyDone, remedyResult, remedyTitle } from '../text/remedyText.ts';
import { axisOf } from './axisPlan.ts';
import { WayAxis } from './WayAxis.tsx';

interface Props {
  readonly rank: number;
  readonly before: Assessment;
  readonly remedy: Remedy;
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** One way out: what to do, strain or effort before and after, what comes of it, what it costs. */
export function WayOut({ rank, before, remedy, unit, onUse }: Props) {
  const title = remedyTitle(before, remedy, unit);
  return (
    <li className="way">
      <span className="rank">{rank}</span>
      <h3>{title}</h3>
      <button
        className="b"
        type="button"
        aria-label={`Use it: ${title}`}
        onClick={() => onUse(remedy.after, remedyDone(before, remedy, unit))}
      >
        Use it
      </button>
      <WayAxis axis={axisOf(before, remedy.assessment)} inWords={rank === 1} />
      <p>
        {remedyResult(before, remedy)} <span className="costs">Costs {remedyCosts(before, remedy, unit)}.</span>
      </p>
    </li>
  );
}
