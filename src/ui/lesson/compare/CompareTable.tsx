import type { ReactNode } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { Result } from '../../../core/result.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { COMPARE, COMPARE_ROWS, timesFirst, type CompareRow } from '../../text/compareText.ts';
import type { LengthUnit } from '../../text/numbers.ts';

interface Props {
  readonly joints: readonly Joint[];
  readonly answers: readonly Result<Assessment>[];
  readonly unit: LengthUnit;
  readonly heads: readonly ReactNode[];
  readonly pictures: readonly ReactNode[];
  /** Said beside the pictures. */
  readonly scale: ReactNode;
}

function Cell({
  row,
  answer,
  first,
  unit,
}: {
  readonly row: CompareRow;
  readonly answer: Result<Assessment>;
  readonly first: Assessment | undefined;
  readonly unit: LengthUnit;
}) {
  if (!answer.ok) return <td className="refused">{row === COMPARE_ROWS[0] ? answer.problems[0].message : ''}</td>;
  const a = answer.value;
  const times = first && first !== a ? timesFirst(row, first, a) : '';
  return (
    <td>
      {row === COMPARE_ROWS[0] && <VerdictShape grade={a.verdict.grade} />}
      {row.says(a, unit)}
      {times !== '' && (
        <small>
          {times}
          <span className="vh"> {COMPARE.times}</span>
        </small>
      )}
    </td>
  );
}

/** Pictures and figures, a column for each joint. */
export function CompareTable({ joints, answers, unit, heads, pictures, scale }: Props) {
  const [head] = answers;
  const first = head?.ok ? head.value : undefined;
  return (
    <table className="compare-table">
      <caption className="vh">{COMPARE.figures}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="vh">{COMPARE.rows}</span>
          </th>
          {joints.map(({ id }, i) => (
            <th key={id} scope="col">
              {heads[i]}
            </th>
          ))}
        </tr>
        <tr className="pictured">
          <td>{scale}</td>
          {joints.map(({ id }, i) => (
            <td key={id}>{pictures[i]}</td>
          ))}
        </tr>
      </thead>
      <tbody>
        {COMPARE_ROWS.map((row) => (
          <tr key={row.name}>
            <th scope="row">{row.name}</th>
            {answers.map((answer, i) => (
              <Cell key={joints[i]?.id ?? i} {...{ row, answer, first, unit }} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
