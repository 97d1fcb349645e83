import { lazy, Suspense, useMemo } from 'react';
import { inOrder, standingOf } from '../../core/design/acrossFilaments.ts';
import { countedNote } from '../text/filamentsText.ts';
import { fromMemory } from '../../core/material/compare.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { CompareSentence } from './CompareSentence.tsx';
import { CompareTable, type Compared } from './CompareTable.tsx';
import { useComparing, useMarked } from './comparing.ts';
import { Conflict } from './Conflict.tsx';
import { FilamentsTitle } from './FilamentsTitle.tsx';
import { FoldTest } from './FoldTest.tsx';
import { Marked } from './Marked.tsx';
import { sharedPaper } from './papers.ts';
import { SharedCurves } from './SharedCurves.tsx';
import { Suits } from './Suits.tsx';
import type { YourJoint } from './useYourJoint.ts';

const TakeFile = lazy(async () => ({ default: (await import('./own/TakeFile.tsx')).TakeFile }));

interface Props {
  readonly rows: readonly WholeFilament[];
  readonly yours: YourJoint;
  /** Whether the address names a filament that is not here. */
  readonly isLost?: boolean;
}

/** Page one: every filament beside the others, set against one of the part's joints. */
export function AllFilaments({ rows, yours, isLost = false }: Props) {
  const { order: wanted, shown } = useComparing();
  const marked = useMarked();
  const a = yours.assessment;
  const order = a === undefined && wanted === 'life' ? 'repeated' : wanted;
  const all = useMemo(() => rows.map((row): Compared => ({ row, standing: a && standingOf(a, row) })), [rows, a]);
  const ordered = useMemo(() => {
    const by = new Map(all.map((one) => [one.row.id, one]));
    return inOrder(rows, order, (row) => by.get(row.id)?.standing).flatMap((row) => by.get(row.id) ?? []);
  }, [all, rows, order]);
  const compared = shown === 'all' ? ordered : ordered.filter(({ row }) => marked.includes(row.id));
  const { strain, movement } = a ? { strain: a.strain.peak, movement: a.joint.movement } : {};
  const joint = a && strain !== undefined && movement ? { strain, movement, filament: a.filament.id } : undefined;
  const paper = useMemo(() => sharedPaper(strain), [strain]);
  const { memory, all: values } = fromMemory(rows);
  return (
    <>
      <main className="all-filaments">
        <CompareSentence count={rows.length} {...{ order, yours, isLost }} />
        <Conflict />
        <div className="narrow-marks">
          <Marked rows={rows} />
        </div>
        <CompareTable rows={compared} all={all} joint={joint} />
        <div className="own-of">
          <Suspense>
            <TakeFile />
          </Suspense>
        </div>
        <Suits rows={compared.map(({ row }) => row)} />
        <section className="curves-of-all" aria-label="Curves">
          <Marked rows={rows} />
          <SharedCurves
            rows={all}
            paper={paper}
            joint={joint && { strain: joint.strain, cycles: joint.movement.cycles }}
          />
        </section>
        <FoldTest />
      </main>
      <FilamentsTitle
        what={{ name: 'Compared', says: `${rows.length} filaments, nominal, along the lines, 23 °C` }}
        caution={countedNote(memory, values)}
        against={a}
      />
    </>
  );
}
