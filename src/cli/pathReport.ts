/** The way of a joint, state by state, as far as is wanted and in as many equal parts as were asked for. */
import type { Assessment } from '../core/design/assessment.ts';
import { solveJoint } from '../core/design/solveJoint.ts';
import type { Solved, SolvedPoint } from '../core/design/solved.ts';
import { understand } from '../core/design/understand.ts';
import { fail, ok, type Result } from '../core/result.ts';
import { amounts, effort, figures, type Measure } from './keys.ts';
import { solvedParts, toldOf } from './parts.ts';
import { eventsOf, waysOf } from './solverReport.ts';
import { linesOf, membersOf, peakOf, placesOf, residualOf } from './states.ts';

/** Middle lines told in one document; all of them are in memory at once. */
export const MOST_LINES = 200_000;

/** How many middle lines the document still takes. */
export interface Room {
  left: number;
}

export function emptyRoom(): Room {
  return { left: MOST_LINES };
}

/**
 * A joint's way to the wanted amount, and the other way where it moves both ways.
 *
 * Problems: those of `solveJoint`; `too-large` where the document is full.
 *
 * @param assessment - of the joint
 * @param parts - equal parts of the wanted movement
 * @param room - of the whole document
 */
export function reportPath({ joint, drive, effort: { modulus } }: Assessment, parts: number, room: Room) {
  const understood = understand(joint);
  if (!understood.ok) return understood;
  if (room.left <= 0) return full(parts);
  const answered = solveJoint(understood.value, { parts: solvedParts(parts), beyond: false });
  if (!answered.ok) return answered;
  const solved = answered.value;
  room.left -= linesIn(solved, parts);
  if (room.left < 0) return full(parts);
  const said = { modulus, measure: drive.measure };
  return ok({
    parts,
    members: membersOf(solved.forward.points[0]?.shapes ?? []),
    ways: waysOf(solved).map(({ way, path }) => ({
      way,
      points: toldOf(path.points, parts, ({ amount }) => Math.abs(amount) / solved.amount).map(({ part, point }) =>
        pointOf(point, part, said),
      ),
      events: eventsOf(path, said),
      ...(path.stopped ? { stopped: path.stopped } : {}),
    })),
  });
}

function linesIn({ back, network }: Solved, parts: number): number {
  return (parts + 1) * (back ? 2 : 1) * network.model.members.length;
}

function full(parts: number): Result<never> {
  const message = `The document would hold more than ${MOST_LINES} middle lines; ask for fewer than ${parts} points, or for fewer joints at a time`;
  return fail({ code: 'too-large', message, field: 'path', value: parts, limit: MOST_LINES });
}

function pointOf(point: SolvedPoint, part: number | null, { modulus, measure }: { modulus: number; measure: Measure }) {
  return {
    part,
    ...amounts('amount', figures(point.amount), measure),
    ...effort(modulus * point.effort, measure),
    energy_Nmm: modulus * point.energy,
    unstable_ways: { guided: point.unstableWays, free: point.unstableFree },
    peak_strain: peakOf(point.peak),
    strain_within: point.peakWithin,
    strain_at_roots: point.peakAtEnds,
    ...residualOf(point.residual, point.amount),
    ...(point.gap ? { gap_mm: point.gap.gap } : {}),
    places: placesOf(point.poses),
    lines: linesOf(point.shapes),
  };
}
