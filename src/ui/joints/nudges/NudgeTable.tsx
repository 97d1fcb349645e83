import type { Assessment } from '../../../core/design/assessment.ts';
import { largestOf, movedFigures, NUDGE_FIGURES, type NudgeFigure } from '../../../core/design/nudgeFigures.ts';
import type { Nudge, Nudged } from '../../../core/design/nudges.ts';
import type { ProvenanceKind } from '../../../core/material/types.ts';
import { Mark } from '../../app/Mark.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import { AS_IT_IS, FIGURE_HEADS, IN_ANOTHER, NUDGE_HEADS, nudgeName } from '../../text/nudgeText.ts';
import { problemText } from '../../text/problemText.ts';
import type { About } from '../../text/said.ts';
import { NudgeRow } from './NudgeRow.tsx';
import type { Told } from './useNudges.ts';

interface Props {
  readonly assessment: Assessment;
  /** What there are rows for. */
  readonly nudges: readonly Nudge[];
  /** In the same order; undefined until it has been worked out. */
  readonly told: Told | undefined;
  readonly unit: LengthUnit;
}

const MARKS: Readonly<
  Record<NudgeFigure, { readonly about: About; readonly kind: (a: Assessment) => ProvenanceKind }>
> = {
  strain: { about: 'strain', kind: ({ provenance }) => provenance.strain },
  chance: { about: 'life', kind: ({ provenance }) => provenance.life },
  effort: { about: 'effort', kind: ({ provenance }) => provenance.effort },
  set: { about: 'set', kind: ({ provenance }) => provenance.limits },
};

function isFilament({ of }: Nudge): boolean {
  return of === 'filament';
}

/** Small changes and what each does; sizes and movement first, then other filaments. */
export function NudgeTable({ assessment: a, nudges, told, unit }: Props) {
  const rows = nudges.map((nudge, at) => ({ nudge, told: told?.nudged[at] }));
  return (
    <table className="nudges">
      <thead>
        <tr>
          <th scope="col">{NUDGE_HEADS.change}</th>
          {NUDGE_FIGURES.map((figure) => (
            <th key={figure} scope="col">
              {FIGURE_HEADS[figure]}
              <Mark kind={MARKS[figure].kind(a)} about={MARKS[figure].about} />
            </th>
          ))}
          <th scope="col">{NUDGE_HEADS.verdict}</th>
        </tr>
      </thead>
      <tbody className="now">
        <NudgeRow name={AS_IT_IS} assessment={told?.before ?? a} unit={unit} />
      </tbody>
      <Group {...{ a, told, unit }} rows={rows.filter(({ nudge }) => !isFilament(nudge))} />
      <Group {...{ a, told, unit }} head={IN_ANOTHER} rows={rows.filter(({ nudge }) => isFilament(nudge))} />
    </table>
  );
}

interface GroupProps extends Pick<Props, 'told' | 'unit'> {
  readonly a: Assessment;
  readonly head?: string;
  readonly rows: readonly { readonly nudge: Nudge; readonly told: Nudged | undefined }[];
}

/** Rows that are weighed against each other. */
function Group({ a, told, head, rows, unit }: GroupProps) {
  const before = told?.before ?? a;
  const moved = rows.map((row) => (row.told?.assessed.ok ? movedFigures(before, row.told.assessed.value) : undefined));
  const largest = largestOf(moved);
  return (
    <tbody>
      {head !== undefined && (
        <tr className="others">
          <th scope="rowgroup" colSpan={6}>
            {head}
          </th>
        </tr>
      )}
      {rows.map((row, at) => {
        const name = nudgeName(row.nudge, unit, a.drive.measure);
        const [figures, assessed] = [moved[at], row.told?.assessed];
        if (figures && assessed?.ok) {
          const isLargest = (figure: NudgeFigure) => largest[figure] === at;
          return <NudgeRow key={name} {...{ name, unit, isLargest }} assessment={assessed.value} moved={figures} />;
        }
        return (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td colSpan={5} className="not">
              {assessed && !assessed.ok ? problemText(assessed.problems[0], unit) : '…'}
            </td>
          </tr>
        );
      })}
    </tbody>
  );
}
