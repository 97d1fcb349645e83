import { admitting } from '../../core/find/admit.ts';
import type { Miss } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { LIST } from '../text/foundText.ts';
import { allowText, missText, noneText } from '../text/findWhyText.ts';
import { kindText } from '../text/kindText.ts';
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

/** A miss in words, by its name. */
export function missSaid({ joint, short }: Miss, { wanted, unit }: Pick<MissProps, 'wanted' | 'unit'>): string {
  return missText(designName(joint, unit), filamentName(joint), { short }, { measure: wanted.measure, unit });
}

/** A miss in words, where its name stands above. */
export function noneSaid({ joint, short }: Miss, { wanted, unit }: Pick<MissProps, 'wanted' | 'unit'>): string {
  const { name } = kindText(joint.family);
  return noneText(name, filamentName(joint), { short }, { measure: wanted.measure, unit });
}
