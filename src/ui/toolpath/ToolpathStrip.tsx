import { useEffect, useRef, type KeyboardEvent } from 'react';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { DropCell } from '../check/DropCell.tsx';
import { useInSight } from '../joints/useInSight.ts';
import { laidShort, placeName, TOOLPATH, TOOLPATH_CHOOSER } from '../text/toolpathText.ts';
import { gradeWord } from '../text/verdictText.ts';
import { SectionGlyph } from './SectionGlyph.tsx';
import { lookAt } from './lookAt.ts';
import { useShown, useShownPlace } from './shown.ts';

function Cell({ judged, isOn }: { readonly judged: JudgedPlace; readonly isOn: boolean }) {
  const { unit, judged: all } = useShown();
  const { place, grade, audit } = judged;
  const cell = useInSight<HTMLLIElement>(isOn);
  return (
    <li className="jt" ref={cell}>
      <button
        type="button"
        data-number={place.number}
        aria-current={isOn ? 'true' : undefined}
        tabIndex={isOn ? 0 : -1}
        onClick={() => lookAt(all, place.number)}
      >
        <span className="n">
          {place.number}
          <span className="vh">{placeName(place).slice(String(place.number).length)}</span>
        </span>
        <span className="room">
          <SectionGlyph audit={audit} />
        </span>
        <b>{laidShort(judged, unit)}</b>
        <span className={`st ${grade}`}>
          <VerdictShape grade={grade} />
          {gradeWord(grade)}
          {place.from === 'drawn' && ', your box'}
        </span>
      </button>
    </li>
  );
}

/** Left and right walk the thin sections, Home and End go to the ends. */
function walked({ key }: KeyboardEvent, numbers: readonly number[], chosen: number): number | undefined {
  const at = Math.max(0, numbers.indexOf(chosen));
  const to = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: numbers.length - 1 }[key];
  return to === undefined ? undefined : numbers[Math.min(Math.max(to, 0), numbers.length - 1)];
}

/** The thin sections side by side, and where another file is dropped. */
export function ToolpathStrip() {
  const { judged } = useShown();
  const chosen = useShownPlace()?.judged.place.number ?? 0;
  const list = useRef<HTMLOListElement>(null);
  const moved = useRef(false);
  // The keys move what is chosen, and the focus goes with it.
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    list.current?.querySelector<HTMLElement>(`[data-number="${chosen}"]`)?.focus();
  }, [chosen]);
  const onKeyDown = (event: KeyboardEvent) => {
    const numbers = judged.map(({ place }) => place.number);
    const next = walked(event, numbers, chosen);
    if (next === undefined) return;
    event.preventDefault();
    moved.current = next !== chosen;
    lookAt(judged, next);
  };
  return (
    <nav className="strip of-part" aria-label={TOOLPATH.strip}>
      {judged.length > 0 && (
        // The buttons inside are what is pressed; the list only hears the keys that walk from one to the next.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
        <ol ref={list} onKeyDown={onKeyDown}>
          {judged.map((one) => (
            <Cell key={one.place.number} judged={one} isOn={one.place.number === chosen} />
          ))}
        </ol>
      )}
      <DropCell chooser={TOOLPATH_CHOOSER} />
    </nav>
  );
}
