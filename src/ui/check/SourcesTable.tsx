import type { ProvenanceKind } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import { CHECK } from '../text/checkText.ts';
import type { About } from '../text/said.ts';

interface Row {
  readonly about?: About;
  readonly kind: ProvenanceKind;
  readonly name: string;
  readonly says: string;
}

/** Where the figures of the sheet come from: a mark beside one leads here. */
export function SourcesTable({ rows }: { readonly rows: readonly Row[] }) {
  return (
    <section className="from" aria-label={CHECK.sources}>
      <h2 className="h">{CHECK.sources}</h2>
      <table className="sources">
        <tbody>
          {rows.map(({ about, kind, name, says }) => (
            <tr key={name} data-about={about} data-kind={kind}>
              <td className="m">
                <MarkShape kind={kind} />
                <span className="vh">{MARK_SHAPES[kind].says}</span>
              </td>
              <td>
                {name}
                <small>{says}</small>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
