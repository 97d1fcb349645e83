import { memo } from 'react';
import type { Standing } from '../../core/design/acrossFilaments.ts';
import type { Movement } from '../../core/design/joint.ts';
import type { DrawnCurve } from '../../core/life/curveOf.ts';
import { soundness } from '../../core/material/choose.ts';
import { traitOf, type Trait } from '../../core/material/compare.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { rangeText, valueText } from '../text/figureText.ts';
import { isStrain, originOf, originOfQuantity, TRAIT_NAMES } from '../text/filamentValueText.ts';
import { chanceText, lifeText, reasonText, rowName, rowNote, spokenStanding } from '../text/filamentsText.ts';
import { COLUMNS } from './columns.ts';
import { OriginNote } from './OriginNote.tsx';
import type { Papers } from './papers.ts';
import type { RowAxis } from './axes.ts';
import { addressOf } from './route.ts';
import { SmallCurve } from './SmallCurve.tsx';
import { SourceMark } from './SourceMark.tsx';
import { TraitCell } from './TraitCell.tsx';
import { ROLE } from './tableRoles.ts';

export interface OpenSource {
  readonly id: string;
  readonly of: Trait | 'life';
}

interface Props {
  readonly row: WholeFilament;
  readonly standing: Standing | undefined;
  readonly axes: readonly RowAxis[];
  readonly curve: DrawnCurve | undefined;
  /** The curves of the table, behind that of the row. */
  readonly behind: string;
  readonly paper: Papers;
  readonly joint: { readonly strain: number; readonly movement: Movement; readonly filament: string } | undefined;
  readonly noteId: string;
  readonly open: OpenSource | undefined;
  readonly onToggle: (source: OpenSource) => void;
}

function Note({ row, of }: { readonly row: WholeFilament; readonly of: OpenSource['of'] }) {
  if (of === 'life') {
    const { provenance, note, certainty } = row.life;
    return <OriginNote head={`${rowName(row)}, life curve, ${certainty}.`} origin={originOf(provenance, note)} />;
  }
  const quantity = traitOf(row, of);
  if (!quantity) return null;
  const range = rangeText(quantity, isStrain(of));
  const head = `${rowName(row)}, ${TRAIT_NAMES[of].toLowerCase()}: ${valueText(quantity, isStrain(of))}${range && ` (${range})`}.`;
  return <OriginNote head={head} origin={originOfQuantity(quantity)} />;
}

/** One filament: its bars, its curve, and how it bears the joint. Remembered, so that a note opened redraws one row. */
export const CompareRow = memo(function CompareRow(props: Props) {
  const { row, standing, axes, curve, behind, paper, joint, noteId, open, onToggle } = props;
  const name = rowName(row);
  const isInUse = joint?.filament === row.id;
  const mark = (of: OpenSource['of']) => ({
    open: open?.of === of,
    controls: noteId,
    onToggle: () => onToggle({ id: row.id, of }),
    inTable: true,
  });
  const counted = standing && standing.life.median > 0 && standing.life.median <= standing.life.maxReportableCycles;
  return (
    <>
      <tr {...ROLE.row} data-row={row.id} className={isInUse ? 'in-use' : undefined}>
        <th {...ROLE.head} scope="row">
          <a href={addressOf(row.id)}>{name}</a>
          <small>{rowNote(row, isInUse)}</small>
        </th>
        {COLUMNS.map((column, at) => (
          <TraitCell
            key={column.key}
            {...{ column, row, mark }}
            axis={axes[at] as RowAxis}
            strain={column.key === 'yields' ? joint?.strain : undefined}
          />
        ))}
        <td {...ROLE.cell} className="small">
          <span className="lab" aria-hidden="true">
            Life: 1 to 2 M cycles across, strain up
          </span>
          {curve && (
            <SmallCurve
              curve={curve}
              others={behind}
              cycles={paper.small}
              strain={paper.strain}
              joint={joint && { strain: joint.strain, cycles: counted ? standing.life.median : undefined }}
              label={`Curve of strain against life of ${name}; Fig. 2 has its figures`}
            />
          )}
        </td>
        {standing && joint && (
          <td {...ROLE.cell} className="life">
            <span className="lab" aria-hidden="true">
              At your joint, half break by
            </span>
            <span className="vh">{spokenStanding(standing, joint.movement.cycles)}</span>
            <span aria-hidden="true">{lifeText(standing)}</span>
            <SourceMark kind={soundness(row.life.provenance)} of={`the life of ${name}`} {...mark('life')} />
            <small className={standing.grade} aria-hidden="true">
              <VerdictShape grade={standing.grade} />
              {chanceText(standing)}
            </small>
            {reasonText(standing) !== '' && <small aria-hidden="true">{reasonText(standing)}</small>}
          </td>
        )}
      </tr>
      {open && (
        <tr {...ROLE.row} className="origin-row">
          <td {...ROLE.cell} colSpan={COLUMNS.length + (joint ? 3 : 2)} id={noteId}>
            <Note row={row} of={open.of} />
          </td>
        </tr>
      )}
    </>
  );
});
