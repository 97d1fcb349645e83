import { withCurve } from '../../../core/material/ownFilament.ts';
import { CURVE_LIMITS } from '../../../core/material/ownLimits.ts';
import type { OwnFilament, Provenance } from '../../../core/material/types.ts';
import { Sentence } from '../../controls/Sentence.tsx';
import { ValueField } from '../../controls/ValueField.tsx';
import { GIVEN_SAYS, type GivenFigure } from '../../text/filamentCurveText.ts';
import { OWN_SAID } from '../../text/ownText.ts';
import { capital } from '../../text/said.ts';
import { figureSpec } from './figureSpec.ts';
import { put } from './put.ts';

interface Props {
  readonly row: OwnFilament;
  readonly name: GivenFigure;
  readonly more: string;
  /** Where the curve comes from once it is changed. */
  readonly after: Provenance;
}

/** A figure of the curve that is given as it is. */
export function GivenField({ row, name, more, after }: Props) {
  const label = capital(CURVE_LIMITS[name].what);
  const [before, behind] = GIVEN_SAYS[name];
  const spec = figureSpec({
    key: name,
    label,
    value: row.life[name],
    limits: CURVE_LIMITS[name],
    unit: '',
    isCount: name === 'maxReportableCycles',
    take: (value, said, was, run) =>
      put(withCurve(row, { [name]: value }, after), OWN_SAID.changed(label, said, was), run),
  });
  return (
    <>
      <Sentence className="in-cell">
        {before}
        <ValueField spec={spec} />
        {behind}
      </Sentence>
      {more !== '' && <small>{more}</small>}
    </>
  );
}
