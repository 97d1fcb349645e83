import type { PullTally } from '../../../core/material/tally.ts';
import type { Filament } from '../../../core/material/types.ts';
import type { MPa } from '../../../core/units.ts';
import { ChoiceField, type ChoiceSpec } from '../../controls/ChoiceField.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { PULL } from '../../text/testsTallyText.ts';
import { stiffnessField } from '../tally/mainField.ts';
import { expectedStiffness } from './expected.ts';

interface Props {
  /** Not written down yet. */
  readonly tally: PullTally;
  readonly row: Filament;
  readonly unit: LengthUnit;
  readonly onChange: (modulus: MPa | undefined) => void;
}

/** Whether the stretch of a bar was measured as well, and how stiff it came out. */
export function Stretch({ tally, row, unit, onChange }: Props) {
  const measured: ChoiceSpec = {
    key: 'stretch',
    label: PULL.stretch,
    value: tally.modulus === undefined ? 'none' : 'known',
    options: Object.entries(PULL.stretched).map(([value, text]) => ({ value, text })),
    take: (value) => {
      onChange(value === 'known' ? expectedStiffness(row, tally.direction) : undefined);
      return undefined;
    },
  };
  const stiffness = stiffnessField(tally, {
    name: '',
    unit,
    put: (next) => {
      if (next.kind === 'pull') onChange(next.modulus);
      return undefined;
    },
  });
  return (
    <>
      <ChoiceField spec={measured} />
      {stiffness && (
        <>
          {' '}
          <ValueField spec={stiffness} />
        </>
      )}
    </>
  );
}
