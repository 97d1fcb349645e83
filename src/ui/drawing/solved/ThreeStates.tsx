import { memo, useMemo } from 'react';
import { feltEffort } from '../../../core/design/feltEffort.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { percent } from '../../text/numbers.ts';
import { markedEffort, markedTitle } from '../../text/solvedDrawingText.ts';
import { scaleText, SCALES } from '../sheet.ts';
import { readingOf } from './reading.ts';
import type { SolvedLayout } from './solvedLayout.ts';
import { StatePicture } from './StatePicture.tsx';
import { stateAt } from './state.ts';
import { boundsOf, edgesIn } from './swept.ts';

interface Props {
  readonly layout: SolvedLayout;
  readonly width: number;
  readonly unit: LengthUnit;
}

const GAP = 12;
/** The states that are shown, in the order in which they are met. */
const SHOWN = ['snap', 'balanced', 'rest'];
const TALLEST = 230;

/** A joint that snaps, in the states that matter: just before it does, balanced, and at rest again. */
export const ThreeStates = memo(function ThreeStates({ layout, width, unit }: Props) {
  const { scene, travelled, sheet, legend } = layout;
  const { a } = scene;
  const { measure } = a.drive;
  const states = useMemo(
    () =>
      travelled.marks
        .filter(({ kind }) => SHOWN.includes(kind))
        .map((mark) => ({ mark, state: stateAt(scene.solved, mark.amount) })),
    [scene, travelled],
  );
  const swept = useMemo(
    () => boundsOf([scene.rest, ...states.map(({ state }) => state)].flatMap((state) => edgesIn(scene, state))),
    [scene, states],
  );
  if (states.length === 0) return null;
  const each = sheet.small ? width : Math.floor((width - GAP * 2) / 3);
  const nominal = sheet.pxPerMm / sheet.scale;
  const fits = (scale: number) =>
    (swept.right - swept.left) * scale * nominal <= each - 4 && (swept.top - swept.bottom) * scale * nominal <= TALLEST;
  const scale = SCALES.find((one) => one <= 2 && fits(one)) ?? SCALES.at(-1)!;
  const back = travelled.marks.find(({ kind }) => kind === 'return');
  const pull = back && feltEffort(a, back);
  return (
    <>
      <p className="cap states-head">
        <span>
          <b>States</b> of Fig. 1, scale <b className="nw">{scaleText(scale)}</b>
        </span>
        <span>dashed: as printed</span>
      </p>
      <div className="states">
        {states.map(({ mark: { kind, amount, effort }, state }) => (
          <figure key={kind} style={{ width: each }}>
            <StatePicture {...{ scene, state, swept, scale, nominal }} stops={legend} width={each} />
            <figcaption>
              <b>{markedTitle(kind, amount, measure, unit)}</b>
              <br />
              {markedEffort(kind, feltEffort(a, { amount, effort }), pull, measure)}; strain{' '}
              {percent(readingOf(a, state).strain)}
            </figcaption>
          </figure>
        ))}
      </div>
    </>
  );
});
