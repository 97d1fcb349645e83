import { lazy, Suspense } from 'react';
import { suitsOf } from '../../core/life/suits.ts';
import { isOwn } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { practiceText, rowName, SUITS_TEXT, usesText } from '../text/filamentsText.ts';
import { fourNumbers } from '../text/filamentText.ts';
import { WithJumps } from './WithJumps.tsx';

const OwnName = lazy(async () => ({ default: (await import('./own/OwnName.tsx')).OwnName }));
const OwnRemark = lazy(async () => ({ default: (await import('./own/OwnRemark.tsx')).OwnRemark }));

interface Props {
  readonly row: WholeFilament;
}

/** Its name, and how it bends, breaks and softens. */
function FourNumbers({ row }: Props) {
  const name = <b>{rowName(row)}</b>;
  return (
    <p className="says">
      {isOwn(row) ? (
        <Suspense fallback={name}>
          <OwnName filament={row} />
        </Suspense>
      ) : (
        name
      )}
      <WithJumps text={fourNumbers(row)} />
    </p>
  );
}

/** What it suits, in words, and what practice adds. */
function SuitsOne({ row }: Props) {
  const suited = suitsOf(row);
  const lines = [
    [SUITS_TEXT.suits, usesText(suited, true)],
    [SUITS_TEXT.not, usesText(suited, false)],
    [SUITS_TEXT.practice, practiceText(row.id)],
  ].filter(([, says]) => says !== '');
  return (
    <dl className="suits-one">
      {lines.map(([head, says]) => (
        <div key={head}>
          <dt>{head}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}

/** A filament in four numbers and what it suits; one of the user's own with what they say of it. */
export function InBrief({ row }: Props) {
  return (
    <div className="four sentence">
      <FourNumbers row={row} />
      {isOwn(row) && (
        <Suspense fallback={<p className="own-remark" />}>
          <OwnRemark filament={row} />
        </Suspense>
      )}
      <SuitsOne row={row} />
    </div>
  );
}
