import { MarkShape } from '../app/MarkShape.tsx';
import type { Linked } from '../text/filamentText.ts';
import { kindWords, PROPERTIES } from '../text/filamentValueText.ts';
import { EDITOR } from '../text/ownText.ts';

/** Of the row of a property in the table of every number, or of what the life curve stands on. */
export function placeId(of: Linked['to']): string {
  return `number-${of}`;
}

function goTo(to: Linked['to']): void {
  const row = document.getElementById(placeId(to));
  if (row === null) return;
  row.scrollIntoView({ block: 'center' });
  row.focus({ preventScroll: true });
}

/** Raised after a number: the way to where its source stands. */
export function JumpMark({ kind, to }: Pick<Linked, 'kind' | 'to'>) {
  const name = to === 'life' ? EDITOR.curve : PROPERTIES[to].name;
  const label = `${kindWords(kind)}: where “${name}” comes from`;
  return (
    <button className="pv" type="button" title={label} aria-label={label} onClick={() => goTo(to)}>
      <MarkShape kind={kind} />
    </button>
  );
}
