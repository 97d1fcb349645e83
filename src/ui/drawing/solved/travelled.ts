import type { Assessment } from '../../../core/design/assessment.ts';
import type { Solved, SolvedEvent } from '../../../core/design/solved.ts';
import { secondRest } from '../../../core/design/solvedPath.ts';
import { degrees, radians, asRad } from '../../../core/units.ts';
import { within, type Reach } from '../reach.ts';

/** A state worth stopping at: just before it snaps, balanced, just before it comes back, at rest in its second place. */
interface Marked {
  readonly kind: 'snap' | 'balanced' | 'return' | 'rest';
  readonly amount: number;
  /** Effort there per MPa, as for a state. */
  readonly effort: number;
}

/** How far the scrubber goes, in [rad] or [mm] as the drive measures, and what it stops at. */
export interface Travelled {
  readonly from: number;
  readonly to: number;
  readonly wanted: number;
  readonly marks: readonly Marked[];
}

/** Past the last marked state by so much of it, so that it is seen not to be the end. */
const A_LITTLE_PAST = 1.04;

export function travelledOf(a: Assessment, solved: Solved): Travelled {
  const marks = marksOf(solved);
  const wanted = solved.amount;
  const last = Math.max(0, ...marks.map(({ amount }) => amount));
  const end = solved.forward.points.at(-1)?.amount ?? wanted;
  const to = last > wanted ? Math.min(end, rounded(last * A_LITTLE_PAST, a.drive.measure)) : wanted;
  return { from: solved.back ? -wanted : 0, to, wanted, marks: marks.filter(({ amount }) => amount <= to) };
}

/** How far the drawing can show it, as shares of the wanted amount. */
export function reachOf({ from, to, wanted }: Travelled): Reach {
  return { from: from / wanted, to: to / wanted };
}

/** The amount at which it is shown when a share of the wanted amount is asked for: as far as it can be shown. */
export function amountShown(travelled: Travelled, share: number): number {
  return within(reachOf(travelled), share) * travelled.wanted;
}

/** Up to the next whole degree or half millimetre. */
function rounded(amount: number, measure: Assessment['drive']['measure']): number {
  return measure === 'turn' ? radians(Math.ceil(degrees(asRad(amount)))) : Math.ceil(2 * amount) / 2;
}

/** What marks the way of a joint that snaps; nothing for one that always pushes back. */
function marksOf(solved: Solved): readonly Marked[] {
  const { events } = solved.forward;
  const balanced = events.find((event) => event.kind === 'rest' && !event.stable);
  const rest = secondRest(solved);
  const marked = (kind: Marked['kind'], event: SolvedEvent | undefined): readonly Marked[] =>
    event ? [{ kind, amount: event.amount, effort: event.effort }] : [];
  // An even joint snaps where another path leaves sideways, most others where the effort is largest.
  const before = events.filter(({ kind, amount }) => kind !== 'rest' && amount < (balanced?.amount ?? Infinity));
  const snap = before.toSorted((p, q) => q.effort - p.effort)[0];
  const between = events.filter(
    ({ kind, amount, effort }) => kind === 'limit' && effort < 0 && amount > (balanced?.amount ?? Infinity),
  );
  const back = between.toSorted((p, q) => p.effort - q.effort)[0];
  return [
    ...marked('snap', snap),
    ...marked('balanced', balanced),
    ...marked('return', back),
    ...marked('rest', rest),
  ].toSorted((p, q) => p.amount - q.amount);
}
