import { TOOLPATH } from '../text/toolpathText.ts';
import { changeSaid } from '../text/toolpathChangeText.ts';
import { useShown, useShownPlace } from './shown.ts';

/** What to change in the drawing or in what wrote the file, and what that costs. */
export function LaidChanges() {
  const { unit } = useShown();
  const at = useShownPlace();
  if (!at) return null;
  const { judged } = at;
  return (
    <section className="laid-changes" aria-label={TOOLPATH.changes}>
      <h2 className="h">
        {TOOLPATH.changes}
        <span className="aside">{judged.changes.length > 0 && TOOLPATH.changesAside}</span>
      </h2>
      {judged.changes.length === 0 && <p className="none">{TOOLPATH.noneToChange}</p>}
      <ol>
        {judged.changes.map((change, i) => {
          const { head, does, costs } = changeSaid(change, judged, unit);
          return (
            <li key={change.kind}>
              <span className="rank">{i + 1}</span>
              <b>{head}</b>
              <small>
                {does} <span className="costs">{costs}</span>
              </small>
            </li>
          );
        })}
      </ol>
    </section>
  );
}
