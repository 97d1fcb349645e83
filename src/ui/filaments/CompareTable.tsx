import { useCallback, useId, useMemo, useState } from 'react';
import type { Standing } from '../../core/design/acrossFilaments.ts';
import { drawnCurve } from '../../core/life/curveOf.ts';
import { isOwn } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import type { Movement } from '../../core/design/joint.ts';
import { FIGURE_1, movementWords } from '../text/filamentsText.ts';
import { percent } from '../text/numbers.ts';
import { axisOf, COLUMNS } from './columns.ts';
import { CompareHead } from './CompareHead.tsx';
import { CompareRow, type OpenSource } from './CompareRow.tsx';
import { moveInTable } from './tableKeys.ts';
import { sharedPaper } from './papers.ts';
import { pathBehind } from './SmallCurve.tsx';
import { ROLE } from './tableRoles.ts';

export interface Compared {
  readonly row: WholeFilament;
  /** How it bears the joint; absent without one. */
  readonly standing: Standing | undefined;
}

interface Props {
  readonly rows: readonly Compared[];
  /** Every row, shown or not: the axes do not move when fewer are looked at. */
  readonly all: readonly Compared[];
  readonly joint: { readonly strain: number; readonly movement: Movement; readonly filament: string } | undefined;
}

/** Fig. 1: one filament a row, on axes that all share. */
export function CompareTable({ rows, all, joint }: Props) {
  const keysId = useId();
  const noteId = useId();
  const [open, setOpen] = useState<OpenSource>();
  const strain = joint?.strain;
  const axes = useMemo(() => {
    const whole = all.map(({ row }) => row);
    return COLUMNS.map((column) => axisOf(column, whole, strain));
  }, [all, strain]);
  const curves = useMemo(
    () => new Map(all.map(({ row, standing }) => [row.id, drawnCurve(row.life, standing?.severity ?? 1)])),
    [all],
  );
  const paper = useMemo(() => sharedPaper(strain), [strain]);
  const behind = useMemo(() => {
    // The user's own would hide them: there may be two hundred, mostly of the same courses.
    const table = all.filter(({ row }) => !isOwn(row)).flatMap(({ row }) => curves.get(row.id) ?? []);
    return pathBehind(table, { cycles: paper.small, strain: paper.strain });
  }, [all, curves, paper]);
  const toggle = useCallback(
    (source: OpenSource) => setOpen((now) => (now?.id === source.id && now.of === source.of ? undefined : source)),
    [],
  );
  return (
    <section className="compare" aria-label="Fig. 1">
      <p className="cap">
        <span>
          <b>Fig. 1</b> {FIGURE_1.name}. {FIGURE_1.aid}
        </span>
        <span>{joint && `pencil: your joint, ${percent(joint.strain)} strain, ${movementWords(joint.movement)}`}</span>
      </p>
      {/* Keys go from one of its links and marks to the next; the table itself is nothing to press. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
      <table
        className="filaments"
        {...ROLE.table}
        aria-label={FIGURE_1.name}
        aria-describedby={keysId}
        onKeyDown={(event) => {
          if (event.key === 'Escape' && open) setOpen(undefined);
          else moveInTable(event);
        }}
      >
        <CompareHead axes={axes} cycles={paper.small} wanted={joint?.movement.cycles} />
        <tbody {...ROLE.group}>
          {rows.map(({ row, standing }) => (
            <CompareRow
              key={row.id}
              {...{ row, standing, axes, behind, paper, joint, noteId }}
              curve={curves.get(row.id)}
              open={open?.id === row.id ? open : undefined}
              onToggle={toggle}
            />
          ))}
        </tbody>
      </table>
      <p className="keys" id={keysId}>
        {FIGURE_1.keys}
      </p>
    </section>
  );
}
