/** A walked path in the words of the answer. */
import type { ErrorEstimate, PathAnswer, PathEvent } from './answer.ts';
import type { SecondPath } from './branch.ts';
import { eventsBetween, loadLimits } from './events.ts';
import type { Network } from './network.ts';
import type { Observed } from './observe.ts';
import type { Walked } from './path.ts';

/** The states that a real part passes: beyond a crossing, those of the second path. */
export function takenOf({ seen, second }: Walked): readonly Observed[] {
  if (!second) return seen;
  const isBefore = ({ point }: Observed) => Math.abs(point.share) < Math.abs(second.leaves);
  return [...seen.filter(isBefore), ...second.seen];
}

/** A walked path as it is answered. */
export function told(walked: Walked, error: ErrorEstimate, network: Network): PathAnswer {
  const { seen, second, stopped, iterations } = walked;
  const eventsOf = network.frames.isMoved ? eventsBetween : loadLimits;
  return {
    points: seen.map(({ point }) => point),
    events: [...eventsOf(seen), ...(second ? [leaving(second)] : [])],
    shapes: seen.flatMap(({ shapes }) => (shapes ? [shapes] : [])),
    error,
    ...(stopped ? { stopped } : {}),
    ...(second ? { second: secondTold(second, error, network) } : {}),
    iterations,
  };
}

function secondTold({ seen, stopped, imperfection, leaves }: SecondPath, error: ErrorEstimate, network: Network) {
  const path = told({ seen, iterations: 0, ...(stopped ? { stopped } : {}) }, error, network);
  return { path, imperfection, leaves };
}

function leaving({ seen, leaves }: SecondPath): PathEvent {
  const { effort, energy } = seen[0]!.point;
  return { kind: 'bifurcation', share: leaves, effort, energy, stable: false };
}
