import { useChecking } from '../../store/checking.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { passedName, passedOverText } from '../text/inspectText.ts';
import { CHECK, LOOK_UP_TO, morePassed } from '../text/checkText.ts';
import { cutText, lookedText, MESH } from '../text/meshText.ts';
import type { PassedOver } from '../../core/inspect/flexure.ts';
import { BalloonSign } from './Balloon.tsx';
import { useChecked } from './checked.ts';
import { partValueSpec, type BriefOfPart } from './meshSpecs.ts';
import { lookUpTo, pointAt, usePartCheck } from './partCheck.ts';

/** So many are in sight, the others behind a word; one more is not worth it. */
const MOST = 6;

/** How thick to look for; another value looks through the file again. */
export function LookUpTo() {
  const { values, unit } = useChecked();
  const change = useChecking((state) => state.change);
  const of: BriefOfPart = {
    values,
    unit,
    change: (next, said, gesture) => {
      change(next, said, gesture);
      lookUpTo(next.thickest);
    },
  };
  return (
    <Sentence className="look-up-to">
      {LOOK_UP_TO[0]} <Live spec={partValueSpec('thickest', of)} /> {LOOK_UP_TO[1]}
    </Sentence>
  );
}

function show(index: number): void {
  pointAt(index);
  document.querySelector('.part-picture')?.scrollIntoView({ block: 'nearest' });
}

function List({ some, from }: { readonly some: readonly PassedOver[]; readonly from: number }) {
  const { unit } = useChecked();
  const pointed = usePartCheck((state) => state.pointed);
  return (
    <ul>
      {some.map((one, i) => (
        <li key={`${one.at.x} ${one.at.y} ${one.at.z}`}>
          <button type="button" aria-pressed={pointed === from + i} onClick={() => show(from + i)}>
            <BalloonSign text={passedName(from + i)} isOn={pointed === from + i} isPassed />
            <span>{passedOverText(one, unit)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function Passed({ all }: { readonly all: readonly PassedOver[] }) {
  const shown = all.length <= MOST + 1 ? all.length : MOST;
  return (
    <div className="passed">
      {MESH.passed(all.length)}
      <List some={all.slice(0, shown)} from={0} />
      {all.length > shown && (
        <details>
          <summary>{morePassed(all.length - shown)}</summary>
          <List some={all.slice(shown)} from={shown} />
        </details>
      )}
    </div>
  );
}

/** By what rule thin sections were told from others, and what was passed over. */
export function HowItLooked() {
  const { part, groups, unit } = useChecked();
  const { findings, thickest } = part;
  const { passedOver, flexures } = findings;
  return (
    <section className="looked" aria-label={CHECK.looked}>
      <h2 className="h">
        {CHECK.looked}
        <span className="aside">{CHECK.lookedAside}</span>
      </h2>
      <ol>
        {lookedText(thickest, flexures.length, groups.length, unit).map((text) => (
          <li key={text}>{text}</li>
        ))}
        {findings.isCut && <li className="caution">{cutText()}</li>}
        <li>{passedOver.length === 0 ? MESH.nonePassed : <Passed all={passedOver} />}</li>
      </ol>
      <LookUpTo />
    </section>
  );
}
