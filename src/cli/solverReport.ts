/** What only the solver knows of a joint: its largest effort, snaps, rests, gaps, and how stiff it is in every direction. */
import { softStiffOf } from '../core/design/softStiffOf.ts';
import type { Assessment } from '../core/design/assessment.ts';
import type { Solved, SolvedEvent, SolvedPath } from '../core/design/solved.ts';
import { effortUpTo, leastGap, readAt, secondRest } from '../core/design/solvedPath.ts';
import { amounts, effort, figures, snake, type Measure } from './keys.ts';
import { errorOf, stiffnessesOf } from './states.ts';

/** What the solver's figures, which are for 1 MPa, are to be said in. */
interface Said {
  readonly modulus: number;
  readonly measure: Measure;
}

export function waysOf({
  forward,
  back,
}: Solved): readonly { readonly way: 'there' | 'back'; readonly path: SolvedPath }[] {
  return [{ way: 'there' as const, path: forward }, ...(back ? [{ way: 'back' as const, path: back }] : [])];
}

function eventOf(event: SolvedEvent, { modulus, measure }: Said) {
  return {
    kind: event.kind,
    ...amounts('amount', figures(event.amount), measure),
    ...effort(modulus * event.effort, measure),
    energy_Nmm: modulus * event.energy,
    ...(event.kind === 'rest' ? { stays: event.stable } : {}),
  };
}

/** Events in the order in which they are passed; where another path leaves, with the sideways movement that showed it. */
export function eventsOf({ events, leaves }: SolvedPath, said: Said) {
  return events.map((event) => ({
    ...eventOf(event, said),
    ...(event.kind === 'bifurcation' && leaves ? { imperfection_mm: leaves.imperfection } : {}),
  }));
}

function restOf(solved: Solved, { modulus, measure }: Said) {
  const rest = secondRest(solved);
  return rest ? { ...amounts('amount', figures(rest.amount), measure), energy_Nmm: modulus * rest.energy } : null;
}

function gapOf(solved: Solved, amount: number, measure: Measure) {
  const least = leastGap(solved, amount);
  if (!least) return null;
  const between = [least.a, least.b].map(({ what, at }) => ({ what, x_mm: at.x, y_mm: at.y }));
  return { gap_mm: least.gap, ...amounts('amount', figures(least.amount), measure), between };
}

function stiffnessOf(solved: Solved, modulus: number) {
  const { network, stiffness } = solved;
  const { soft, stiff, ratio, apart, radius } = softStiffOf(solved, modulus);
  return {
    of: network.moving,
    ...stiffnessesOf(stiffness, modulus),
    radius_mm: radius,
    soft_in: snake(soft.direction),
    stiff_in: snake(stiff.direction),
    ratio,
    ratio_to_next: apart,
  };
}

/**
 * The solver's part of the report on a joint; efforts are elastic, for the typical modulus.
 *
 * @param assessment - of a joint
 * @param solved - its way with shapes
 */
export function reportSolved({ joint, drive, effort: { modulus } }: Assessment, solved: Solved) {
  const { measure } = drive;
  const said = { modulus, measure };
  const { amount } = joint.movement;
  const ways = waysOf(solved);
  const moved = ways.flatMap(({ path }) => path.points.filter((point) => point.amount !== 0));
  return {
    modulus_MPa: modulus,
    ...effort(modulus * readAt(solved, amount).effort, measure, 'wanted_'),
    ...effort(modulus * effortUpTo(solved, amount), measure, 'largest_'),
    energy_Nmm: modulus * readAt(solved, amount).energy,
    second_rest: restOf(solved, said),
    ways: ways.map(({ way, path }) => ({
      way,
      ...amounts('followed_to', figures(path.points.at(-1)?.amount ?? 0), measure),
      events: eventsOf(path, said),
    })),
    least_gap: gapOf(solved, amount, measure),
    stiffness: stiffnessOf(solved, modulus),
    error: errorOf(solved.error),
    residual: Math.max(...moved.map((point) => point.residual)),
  };
}
