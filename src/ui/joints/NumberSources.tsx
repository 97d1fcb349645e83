import type { Assessment } from '../../core/design/assessment.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import type { SourceRow } from '../text/sourceRow.ts';
import { sourceRows } from '../text/sourceText.ts';

/** What it is in a line; the document and its place behind it. */
function Source({ row }: { readonly row: SourceRow }) {
  const { name, says, more } = row;
  if (more.length === 0) {
    return (
      <>
        {name}
        <small>{says}</small>
      </>
    );
  }
  return (
    <details>
      <summary>
        {name}
        <small>{says}</small>
      </summary>
      <small className="full">{more.join(' ')}</small>
    </details>
  );
}

/** Every number behind the joint, with its kind of source. A mark beside a figure leads to the row about it, else to the first of its kind. */
export function NumberSources({ assessment }: { readonly assessment: Assessment }) {
  const rows = sourceRows(assessment);
  return (
    <section aria-label="Where the numbers come from">
      <h2 className="h">
        Where the numbers come from
        <span className="aside">open a row for its source</span>
      </h2>
      <table className="sources">
        <tbody>
          {rows.map((row) => (
            <tr key={row.name} data-about={row.about} data-kind={row.kind}>
              <td className="m">
                <MarkShape kind={row.kind} />
                <span className="vh">{MARK_SHAPES[row.kind].says}</span>
              </td>
              <td>
                <Source row={row} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
