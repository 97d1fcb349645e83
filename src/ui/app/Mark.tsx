import type { ProvenanceKind } from '../../core/material/types.ts';
import type { About } from '../text/said.ts';
import { MarkShape } from './MarkShape.tsx';
import { MARK_SHAPES } from './markShapes.ts';

/** Takes the reader to the row that tells of this number, else to the first of its kind. */
function goToSource(kind: ProvenanceKind, about: About | undefined): void {
  const row =
    document.querySelector<HTMLElement>(`[data-about=${about}]`) ??
    document.querySelector<HTMLElement>(`[data-kind=${kind}]`);
  if (row === null) return;
  row.tabIndex = -1;
  row.scrollIntoView({ block: 'center' });
  row.focus({ preventScroll: true });
}

/** Raised after a number or its unit: where the number comes from, and the way there. */
export function Mark({ kind, about }: { kind: ProvenanceKind; about?: About | undefined }) {
  const label = `${MARK_SHAPES[kind].says}: see where the numbers come from`;
  return (
    <button className="pv" type="button" title={label} aria-label={label} onClick={() => goToSource(kind, about)}>
      <MarkShape kind={kind} />
    </button>
  );
}
