import { useEffect, useRef, useState, type FocusEvent, type KeyboardEvent } from 'react';
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import type { Measure } from '../text/amountText.ts';
import { LIST, listHead, moreText, restText, SHOWN, useLabel } from '../text/findText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { DesignRow } from './DesignRow.tsx';
import { designName, filamentName, type Group, type Shown } from './designs.ts';
import type { UseFound } from './useFound.ts';

/** So many groups stand at once; more would hide why the rest fell short. */
const AT_ONCE = 8;

interface Props {
  readonly groups: readonly Group[];
  readonly answer: FindAnswer;
  readonly measure: Measure;
  readonly unit: LengthUnit;
  readonly found: UseFound;
  readonly picked: string | undefined;
  readonly onPick: (key: string | undefined) => void;
  /** Key of a design that is to be reached, from the figure. */
  readonly reached: string | undefined;
  readonly onReached: () => void;
  /** Whether newer designs wait for the focus to leave. */
  readonly onHold: (isHeld: boolean) => void;
  readonly isWaiting: boolean;
  readonly onShowAll: () => void;
}

/** Where Up and Down lead among the buttons that use a design. */
function step(list: HTMLElement, by: number): boolean {
  const buttons = [...list.querySelectorAll<HTMLElement>('.use')];
  const at = buttons.findIndex((button) => button === document.activeElement);
  const next = buttons[at + by];
  if (at < 0 || !next) return false;
  next.focus();
  return true;
}

/** What was found: the first of each kind in each filament, the others of the same behind it. */
export function FoundList(props: Props) {
  const { groups, answer, measure, unit, found, picked, onPick, reached, onReached, onHold, isWaiting } = props;
  const [opened, setOpened] = useState<ReadonlySet<string>>(new Set());
  const [hasRest, setHasRest] = useState(false);
  const list = useRef<HTMLOListElement>(null);
  const all = groups.reduce((sum, { more }) => sum + 1 + more.length, 0);
  const shown = hasRest ? groups : groups.slice(0, AT_ONCE);

  useEffect(() => {
    if (reached === undefined) return;
    const group = groups.find(({ first, more }) => [first, ...more].some(({ key }) => key === reached));
    if (!group) return;
    if (group.first.key !== reached && !opened.has(group.key)) setOpened(new Set([...opened, group.key]));
    else if (group.rank > shown.length) setHasRest(true);
    else {
      list.current?.querySelector<HTMLElement>(`[data-key="${CSS.escape(reached)}"]`)?.focus();
      onReached();
    }
  }, [reached, groups, opened, shown.length, onReached]);

  const press = (event: KeyboardEvent<HTMLOListElement>) => {
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (by !== 0 && step(event.currentTarget, by)) event.preventDefault();
  };
  const leave = (event: FocusEvent<HTMLOListElement>) => {
    if (!event.currentTarget.contains(event.relatedTarget)) onHold(false);
  };
  const flip = (key: string) => {
    const next = new Set(opened);
    if (!next.delete(key)) next.add(key);
    setOpened(next);
  };
  const row = ({ key, design }: Shown, rank?: number) => (
    <DesignRow
      key={key}
      joint={design.joint}
      figures={design.figures}
      measure={measure}
      unit={unit}
      rank={rank}
      isPicked={picked === key}
      isBest={design.isBest}
      onPoint={(isIn) => onPick(isIn ? key : undefined)}
    >
      <button
        className="b use"
        type="button"
        data-key={key}
        aria-label={useLabel(designName(design.joint, unit), filamentName(design.joint))}
        aria-disabled={found.cannot === undefined ? undefined : true}
        title={found.cannot}
        onClick={found.cannot === undefined ? () => found.use(design.joint) : undefined}
      >
        {LIST.use}
      </button>
    </DesignRow>
  );

  return (
    <section className="found-list" aria-label={listHead(shown.length, all, answer.isDone)}>
      <h3 className="h">
        {listHead(Math.min(shown.length, groups.length), all, answer.isDone)}
        <span className="aside">{LIST.aside}</span>
      </h3>
      {groups.length === 0 && (
        <p className="found-none">
          {answer.designs.length === 0 ? LIST.coming : `${SHOWN.nothing}: `}
          {answer.designs.length > 0 && <QuietButton onClick={props.onShowAll}>{SHOWN.all.toLowerCase()}</QuietButton>}
        </p>
      )}
      {/* Keys are heard from the buttons in it, which they move among. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
      <ol ref={list} onKeyDown={press} onFocus={() => onHold(true)} onBlur={leave}>
        {shown.map((group) => (
          <Several key={group.key} group={group} isOpen={opened.has(group.key)} onFlip={() => flip(group.key)} row={row} />
        ))}
      </ol>
      {groups.length > shown.length && (
        <QuietButton onClick={() => setHasRest(true)}>{restText(groups.length - shown.length)}</QuietButton>
      )}
      <p className="small">{isWaiting ? LIST.waits : LIST.keys}</p>
    </section>
  );
}

interface SeveralProps {
  readonly group: Group;
  readonly isOpen: boolean;
  readonly onFlip: () => void;
  readonly row: (shown: Shown, rank?: number) => React.ReactNode;
}

/** The first of a kind in a filament, and the way to the others. */
function Several({ group: { first, more, rank }, isOpen, onFlip, row }: SeveralProps) {
  return (
    <>
      {row(first, rank)}
      {more.length > 0 && (
        <li className="found-more">
          <button className="b quiet" type="button" aria-expanded={isOpen} onClick={onFlip}>
            {moreText(more.length, filamentName(first.design.joint), isOpen)}
          </button>
        </li>
      )}
      {isOpen && more.map((one) => row(one))}
    </>
  );
}
