import { useMemo } from 'react';
import '../../charts/solved/solved.css';
import '../../drawing/solved/solved.css';
import type { Joint } from '../../../core/design/joint.ts';
import { LETTERS } from '../../../core/lesson/demos/demo.ts';
import { useChoices } from '../../../store/choices.ts';
import { scaleText } from '../../drawing/sheet.ts';
import { usePxPerMm } from '../../drawing/usePxPerMm.ts';
import { useWidth } from '../../drawing/useWidth.ts';
import { COMPARE } from '../../text/compareText.ts';
import { brokenOffText } from '../../text/solverText.ts';
import { Scrolled } from '../../tests/pages/Scrolled.tsx';
import { useDemoAnswers } from '../demos/useDemoAnswers.ts';
import { holdsSame, useSame } from '../demos/useSame.ts';
import { filmOf, reachOfFilm } from '../picture.ts';
import { shifted } from './chosen.ts';
import { columnsOf } from './columns.ts';
import { ComparedPicture } from './ComparedPicture.tsx';
import { CompareHead } from './CompareHead.tsx';
import { ComparePlots } from './ComparePlots.tsx';
import { CompareTable } from './CompareTable.tsx';

interface Props {
  readonly joints: readonly Joint[];
  readonly onOrder: (ids: readonly string[]) => void;
}

/** Room for the names of rows, and the least for a joint [px]. */
const NAMES = 132;
const LEAST = 190;

const letter = (at: number) => LETTERS[at] ?? 'A';

/** Joints side by side: pictures at one scale, figures in one table, curves on the same axes. */
export function Compared({ joints: asked, onOrder }: Props) {
  const joints = useSame(asked, holdsSame);
  const unit = useChoices((state) => state.unit);
  const [place, width] = useWidth<HTMLDivElement>();
  const [nominal] = usePxPerMm();
  const { answers, drawn, isWorking, trouble } = useDemoAnswers(joints);
  const seen = useSame(drawn, holdsSame);
  const films = useMemo(() => seen.map((a) => a && filmOf(a)), [seen]);
  const column = Math.floor(Math.max(LEAST, (width - NAMES) / joints.length)) - 12;
  const { scale, sheets } = useMemo(
    () =>
      columnsOf(
        films.map((film) => film && reachOfFilm(film)),
        column,
        nominal,
      ),
    [films, column, nominal],
  );
  const ids = joints.map(({ id }) => id);
  const known = answers.flatMap((answer, i) => (answer.ok ? [{ letter: letter(i), a: answer.value }] : []));
  return (
    <>
      <div ref={place} aria-busy={isWorking}>
        {trouble !== undefined && (
          <p className="refusal" role="alert">
            {brokenOffText(trouble)}
          </p>
        )}
        <Scrolled className="compare-columns" label={COMPARE.title}>
          <CompareTable
            {...{ joints, answers, unit }}
            scale={
              <>
                {COMPARE.scale} <b className="nw">{scaleText(scale)}</b>; {COMPARE.atRest}
              </>
            }
            heads={joints.map((joint, i) => (
              <CompareHead
                key={joint.id}
                letter={letter(i)}
                joint={joint}
                isFirst={i === 0}
                isLast={i === joints.length - 1}
                onShift={(by) => onOrder(shifted(ids, i, by))}
              />
            ))}
            pictures={joints.map(({ id, name }, i) => {
              const sheet = sheets[i];
              return sheet && <ComparedPicture key={id} letter={letter(i)} name={name} film={films[i]} sheet={sheet} />;
            })}
          />
        </Scrolled>
      </div>
      <ComparePlots all={known} unit={unit} />
    </>
  );
}
