import { useEffect, useRef, type RefObject } from 'react';
import { useTests } from '../../../store/tests.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { SAID_OF, oneOf, tallyText } from '../../text/testsTallyText.ts';
import { changeTally, putTally, today } from '../spools.ts';
import type { Trial } from '../trial.ts';
import { counted, floorOf, goesOn, keyOf, stripOf, type Key } from './counting.ts';

/** Whatever has a use of its own for keys. */
const WANTS_KEYS = 'input, textarea, select, button, a, summary, [role="slider"], [contenteditable], [tabindex]';

/** Whether a key pressed there is for the counter: it has the focus, or nothing else wants it while a count goes on. */
function isForCounter(target: EventTarget | null, box: HTMLElement | null, isCounting: boolean, key: Key): boolean {
  if (!(target instanceof Element) || !box) return false;
  // A button takes Space for itself, and a field every key.
  if (box.contains(target)) return !target.closest('input') && !(key === 'bent' && target.closest('button'));
  return isCounting && !target.closest(WANTS_KEYS);
}

export interface Counter {
  readonly cycles: number;
  readonly floor: number;
  readonly press: (key: Key) => void;
  /** Says where the count stands, or why it cannot stand there. */
  readonly stand: (cycles: number) => void;
}

/** What the four keys do. */
function usePress(trial: Trial, strip: number, unit: LengthUnit): (key: Key) => void {
  const { counting } = trial.values;
  const { set } = useTests.getState();
  const now = counting ?? { cycles: 0 };
  const floor = floorOf(trial.spool, counting);
  const end = (ended: 'broke' | 'whole') => {
    const before = goesOn(trial.spool, counting);
    // A strip that was bent no more is as it was.
    if (now.cycles < 1 || (before && now.cycles === before.cycles && ended === 'whole')) {
      set({ counting: undefined });
      return;
    }
    const tally = before ? { ...before, cycles: now.cycles, ended, date: today() } : stripOf(trial, now.cycles, ended);
    const said = SAID_OF.ended(oneOf('flexes', strip), tallyText(tally, unit));
    const why =
      before && trial.spool ? changeTally(trial.spool, tally, said, { unit }) : putTally(trial, tally, said, unit);
    if (why === undefined) set({ counting: undefined });
  };
  return (key) => {
    if (key === 'bent') set({ counting: counted(now, 1, floor) });
    else if (key === 'back') set({ counting: counted(now, -1, floor) });
    else end(key === 'broke' ? 'broke' : 'whole');
  };
}

/** The strip under the hand: counted by keys or buttons, and written down when it breaks or is let be. */
export function useCounter(
  trial: Trial,
  strip: number,
  unit: LengthUnit,
): readonly [RefObject<HTMLFieldSetElement | null>, Counter] {
  const { counting } = trial.values;
  const box = useRef<HTMLFieldSetElement>(null);
  const press = usePress(trial, strip, unit);
  const latest = useRef(press);
  useEffect(() => {
    latest.current = press;
  });
  const isCounting = counting !== undefined;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const key = keyOf(event);
      if (key === undefined || !isForCounter(event.target, box.current, isCounting, key)) return;
      event.preventDefault();
      latest.current(key);
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [isCounting]);
  const counter = {
    cycles: counting?.cycles ?? 0,
    floor: floorOf(trial.spool, counting),
    press,
    stand: (cycles: number) => useTests.getState().set({ counting: { ...counting, cycles } }),
  };
  return [box, counter];
}
