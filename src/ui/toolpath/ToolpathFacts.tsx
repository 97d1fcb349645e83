import { VerdictShape } from '../app/VerdictShape.tsx';
import { bytesText, CHECK } from '../text/checkText.ts';
import { grouped } from '../text/numbers.ts';
import { figureRows, textRows } from '../text/toolpathFactsText.ts';
import { badLineText, TOOLPATH } from '../text/toolpathText.ts';
import { useShown } from './shown.ts';

/** Lines that were not understood, each with its number and how it begins. */
function BadLines() {
  const { text } = useShown().toolpath;
  if (text.bad === 0) return null;
  const more = text.bad - text.badLines.length;
  return (
    <details className="bad-lines">
      <summary>
        <span className="caution">
          <VerdictShape grade="caution" />
        </span>
        {TOOLPATH.badLines}, {grouped(text.bad)}
      </summary>
      <ul>
        {text.badLines.map(({ line, text: begins, why }) => (
          <li key={line}>
            <span className="num">{grouped(line)}</span> <code>{begins}</code>
            <small>{badLineText(why)}</small>
          </li>
        ))}
        {more > 0 && <li>{TOOLPATH.moreBad(grouped(more))}</li>}
      </ul>
    </details>
  );
}

/** What the file holds, and what it comes to. */
export function ToolpathFacts() {
  const { toolpath, bytes, unit } = useShown();
  return (
    <section className="file" aria-label={CHECK.file}>
      <h2 className="h">
        {CHECK.file}
        <span className="aside">{bytesText(bytes)}</span>
      </h2>
      <table>
        <tbody>
          {[...figureRows(toolpath, unit), ...textRows(toolpath)].map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="r">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <BadLines />
    </section>
  );
}
