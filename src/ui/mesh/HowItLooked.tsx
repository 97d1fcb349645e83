import { useChecking } from '../../store/checking.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { passedOverText } from '../text/inspectText.ts';
import { cutText, LOOK_UP_TO, lookedText, MESH, morePassed } from '../text/meshText.ts';
import { useChecked } from './checked.ts';
import { partValueSpec, type BriefOfPart } from './meshSpecs.ts';
import { lookUpTo } from './partCheck.ts';

/** More than this is only counted. */
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

/** By what rule thin sections were told from others, and what was passed over. */
export function HowItLooked() {
  const { part, groups, unit } = useChecked();
  const { findings, thickest } = part;
  const { passedOver, flexures } = findings;
  return (
    <section className="looked" aria-label={MESH.looked}>
      <h2 className="h">
        {MESH.looked}
        <span className="aside">{MESH.lookedAside}</span>
      </h2>
      <ol>
        {lookedText(thickest, flexures.length, groups.length, unit).map((text) => (
          <li key={text}>{text}</li>
        ))}
        {findings.isCut && <li className="caution">{cutText()}</li>}
        <li>
          {passedOver.length === 0 ? MESH.nonePassed : MESH.passed(passedOver.length)}
          {passedOver.length > 0 && (
            <ul>
              {passedOver.slice(0, MOST).map((one) => (
                <li key={`${one.at.x} ${one.at.y} ${one.at.z}`}>{passedOverText(one, unit)}</li>
              ))}
              {passedOver.length > MOST && <li>{morePassed(passedOver.length - MOST)}</li>}
            </ul>
          )}
        </li>
      </ol>
      <LookUpTo />
    </section>
  );
}
