import type { LaidFinding } from '../../core/inspect/toolpath/judgedPlace.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { SaidText } from '../joints/SaidText.tsx';
import { findingSaid } from '../text/toolpathFindingText.ts';
import { TOOLPATH } from '../text/toolpathText.ts';
import { gradeWord } from '../text/verdictText.ts';
import { bracketNumbers } from './brackets.ts';
import { chooseLayer, useShown, useShownPlace } from './shown.ts';

interface Props {
  readonly finding: LaidFinding;
  /** As beside its layers in the stave; absent where it has none there. */
  readonly number: number | undefined;
}

function Finding({ finding, number }: Props) {
  const { unit } = useShown();
  const at = useShownPlace();
  if (!at) return null;
  const { said, more } = findingSaid(finding, at.judged, unit);
  const first = finding.layers[0]?.[0];
  const show = first === undefined ? undefined : () => chooseLayer(first);
  return (
    <li>
      <span className={finding.grade}>
        <VerdictShape grade={finding.grade} />
        <span className="vh">{gradeWord(finding.grade)}: </span>
      </span>
      <p>
        {number !== undefined && <span className="num no">{number}</span>}
        <SaidText said={said} />
      </p>
      <small>
        {more}{' '}
        {show && finding.grade !== 'pass' && (
          <button type="button" className="b quiet see" onClick={show}>
            {TOOLPATH.see(first ?? 1)}
          </button>
        )}
      </small>
    </li>
  );
}

/** What was found of the section that is looked at, worst first. */
export function LaidFindings() {
  const at = useShownPlace();
  if (!at) return null;
  const { findings } = at.judged;
  const numbers = bracketNumbers(findings);
  return (
    <section className="laid-found" aria-label={TOOLPATH.findings}>
      <h2 className="h">
        {TOOLPATH.findings}
        <span className="aside">{TOOLPATH.findingsAside}</span>
      </h2>
      <ol className="laid-list">
        {findings.map((finding) => (
          <Finding key={finding.kind} finding={finding} number={numbers.get(finding)} />
        ))}
      </ol>
    </section>
  );
}
