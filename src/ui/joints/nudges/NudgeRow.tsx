import type { Assessment } from '../../../core/design/assessment.ts';
import { movedFigures, NUDGE_FIGURES, type MovedFigures, type NudgeFigure } from '../../../core/design/nudgeFigures.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { changeText, FIGURE_HEADS, figureText, LARGEST, NUDGE_HEADS, SAME } from '../../text/nudgeText.ts';
import { gradeWord } from '../../text/verdictText.ts';

interface Props {
  readonly name: string;
  readonly assessment: Assessment;
  /** Left out of the joint as it is. */
  readonly moved?: MovedFigures;
  /** Whether a figure changes by more than in any other row. */
  readonly isLargest?: (figure: NudgeFigure) => boolean;
  readonly unit: LengthUnit;
}

/** A joint with a small change, or as it is: its figures, and under each by how much it changes. */
export function NudgeRow({ name, assessment: a, moved, isLargest, unit }: Props) {
  const { measure } = a.drive;
  const { grade } = a.verdict;
  const shown = moved ?? movedFigures(a, a);
  return (
    <tr>
      <th scope="row">{name}</th>
      {NUDGE_FIGURES.map((figure) => {
        const by = changeText(figure, moved?.[figure], measure, unit);
        const most = by !== SAME && (isLargest?.(figure) ?? false);
        return (
          <td key={figure} data-head={FIGURE_HEADS[figure]}>
            {figureText(figure, shown[figure], measure, unit)}
            {moved && (
              <small className={most ? 'most' : undefined}>
                {by}
                {most && <span className="vh">{LARGEST}</span>}
              </small>
            )}
          </td>
        );
      })}
      <td data-head={NUDGE_HEADS.verdict} className={`word ${grade}`}>
        <VerdictShape grade={grade} /> {gradeWord(grade)}
      </td>
    </tr>
  );
}
