import type { ProvenanceKind } from '../../core/material/types.ts';
import { MarkShape } from './MarkShape.tsx';
import { MARK_SHAPES } from './markShapes.ts';

/** Takes the reader to the row that explains this kind of number; the row carries `id="source-<kind>"`. */
function goToSource(kind: ProvenanceKind): void {
  const row = document.getElementById(`source-${kind}`);
  if (row === null) return;
  row.tabIndex = -1;
  row.scrollIntoView({ block: 'center' });
  row.focus({ preventScroll: true });
}

/** Raised after a number or its unit: where the number comes from, and the way there. */
export function Mark({ kind }: { kind: ProvenanceKind }) {
  const label = `${MARK_SHAPES[kind].says}: see where the numbers come from`;
  return (
    <button className="pv" type="button" title={label} aria-label={label} onClick={() => goToSource(kind)}>
      <MarkShape kind={kind} />
    </button>
  );
}
