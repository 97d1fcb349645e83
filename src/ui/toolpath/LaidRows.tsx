import { VerdictShape } from '../app/VerdictShape.tsx';
import { TOOLPATH } from '../text/toolpathText.ts';
import { laidText, rowName, wantedText } from '../text/toolpathChangeText.ts';
import { gradeWord } from '../text/verdictText.ts';
import { useShown, useShownPlace } from './shown.ts';

/** What is wanted beside what is laid. */
export function LaidRows() {
  const { unit } = useShown();
  const at = useShownPlace();
  if (!at) return null;
  const { judged } = at;
  return (
    <section className="laid-rows" aria-label={TOOLPATH.rows}>
      <h2 className="h">
        {TOOLPATH.rows}
        <span className="aside">{unit === 'mm' ? 'lengths in mm' : 'lengths in inch'}</span>
      </h2>
      <table>
        <thead>
          <tr>
            <th scope="col">
              <span className="vh">{TOOLPATH.what}</span>
            </th>
            <th scope="col" className="r">
              {TOOLPATH.wanted}
            </th>
            <th scope="col" className="r">
              {TOOLPATH.laid}
            </th>
            <th scope="col" className="r">
              <span className="vh">{TOOLPATH.verdict}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {judged.rows.map((row) => (
            <tr key={row.what}>
              <th scope="row">{rowName(row, judged, unit)}</th>
              <td className="r">{wantedText(row, judged, unit)}</td>
              <td className="r">
                <b>{laidText(row, judged, unit)}</b>
              </td>
              <td className="r">
                <span className={`st ${row.grade}`}>
                  <VerdictShape grade={row.grade} />
                  {gradeWord(row.grade)}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
