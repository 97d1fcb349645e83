import '../joints/foot.css';
import type { ReactNode } from 'react';
import type { Anchor } from '../../core/material/evidence.ts';
import type { ProvenanceKind, WholeFilament } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { STANDS_ON, standsOn, type StandsRow } from '../text/filamentCurveText.ts';
import { asInText } from '../text/filamentText.ts';
import { kindWords } from '../text/filamentValueText.ts';
import { placeId } from './JumpMark.tsx';

/** One thing that a curve stands on, after the mark of its kind. */
export function StandsLine({ kind, children }: { readonly kind: ProvenanceKind; readonly children: ReactNode }) {
  return (
    <tr>
      <td className="m">
        <MarkShape kind={kind} />
        <span className="vh">{kindWords(kind)}</span>
      </td>
      <td>{children}</td>
    </tr>
  );
}

/** What is known of it; the documents behind it. */
export function Stands({ row: { head, more, full } }: { readonly row: StandsRow }) {
  const says = (
    <>
      {head}
      {more !== '' && <small>{more}</small>}
    </>
  );
  if (full.length === 0) return says;
  return (
    <details>
      <summary>{says}</summary>
      {full.map((document) => (
        <small className="full" key={document}>
          {document}
        </small>
      ))}
    </details>
  );
}

interface Props {
  readonly row: WholeFilament;
  readonly anchors: readonly Anchor[];
  /** Lines before all others. */
  readonly first?: ReactNode;
  readonly renderRow?: (row: StandsRow) => ReactNode;
}

/** Every point and every judgement that the curve stands on, each with its kind and its document. */
export function StandsOn({ row, anchors, first, renderRow = (one) => <Stands row={one} /> }: Props) {
  return (
    <section className="stands-on" aria-label={STANDS_ON} id={placeId('life')} tabIndex={-1}>
      <h2 className="h">
        {STANDS_ON}
        <span className="aside">{asInText(row)}</span>
      </h2>
      <table className="sources">
        <tbody>
          {first}
          {standsOn(row, anchors).map((one) => (
            <StandsLine key={one.key} kind={one.kind}>
              {renderRow(one)}
            </StandsLine>
          ))}
        </tbody>
      </table>
    </section>
  );
}
