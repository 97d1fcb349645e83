import type { Given } from '../../../core/working/step.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { MARK_SHAPES } from '../../app/markShapes.ts';
import { PLACES } from '../../text/working/figures.ts';
import { symbolWords } from '../../text/working/workingWords.ts';
import { GIVEN_FROM, WORKING } from '../../text/workingText.ts';
import { quantityMarkup, row, sign, symbolMarkup } from './mathMarkup.ts';
import { Maths } from './Maths.ts';

interface Props {
  readonly family: string;
  readonly inputs: readonly Given[];
}

function Origin({ from, provenance }: Pick<Given, 'from' | 'provenance'>) {
  return (
    <span className="origin">
      {provenance && (
        <>
          <MarkShape kind={provenance} />
          <span className="vh">{MARK_SHAPES[provenance].says}, </span>
        </>
      )}
      {GIVEN_FROM[from]}
    </span>
  );
}

/** What is put into a step for the first time: symbol, value, what it is and where it comes from. */
export function PutIn({ family, inputs }: Props) {
  if (inputs.length === 0) return null;
  return (
    <ul className="put-in" aria-label={WORKING.putIn}>
      {inputs.map(({ symbol, value, unit, from, provenance }) => (
        <li key={symbol}>
          <Maths of={row(symbolMarkup(symbol), sign('='), quantityMarkup(value, unit, PLACES.given))} />
          <span className="means">{symbolWords(family, symbol)}</span>
          <Origin from={from} {...(provenance ? { provenance } : {})} />
        </li>
      ))}
    </ul>
  );
}
