import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { standingOf } from '../../core/design/acrossFilaments.ts';
import { warmestFor } from '../../core/design/warmest.ts';
import { suitsOf } from '../../core/life/suits.ts';
import { strengthOf } from '../../core/material/evidence.ts';
import { isOwn } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { useSession } from '../../store/session.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { countedBelow, practiceText, rowName, SUITS_TEXT, usesText } from '../text/filamentsText.ts';
import {
  evidenceHead,
  evidenceText,
  fourNumbers,
  heldText,
  jointSays,
  NUMBERS,
  titleOf,
  warmthText,
  waterText,
} from '../text/filamentText.ts';
import { numbersFromMemory } from '../../core/material/compare.ts';
import { anchorsOf, evidenceOf, READ_AT } from './anchors.ts';
import { FilamentActions } from './FilamentActions.tsx';
import { FilamentsTitle } from './FilamentsTitle.tsx';
import { JumpMark } from './JumpMark.tsx';
import { NumbersTable } from './NumbersTable.tsx';
import { OneCurve } from './OneCurve.tsx';
import { PushLeftFigure } from './PushLeft.tsx';
import { addressOf } from './route.ts';
import { StandsOn } from './StandsOn.tsx';
import { useNeighbours } from './useNeighbours.ts';
import type { YourJoint } from './useYourJoint.ts';

const OwnActions = lazy(async () => ({ default: (await import('./own/OwnActions.tsx')).OwnActions }));
const OwnName = lazy(async () => ({ default: (await import('./own/OwnName.tsx')).OwnName }));
const OwnNumbers = lazy(async () => ({ default: (await import('./own/OwnNumbers.tsx')).OwnNumbers }));
const OwnRemark = lazy(async () => ({ default: (await import('./own/OwnRemark.tsx')).OwnRemark }));
const OwnStandsOn = lazy(async () => ({ default: (await import('./own/OwnStandsOn.tsx')).OwnStandsOn }));
const TakeFile = lazy(async () => ({ default: (await import('./own/TakeFile.tsx')).TakeFile }));

interface Props {
  readonly row: WholeFilament;
  readonly rows: readonly WholeFilament[];
  readonly yours: YourJoint;
}

/** Names of all filaments, as the way from one to the next. */
function Flip({ row, rows }: Pick<Props, 'row' | 'rows'>) {
  const nav = useRef<HTMLElement>(null);
  // Where there are more lines of names than fit, the one of this name is among those that do.
  useEffect(() => {
    const names = nav.current;
    const current = names?.querySelector('[aria-current]');
    if (!names || !current) return;
    names.scrollTop += Math.max(0, current.getBoundingClientRect().bottom - names.getBoundingClientRect().bottom);
  }, []);
  return (
    <nav className="names flip" aria-label="Filaments" ref={nav}>
      <a className="name-toggle" href={addressOf()}>
        {NUMBERS.back}
      </a>
      {rows.map((one) => (
        <a
          key={one.id}
          className="name-toggle"
          href={addressOf(one.id)}
          aria-current={one.id === row.id ? 'page' : undefined}
        >
          {rowName(one)}
        </a>
      ))}
    </nav>
  );
}

function FourNumbers({ row }: Pick<Props, 'row'>) {
  const name = <b>{rowName(row)}</b>;
  return (
    <p className="says">
      {isOwn(row) ? (
        <Suspense fallback={name}>
          <OwnName filament={row} />
        </Suspense>
      ) : (
        name
      )}
      {fourNumbers(row).map((piece, at) =>
        typeof piece === 'string' ? (
          piece
        ) : (
          <span className="nw" key={at}>
            <span className="num">{piece.figure}</span>
            <JumpMark kind={piece.kind} to={piece.to} />
          </span>
        ),
      )}
    </p>
  );
}

/** What it suits, in words, and what practice adds. */
function SuitsOne({ row }: Pick<Props, 'row'>) {
  const suited = suitsOf(row);
  const lines = [
    [SUITS_TEXT.suits, usesText(suited, true)],
    [SUITS_TEXT.not, usesText(suited, false)],
    [SUITS_TEXT.practice, practiceText(row.id)],
  ].filter(([, says]) => says !== '');
  return (
    <dl className="suits-one">
      {lines.map(([head, says]) => (
        <div key={head}>
          <dt>{head}</dt>
          <dd>{says}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Page two: one filament, what its curve stands on, and where every number comes from. */
export function OneFilament({ row, rows, yours }: Props) {
  const { joint, assessment: a } = yours;
  const joints = useSession((state) => state.part.joints);
  const standing = useMemo(() => a && standingOf(a, row), [a, row]);
  const ids = useMemo(() => rows.map(({ id }) => id), [rows]);
  useNeighbours(ids, row.id);
  const main = useRef<HTMLElement>(null);
  // The link that led here is gone with its page: focus must not fall off, and reading begins at the top.
  useEffect(() => {
    window.scrollTo(0, 0);
    if (document.activeElement === document.body) main.current?.focus({ preventScroll: true });
  }, []);
  const [readAt, setReadAt] = useState(READ_AT);
  const anchors = useMemo(() => anchorsOf(row, readAt), [row, readAt]);
  const stands = <StandsOn row={row} anchors={evidenceOf(row)} />;
  const strength = strengthOf(row.life.certainty);
  const { memory, all } = numbersFromMemory(row);
  const count = joints.filter(({ profile }) => profile.filament === row.id).length;
  return (
    <>
      <main className="one-filament" ref={main} tabIndex={-1}>
        <Flip row={row} rows={rows} />
        <div className="four sentence">
          <FourNumbers row={row} />
          {isOwn(row) && (
            <Suspense fallback={<p className="own-remark" />}>
              <OwnRemark filament={row} />
            </Suspense>
          )}
          <SuitsOne row={row} />
        </div>
        <section className={`sure verdict ${strength === 'strong' ? 'pass' : 'caution'}`} aria-label="The evidence">
          <h2>
            <VerdictShape grade={strength === 'strong' ? 'pass' : 'caution'} />
            {evidenceHead(row)}
          </h2>
          <p>{evidenceText(row)}</p>
          {a && standing && <p className="at-joint">{jointSays(standing, a.joint.name, a.joint.movement.cycles)}</p>}
        </section>
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
        <section className="around" aria-label="Held, warmth and water">
          <p>{heldText(row)}</p>
          <p>{warmthText(row, joint && warmestFor(joint, row))}</p>
          <p>{waterText(row)}</p>
        </section>
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
