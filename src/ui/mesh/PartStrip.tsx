import { useEffect, useRef, type KeyboardEvent } from 'react';
import { gradeOf } from '../../core/inspect/verdicts.ts';
import { lengthFigure } from '../text/numbers.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { usePxPerMm } from '../drawing/usePxPerMm.ts';
import { useInSight } from '../joints/useInSight.ts';
import type { Judged } from '../../core/inspect/judged.ts';
import { landingCount } from '../text/inspectText.ts';
import { DropCell } from '../check/DropCell.tsx';
import { MESH, MESH_CHOOSER } from '../text/meshText.ts';
import { shortVerdict } from '../text/partVerdictText.ts';
import { sectionOf, useChecked } from './checked.ts';
import { choose } from './partCheck.ts';
import { SilhouetteOf } from './SilhouetteOf.tsx';
import { walk } from './walk.ts';

function Cell({ judged, pxPerMm }: { readonly judged: Judged; readonly pxPerMm: number }) {
  const checked = useChecked();
  const { values, unit, chosen } = checked;
  const { number, thickness } = judged.flexure;
  const isOn = number === chosen;
  const cell = useInSight<HTMLLIElement>(isOn);
  const section = sectionOf(checked, judged);
  const grade = gradeOf(judged);
  const { scale, up } = values.as;
  return (
    <li className="jt" ref={cell}>
      <button
        type="button"
        data-number={number}
        aria-current={isOn ? 'true' : undefined}
        tabIndex={isOn ? 0 : -1}
        onClick={() => choose(number)}
      >
        <span className="n">{number}</span>
        <span className="room">{section && <SilhouetteOf {...{ judged, section, up, scale, pxPerMm }} />}</span>
        <b>
          {lengthFigure(scale * thickness.least, unit)}, {landingCount(judged.landing)}
        </b>
        <span className={`st ${grade}`}>
          <VerdictShape grade={grade} />
          {shortVerdict(judged)}
        </span>
      </button>
    </li>
  );
}

/** The thin sections side by side at true size, and where another file is dropped. */
export function PartStrip() {
  const { judged, chosen } = useChecked();
  const [pxPerMm] = usePxPerMm();
  const list = useRef<HTMLOListElement>(null);
  const moved = useRef(false);
  // The keys move what is chosen, and the focus goes with it.
  useEffect(() => {
    if (!moved.current) return;
    moved.current = false;
    list.current?.querySelector<HTMLElement>(`[data-number="${chosen}"]`)?.focus();
  }, [chosen]);
  const onKeyDown = (event: KeyboardEvent) => {
    moved.current = walk(
      event,
      judged.map(({ flexure }) => flexure.number),
      chosen,
    );
  };
  return (
    <nav className="strip of-part" aria-label={MESH.strip}>
      {judged.length > 0 && (
        // The buttons inside are what is pressed; the list only hears the keys that walk from one to the next.
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
        <ol ref={list} onKeyDown={onKeyDown}>
          {judged.map((one) => (
            <Cell key={one.flexure.number} judged={one} pxPerMm={pxPerMm} />
          ))}
        </ol>
      )}
      <DropCell chooser={MESH_CHOOSER} />
    </nav>
  );
}
