import type { ProvenanceKind } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { kindWords, PROPERTIES, type Property } from '../text/filamentValueText.ts';

/** Of the row of a property in the table of every number. */
export function numberRowId(property: Property): string {
  return `number-${property}`;
}

function goTo(property: Property): void {
  const row = document.getElementById(numberRowId(property));
  if (row === null) return;
  row.scrollIntoView({ block: 'center' });
  row.focus({ preventScroll: true });
}

/** Raised after a number: the way to its row in the table, where its source stands. */
export function JumpMark({ kind, to }: { readonly kind: ProvenanceKind; readonly to: Property }) {
  const label = `${kindWords(kind)}: where “${PROPERTIES[to].name}” comes from`;
  return (
    <button className="pv" type="button" title={label} aria-label={label} onClick={() => goTo(to)}>
      <MarkShape kind={kind} />
    </button>
  );
}
