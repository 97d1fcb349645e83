import type { FocusEvent, KeyboardEvent } from 'react';
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { LIST, listHead, moreText, restText, SHOWN } from '../text/foundText.ts';
import { DesignToUse, type ListedIn } from './DesignToUse.tsx';
import { filamentName, type Group } from './designs.ts';
import { useOpened, type Reached } from './useOpened.ts';

interface Props extends ListedIn {
  readonly groups: readonly Group[];
  readonly answer: FindAnswer;
  readonly reached: Reached | undefined;
  /** Whether newer designs wait for the focus to leave. */
  readonly onHold: (isHeld: boolean) => void;
  readonly isWaiting: boolean;
  readonly onShowAll: () => void;
}

/** Up and Down lead among the buttons that use a design. */
function press(event: KeyboardEvent<HTMLOListElement>): void {
  const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  const buttons = [...event.currentTarget.querySelectorAll<HTMLElement>('.use')];
  const at = buttons.findIndex((button) => button === document.activeElement);
  const next = buttons[at + by];
  if (by === 0 || at < 0 || !next) return;
  event.preventDefault();
  next.focus();
}

/** What was found: the first of each kind in each filament, the others of the same behind it. */
export function FoundList(props: Props) {
  const { groups, answer, reached, onHold, isWaiting, onShowAll, ...listed } = props;
  const { list, shown, isOpen, flip, showRest } = useOpened(groups, reached);
  const all = groups.reduce((sum, { more }) => sum + 1 + more.length, 0);
  const head = listHead(shown.length, all, answer.isDone);
  const leave = (event: FocusEvent<HTMLOListElement>) => {
    if (!event.currentTarget.contains(event.relatedTarget)) onHold(false);
  };

  return (
    <section className="found-list" aria-label={head}>
      <h3 className="h">
        {head}
        <span className="aside">{LIST.aside}</span>
      </h3>
      {groups.length === 0 && <Nothing isHidden={answer.designs.length > 0} onShowAll={onShowAll} />}
      {/* Keys are heard from the buttons in it, which they move among. */}
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions */}
      <ol ref={list} onKeyDown={press} onFocus={() => onHold(true)} onBlur={leave}>
        {shown.map((group) => (
          <Several key={group.key} group={group} isOpen={isOpen(group)} onFlip={() => flip(group)} listed={listed} />
        ))}
      </ol>
      {groups.length > shown.length && (
        <QuietButton onClick={showRest}>{restText(groups.length - shown.length)}</QuietButton>
      )}
      <p className="small">{isWaiting ? LIST.waits : LIST.keys}</p>
    </section>
  );
}

/** In the place of the list: nothing has been found yet, or the bars hide it all. */
function Nothing({ isHidden, onShowAll }: { readonly isHidden: boolean; readonly onShowAll: () => void }) {
  return (
    <p className="found-none">
      {isHidden ? `${SHOWN.nothing}: ` : LIST.coming}
      {isHidden && <QuietButton onClick={onShowAll}>{SHOWN.all.toLowerCase()}</QuietButton>}
    </p>
  );
}

interface SeveralProps {
  readonly group: Group;
  readonly isOpen: boolean;
  readonly onFlip: () => void;
  readonly listed: ListedIn;
}

/** The first of a kind in a filament, and the way to the others. */
function Several({ group: { first, more, rank }, isOpen, onFlip, listed }: SeveralProps) {
  return (
    <>
      <DesignToUse shown={first} rank={rank} {...listed} />
      {more.length > 0 && (
        <li className="found-more">
          <button className="b quiet" type="button" aria-expanded={isOpen} onClick={onFlip}>
            {moreText(more.length, filamentName(first.design.joint), isOpen)}
          </button>
        </li>
      )}
      {isOpen && more.map((one) => <DesignToUse key={one.key} shown={one} {...listed} />)}
    </>
  );
}
