import type { Assessment } from '../../core/design/assessment.ts';
import type { Spare } from '../../core/design/remedy.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { roomHeading, spareText } from '../text/remedyText.ts';

interface Props {
  readonly assessment: Assessment;
  readonly spares: readonly Spare[];
  readonly unit: LengthUnit;
}

/** How far each value alone may go while the joint still passes. */
export function RoomToSpare({ assessment, spares, unit }: Props) {
  const [heading, aside] = roomHeading(assessment);
  return (
    <section aria-label={heading}>
      <h2 className="h">
        {heading}
        <span className="aside">{aside}</span>
      </h2>
      <table className="spare">
        <tbody>
          {spares.map((spare) => {
            const [label, limit, now] = spareText(assessment, spare, unit);
            return (
              <tr key={spare.value}>
                <th scope="row">{label}</th>
                <td className="r">{limit}</td>
                <td className="now">{now}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
