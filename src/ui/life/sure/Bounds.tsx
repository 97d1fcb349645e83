import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer } from '../../../core/design/doubtAnswer.ts';
import { weakest } from '../../../core/material/choose.ts';
import type { ProvenanceKind } from '../../../core/material/types.ts';
import { Mark } from '../../app/Mark.tsx';
import { lifeFigure } from '../../text/wearText.ts';
import type { About } from '../../text/said.ts';
import { chanceMark, effortFigures, effortMark, PERCENTILES, strainFigures } from '../../text/sureText.ts';

interface Row {
  readonly name: string;
  readonly mark: ProvenanceKind;
  readonly about: About;
  readonly figures: readonly string[];
}

/** Between what life, strain and effort lie: below which 10, 50 and 90 prints of a hundred are. */
export function Bounds({ a, answer }: { readonly a: Assessment; readonly answer: DoubtAnswer }) {
  const { life, strain, effort } = answer;
  const most = a.filament.life.maxReportableCycles;
  const { measure } = a.drive;
  const rows: readonly Row[] = [
    {
      name: PERCENTILES.life,
      mark: chanceMark(answer),
      about: 'life',
      figures: [life.p10, life.p50, life.p90].map((cycles) => lifeFigure(cycles, most)),
    },
    // How closely a printer keeps its sizes is common practice that nobody has looked up.
    {
      name: PERCENTILES.strain,
      mark: weakest(a.provenance.strain, 'memory'),
      about: 'strain',
      figures: strainFigures(strain),
    },
    {
      name: PERCENTILES.effort[measure],
      mark: effortMark(answer),
      about: 'effort',
      figures: effortFigures(effort, measure),
    },
  ];
  return (
    <table className="sure-bounds">
      <caption>{PERCENTILES.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{PERCENTILES.of}</th>
          {PERCENTILES.heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, mark, about, figures }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              <Mark kind={mark} about={about} />
            </th>
            {figures.map((figure, i) => (
              <td key={PERCENTILES.heads[i]}>{figure}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
