import type { ProvenanceKind } from '../../core/material/types.ts';
import { MARK_SHAPES } from './markShapes.ts';

/** The bare drawing of a provenance mark, for keys and tables. */
export function MarkShape({ kind }: { kind: ProvenanceKind }) {
  const { width, path } = MARK_SHAPES[kind];
  return (
    <svg className="pvs" viewBox={`0 0 ${width} 12`} aria-hidden="true">
      <path d={path} />
    </svg>
  );
}
