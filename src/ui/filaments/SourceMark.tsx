import type { KeyboardEvent } from 'react';
import type { ProvenanceKind } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { kindWords } from '../text/filamentValueText.ts';

interface Props {
  readonly kind: ProvenanceKind;
  /** “the stiffness of PETG”. */
  readonly of: string;
  readonly open: boolean;
  /** The note that it opens. */
  readonly controls: string;
  readonly onToggle: () => void;
  /** Reached by the arrow keys of its table instead of by Tab. */
  readonly inTable?: boolean;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}

/** Raised after a number: where it comes from, opened in place. */
export function SourceMark({ kind, of, open, controls, onToggle, inTable = false, onKeyDown }: Props) {
  const label = `${kindWords(kind)}: where ${of} comes from`;
  return (
    <button
      className="pv"
      type="button"
      title={label}
      aria-label={label}
      aria-expanded={open}
      aria-controls={open ? controls : undefined}
      tabIndex={inTable ? -1 : undefined}
      onClick={onToggle}
      onKeyDown={onKeyDown}
    >
      <MarkShape kind={kind} />
    </button>
  );
}
