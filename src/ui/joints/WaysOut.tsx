import { useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Remedy } from '../../core/design/remedy.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { allWays, NO_WAY_OUT, waysOutHeading } from '../text/remedyText.ts';
import { WayOut } from './WayOut.tsx';

/** As many as stand beside the drawing; the others are asked for. */
const AT_FIRST = 4;

interface Props {
  readonly assessment: Assessment;
  readonly remedies: readonly Remedy[];
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** Changes that would make the joint pass, cheapest first, each put in place by one press. */
export function WaysOut({ assessment, remedies, unit, onUse }: Props) {
  const [all, setAll] = useState(false);
  const shown = all ? remedies : remedies.slice(0, AT_FIRST);
  const [heading, aside] = waysOutHeading(assessment);
  return (
    <section aria-label={heading}>
      <h2 className="h">
        {heading}
        <span className="aside">{aside}</span>
      </h2>
      {remedies.length === 0 && <p className="none">{NO_WAY_OUT}</p>}
      <ol>
        {shown.map((remedy, at) => (
          <WayOut
            key={`${remedy.kinds.join()}${at}`}
            rank={at + 1}
            before={assessment}
            remedy={remedy}
            unit={unit}
            onUse={onUse}
          />
        ))}
      </ol>
      {remedies.length > AT_FIRST && (
        <button className="b quiet" type="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {allWays(remedies.length, all)}
        </button>
      )}
    </section>
  );
}
