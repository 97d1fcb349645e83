import { admitting } from '../../core/find/admit.ts';
import type { Miss } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { LIST } from '../text/findText.ts';
import { allowText, missText, shortText } from '../text/findWhyText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { designName, filamentName } from './designs.ts';
import type { UseFound } from './useFound.ts';

export interface MissProps {
  readonly miss: Miss;
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  readonly found: UseFound;
  readonly onWant: (next: Wanted) => void;
}

/** What can be done about a miss: a change of the brief that admits it, and a look at it. */
export function MissActions({ miss, wanted, unit, found, onWant }: MissProps) {
  const next = admitting(wanted, miss);
  return (
    <span className="miss-does">
      {next && <QuietButton onClick={() => onWant(next)}>{allowText(wanted, next, unit)}</QuietButton>}
      <QuietButton cannot={found.cannot ?? false} onClick={() => found.use(miss.joint)}>
        {LIST.look}
      </QuietButton>
    </span>
  );
}

/** A miss in words, whole or as what it falls short in alone. */
export function missSaid(miss: Miss, { wanted, unit }: Pick<MissProps, 'wanted' | 'unit'>, isWhole: boolean): string {
  const of = { measure: wanted.measure, unit };
  if (!isWhole) return `It ${shortText(miss, of)}.`;
  return missText(designName(miss.joint, unit), filamentName(miss.joint), miss, of);
}
