import type { Assessment } from '../../core/design/assessment.ts';
import { scaleToWhole } from '../../core/design/scalePart.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { SCALING_HEAD, SCALING_HEAD_LAYERS, SCALING_SAYS, scalingColumns, scalingRow } from '../text/scalingText.ts';

/** For a measured section: what scaling the part to whole lines does, and that it does nothing to the strain. */
export function ScalingTable({ assessment, unit }: { readonly assessment: Assessment; readonly unit: LengthUnit }) {
  const { measure } = assessment.drive;
  const lines = assessment.section.countOf === 'lines';
  const heading = lines ? SCALING_HEAD : SCALING_HEAD_LAYERS;
  return (
    <section className="scaling" aria-label={heading}>
      <h2 className="h">{heading}</h2>
      <table>
        <thead>
          <tr>
            {scalingColumns(measure).map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {scaleToWhole(assessment).map((row) => {
            const [count = '', ...cells] = scalingRow(row, lines ? 'line' : 'layer', unit);
            return (
              <tr key={row.count}>
                <th scope="row">{count}</th>
                {cells.map((cell, at) => (
                  <td key={at}>{cell}</td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="none">{SCALING_SAYS[measure]}</p>
    </section>
  );
}
