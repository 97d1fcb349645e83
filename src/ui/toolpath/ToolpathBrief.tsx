import { useSession } from '../../store/session.ts';
import { useToolpaths } from '../../store/toolpaths.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { BRIEF_WORDS, TOOLPATH, wantedSaid } from '../text/toolpathText.ts';
import { useShown, useShownPlace, type ShownPlace } from './shown.ts';
import { useToolpathCheck } from './toolpathCheck.ts';
import { againstSpec, diameterSpec, sectionSpec, thickestSpec, type BriefOfToolpath } from './toolpathSpecs.ts';

function Section({ at, of }: { readonly at: ShownPlace; readonly of: BriefOfToolpath }) {
  const { judged, unit } = useShown();
  const joints = useSession((state) => state.part.joints);
  const { place, wanted } = at.judged;
  return (
    <>
      , section <Live spec={sectionSpec(judged, place)} stop="," /> held against{' '}
      <Live spec={againstSpec(place, joints, of)} stop="," /> {BRIEF_WORDS[wanted.from]}{' '}
      <span className="num">{wantedSaid(wanted, unit)}</span>
      {BRIEF_WORDS.noStarts}
    </>
  );
}

/** What is looked at and what it is held against, as a sentence with its values live in it. */
export function ToolpathBrief() {
  const { name, unit, toolpath } = useShown();
  const { values, change } = useToolpaths();
  const isSample = useToolpathCheck(({ standing }) => standing?.asked.isSample ?? false);
  const at = useShownPlace();
  const of: BriefOfToolpath = { values, unit, change };
  return (
    <section className="brief" aria-label="Brief">
      <Sentence className="check-says">
        <span className="fname">{name}</span>
        {isSample && ` (${TOOLPATH.invented})`}
        {at ? <Section at={at} of={of} /> : ','} from <Live spec={diameterSpec(of, toolpath.filament.diameter)} />{' '}
        filament; looked for is anything up to <Live spec={thickestSpec(of)} /> thick.
      </Sentence>
    </section>
  );
}
