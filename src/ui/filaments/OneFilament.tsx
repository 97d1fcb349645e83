import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { standingOf } from '../../core/design/acrossFilaments.ts';
import type { Joint } from '../../core/design/joint.ts';
import { warmestFor } from '../../core/design/warmest.ts';
import { numbersFromMemory } from '../../core/material/compare.ts';
import { isOwn } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { useSession } from '../../store/session.ts';
import { countedBelow } from '../text/filamentsText.ts';
import { heldText, titleOf, warmthText, waterText } from '../text/filamentText.ts';
import { anchorsOf, evidenceOf, READ_AT } from './anchors.ts';
import { Evidence } from './Evidence.tsx';
import { FilamentActions } from './FilamentActions.tsx';
import { FilamentsTitle } from './FilamentsTitle.tsx';
import { Flip } from './Flip.tsx';
import { InBrief } from './InBrief.tsx';
import { NumbersTable } from './NumbersTable.tsx';
import { OneCurve } from './OneCurve.tsx';
import { PushLeftFigure } from './PushLeft.tsx';
import { StandsOn } from './StandsOn.tsx';
import { useNeighbours } from './useNeighbours.ts';
import type { YourJoint } from './useYourJoint.ts';
import { WithJumps } from './WithJumps.tsx';

const OwnActions = lazy(async () => ({ default: (await import('./own/OwnActions.tsx')).OwnActions }));
const OwnNumbers = lazy(async () => ({ default: (await import('./own/OwnNumbers.tsx')).OwnNumbers }));
const OwnStandsOn = lazy(async () => ({ default: (await import('./own/OwnStandsOn.tsx')).OwnStandsOn }));
const TakeFile = lazy(async () => ({ default: (await import('./own/TakeFile.tsx')).TakeFile }));

interface Props {
  readonly row: WholeFilament;
  readonly rows: readonly WholeFilament[];
  readonly yours: YourJoint;
}

/** What holding it bent, warmth and water do to it. */
function Around({ row, joint }: { readonly row: WholeFilament; readonly joint: Joint | undefined }) {
  const texts = [heldText(row), warmthText(row, joint && warmestFor(joint, row)), waterText(row)];
  return (
    <section className="around" aria-label="Held, warmth and water">
      {texts.map((text, at) => (
        <p key={at}>
          <WithJumps text={text} />
        </p>
      ))}
    </section>
  );
}

/** The page takes the keys, and is read from its top. */
function usePage(rows: readonly WholeFilament[], id: string) {
  const ids = useMemo(() => rows.map((row) => row.id), [rows]);
  useNeighbours(ids, id);
  const main = useRef<HTMLElement>(null);
  // The link that led here is gone with its page: focus must not fall off.
  useEffect(() => {
    window.scrollTo(0, 0);
    if (document.activeElement === document.body) main.current?.focus({ preventScroll: true });
  }, []);
  return main;
}

/** Page two: one filament, what its curve stands on, and where every number comes from. */
export function OneFilament({ row, rows, yours }: Props) {
  const { joint, assessment: a } = yours;
  const joints = useSession((state) => state.part.joints);
  const standing = useMemo(() => a && standingOf(a, row), [a, row]);
  const main = usePage(rows, row.id);
  const [readAt, setReadAt] = useState(READ_AT);
  const anchors = useMemo(() => anchorsOf(row, readAt), [row, readAt]);
  const stands = <StandsOn row={row} anchors={evidenceOf(row)} />;
  const { memory, all } = numbersFromMemory(row);
  const count = joints.filter(({ profile }) => profile.filament === row.id).length;
  return (
    <>
      <main className="one-filament" ref={main} tabIndex={-1}>
        <Flip row={row} rows={rows} />
        <InBrief row={row} />
        <Evidence row={row} {...(a && standing && { a, standing })} />
        <div className="left">
          <OneCurve
            key={a?.joint.id}
            row={row}
            anchors={anchors}
            joint={a && standing && { standing, strain: a.strain.peak }}
          />
        </div>
        <div className="right">
          {isOwn(row) ? (
            <Suspense fallback={stands}>
              <OwnStandsOn row={row} at={readAt} onRead={setReadAt} />
            </Suspense>
          ) : (
            stands
          )}
        </div>
        <section className="held" aria-label="Fig. 2">
          <PushLeftFigure row={row} />
        </section>
        <Around row={row} joint={joint} />
        <Suspense fallback={<div className="own-of" />}>
          <div className="own-of">
            <OwnActions filament={row} />
            <TakeFile />
          </div>
        </Suspense>
        {isOwn(row) ? (
          <Suspense fallback={<NumbersTable row={row} rows={rows} />}>
            <OwnNumbers row={row} rows={rows} />
          </Suspense>
        ) : (
          <NumbersTable row={row} rows={rows} />
        )}
        <FilamentActions row={row} joint={joint} />
      </main>
      <FilamentsTitle
        what={{ name: 'Filament', says: titleOf(row) }}
        caution={countedBelow(memory, all)}
        used={count}
        against={a}
      />
    </>
  );
}
