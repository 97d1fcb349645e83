import { useToolpaths } from '../../store/toolpaths.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { CHECK, LOOK_UP_TO, morePassed } from '../text/checkText.ts';
import { passedOverText } from '../text/inspectText.ts';
import { lookedWords, TOOLPATH } from '../text/toolpathText.ts';
import { useShown } from './shown.ts';
import { thickestSpec } from './toolpathSpecs.ts';

/** So many are in sight, the others behind a word; one more is not worth it. */
const MOST = 6;

/** How thick to look for; another value looks through the file again. */
export function LookUpTo() {
  const { unit } = useShown();
  const { values, change } = useToolpaths();
  return (
    <Sentence className="look-up-to">
      {LOOK_UP_TO[0]} <Live spec={thickestSpec({ values, unit, change })} /> {LOOK_UP_TO[1]}
    </Sentence>
  );
}

function List({ some }: { readonly some: readonly string[] }) {
  return (
    <ul>
      {some.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

/** Thin, but no flexures. */
function Passed() {
  const { toolpath, unit } = useShown();
  const all = toolpath.passedOver.map((one) => passedOverText(one, unit));
  if (all.length === 0) return TOOLPATH.nothingPassed;
  const shown = all.length <= MOST + 1 ? all.length : MOST;
  return (
    <div className="passed">
      {TOOLPATH.passed(all.length)}
      <List some={all.slice(0, shown)} />
      {all.length > shown && (
        <details>
          <summary>{morePassed(all.length - shown)}</summary>
          <List some={all.slice(shown)} />
        </details>
      )}
    </div>
  );
}

/** By what rule layers, lines and thin sections were told, and what was passed over. */
export function ToolpathLooked() {
  const { toolpath, unit } = useShown();
  return (
    <section className="looked" aria-label={CHECK.looked}>
      <h2 className="h">
        {CHECK.looked}
        <span className="aside">{CHECK.lookedAside}</span>
      </h2>
      <ol>
        {lookedWords(toolpath, unit).map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>
          <Passed />
        </li>
      </ol>
    </section>
  );
}
