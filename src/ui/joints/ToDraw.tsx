import { useId, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import {
  asTabbed,
  outlineShows,
  outlineWaits,
  sizesToDraw,
  TO_DRAW,
  travelToDraw,
  unitInFull,
} from '../text/toDrawText.ts';
import { saveDxf, saveSvg } from './outlineFiles.ts';

interface Props {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
}

/** The dimensions to draw, to copy, and the outline as a file. */
export function ToDraw({ assessment, unit }: Props) {
  const [said, setSaid] = useState('');
  const waitsId = useId();
  const dimensions = [...sizesToDraw(assessment, unit), ...travelToDraw(assessment, unit)];
  const waits = outlineWaits(assessment, unit);
  const shows = outlineShows(assessment);

  function copy(): void {
    const text = asTabbed(assessment.joint.name, dimensions, unit);
    // A page that was not served safely has no clipboard at all.
    const done = (navigator.clipboard as Clipboard | undefined)?.writeText(text) ?? Promise.reject(new Error('none'));
    void done.then(
      () => setSaid(TO_DRAW.copied),
      () => setSaid(TO_DRAW.notCopied),
    );
  }

  function file(kind: string, save: (a: Assessment) => Promise<void>) {
    const off = waits !== '';
    return (
      <button
        className="b"
        type="button"
        aria-disabled={off ? true : undefined}
        aria-describedby={off ? waitsId : undefined}
        onClick={off ? undefined : () => void save(assessment).catch(() => setSaid(TO_DRAW.fileFailed))}
      >
        {kind}
      </button>
    );
  }

  return (
    <section aria-label={TO_DRAW.head}>
      <h2 className="h">
        {TO_DRAW.head}
        <span className="aside">{unitInFull(unit)}</span>
      </h2>
      <table>
        <tbody>
          {dimensions.map(({ label, shown }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td className="r">{shown}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="files">
        <button className="b" type="button" onClick={copy}>
          {TO_DRAW.copy}
        </button>
        {file('SVG', saveSvg)}
        {file('DXF', saveDxf)}
        <output>{said}</output>
      </div>
      {waits !== '' && (
        <p className="small" id={waitsId}>
          {waits}
        </p>
      )}
      {waits === '' && shows !== '' && <p className="small">{shows}</p>}
    </section>
  );
}
