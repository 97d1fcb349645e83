import { useEffect, useRef } from 'react';
import type { WholeFilament } from '../../core/material/types.ts';
import { FIGURE_2, FOURTH, rowName } from '../text/filamentsText.ts';
import { useComparing, useMarked } from './comparing.ts';

/** Which filaments show their spread: at most three, and a fourth asks which to drop. */
export function Marked({ rows }: { readonly rows: readonly WholeFilament[] }) {
  const { asked, mark, answer } = useComparing();
  const marked = useMarked();
  const question = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (asked !== undefined) question.current?.querySelector('button')?.focus();
  }, [asked]);
  const named = (id: string | undefined) => rows.find((row) => row.id === id);
  const wanted = named(asked);
  return (
    <div className="marked">
      <fieldset className="names" aria-label={FIGURE_2.marked}>
        {rows.map((row) => (
          <button
            key={row.id}
            type="button"
            className="name-toggle"
            aria-pressed={marked.includes(row.id)}
            onClick={() => mark(row.id)}
          >
            {rowName(row)}
          </button>
        ))}
      </fieldset>
      {wanted && (
        <fieldset className="fourth" aria-label={FOURTH.asks(rowName(wanted))} ref={question}>
          <span>{FOURTH.asks(rowName(wanted))}</span>
          {marked.map((id) => (
            <button key={id} className="b" type="button" onClick={() => answer(id)}>
              {named(id)?.name ?? id}
            </button>
          ))}
          <button className="b quiet" type="button" onClick={() => answer(undefined)}>
            {FOURTH.leave}
          </button>
        </fieldset>
      )}
    </div>
  );
}
