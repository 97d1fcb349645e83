import { useEffect, useMemo, useRef } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { useChoices } from '../../store/choices.ts';
import { useFinding } from '../../store/finding.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import '../charts/charts.css';
import { useChoosing } from '../joints/choosing.ts';
import '../joints/everyKind.ts';
import { carriedText, FIND, findFor, takeBackText } from '../text/findText.ts';
import { BriefOfSearch } from './BriefOfSearch.tsx';
import './find.css';
import './found.css';
import './why.css';
import { ProgressStrip } from './ProgressStrip.tsx';
import { Results } from './Results.tsx';
import { useSearch } from './useSearch.ts';

/** Looks for a joint that meets a brief; it opens with the brief of the joint that stands, and searches at once. */
export function Finder({ from }: { readonly from: Joint | undefined }) {
  const { brief, openFor } = useFinding();
  useEffect(() => openFor(from), [openFor, from]);
  return brief && <Open brief={brief.wanted} about={brief.about} />;
}

function Open({ brief: wanted, about }: { readonly brief: Wanted; readonly about: string }) {
  const { want, takeBack, earlier } = useFinding();
  const close = useChoosing((state) => state.close);
  const unit = useChoices((state) => state.unit);
  const search = useSearch(wanted);
  const head = useRef<HTMLHeadingElement>(null);
  const carried = useMemo(() => carriedText(wanted, unit), [wanted, unit]);
  const allow = (next: Wanted) => {
    want(next);
    // What was pressed goes with the misses.
    head.current?.focus();
  };
  // It has taken the place of what opened it.
  useEffect(() => head.current?.focus(), []);

  return (
    // Escape is heard from anything in it; what can be pressed are the fields and buttons inside.
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions
    <div className="whole find" onKeyDown={(event) => event.key === 'Escape' && !event.defaultPrevented && close(true)}>
      <div className="top">
        <h2 ref={head} tabIndex={-1}>
          {findFor(about)}
        </h2>
        {earlier && <QuietButton onClick={takeBack}>{takeBackText(earlier.about)}</QuietButton>}
        <QuietButton onClick={() => close(true)}>{FIND.back}</QuietButton>
      </div>
      <ProgressStrip search={search} />
      <BriefOfSearch wanted={wanted} unit={unit} problems={search.problems} onWant={want} />
      {carried !== '' && <p className="carried">{carried}</p>}
      <Results search={search} wanted={wanted} unit={unit} onWant={allow} />
    </div>
  );
}
