import type { Assessment } from '../../../core/design/assessment.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { MARK_KINDS, MARK_SHAPES } from '../../app/markShapes.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { summaryFigures, SUMMARY } from '../../text/summaryText.ts';
import { sizesToDraw, travelToDraw, unitInFull } from '../../text/toDrawText.ts';
import { PaperMark } from './SummaryVerdict.tsx';

interface Props {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
}

/** The dimensions to draw, as they stand under Joints. */
export function DrawTable({ assessment, unit }: Props) {
  const rows = [...sizesToDraw(assessment, unit), ...travelToDraw(assessment, unit)];
  return (
    <section aria-label={SUMMARY.toDraw}>
      <h3>
        {SUMMARY.toDraw} <small>{unitInFull(unit)}</small>
      </h3>
      <table>
        <tbody>
          {rows.map(({ label, shown }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td className="r">{shown}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What the core says of the joint, each figure with its mark, and the key of the marks. */
export function FiguresTable({ assessment, unit }: Props) {
  return (
    <section aria-label={SUMMARY.figures}>
      <h3>{SUMMARY.figures}</h3>
      <table>
        <tbody>
          {summaryFigures(assessment, unit).map(({ name, text, mark }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td className="r">
                {text}
                {mark && <PaperMark kind={mark} />}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="summary-key" aria-label={SUMMARY.marks} role="note">
        {MARK_KINDS.map((kind) => (
          <span key={kind} className="nw">
            <MarkShape kind={kind} /> {MARK_SHAPES[kind].says}
          </span>
        ))}
      </p>
    </section>
  );
}
