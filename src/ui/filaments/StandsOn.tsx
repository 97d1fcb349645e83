import '../joints/foot.css';
import { EVIDENCE, type Anchor } from '../../core/material/evidence.ts';
import type { RowId, WholeFilament } from '../../core/material/types.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { kindWords } from '../text/filamentValueText.ts';
import { standsOn } from '../text/filamentText.ts';

/** What the curve of a row of the table was set by; of an own row only what the row itself says. */
export function anchorsOf(row: WholeFilament): readonly Anchor[] {
  return EVIDENCE[row.id as RowId] ?? [];
}

/** Every point and every judgement that the curve stands on, each with its kind and its document. */
export function StandsOn({ row }: { readonly row: WholeFilament }) {
  return (
    <section className="stands-on" aria-label="What the curve stands on">
      <h2 className="h">What the curve stands on</h2>
      <table className="sources">
        <tbody>
          {standsOn(row, anchorsOf(row)).map(({ key, kind, head, more, full }) => (
            <tr key={key}>
              <td className="m">
                <MarkShape kind={kind} />
                <span className="vh">{kindWords(kind)}</span>
              </td>
              <td>
                {full.length === 0 ? (
                  <>
                    {head}
                    <small>{more}</small>
                  </>
                ) : (
                  <details>
                    <summary>
                      {head}
                      <small>{more}</small>
                    </summary>
                    {full.map((document) => (
                      <small className="full" key={document}>
                        {document}
                      </small>
                    ))}
                  </details>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
