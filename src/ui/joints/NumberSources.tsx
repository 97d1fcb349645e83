import type { Assessment } from '../../core/design/assessment.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import { sourceRows } from '../text/sourceText.ts';

/** Every number behind the joint, with its kind of source. A mark beside a figure leads to the first row of its kind. */
export function NumberSources({ assessment }: { readonly assessment: Assessment }) {
  const rows = sourceRows(assessment);
  return (
    <section aria-label="Where the numbers come from">
      <h2 className="h">Where the numbers come from</h2>
      <table className="sources">
        <tbody>
          {rows.map(({ kind, name, says }, at) => {
            const isFirst = rows.findIndex((row) => row.kind === kind) === at;
            return (
              <tr key={name} id={isFirst ? `source-${kind}` : undefined}>
                <td className="m">
                  <MarkShape kind={kind} />
                  <span className="vh">{MARK_SHAPES[kind].says}</span>
                </td>
                <td>
                  {name}
                  <small>{says}</small>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
