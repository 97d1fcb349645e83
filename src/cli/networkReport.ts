/** What the terminal says about a network in the solver's own terms: its path, and how stiff its pads are. Pure. */
import type { MemberShape, PathAnswer, PathEvent, PathPoint, Reaction } from '../core/beam/answer.ts';
import type { BeamModel } from '../core/beam/model.ts';
import { followPath, type SolveAsked } from '../core/beam/solve.ts';
import { spatialStiffness } from '../core/beam/spatialStiffness.ts';
import type { Problem } from '../core/problems.ts';
import { UNITS, type Json } from './keys.ts';
import { MOST_LINES } from './pathReport.ts';
import { solvedParts, toldOf } from './parts.ts';
import { sayable } from './sayable.ts';
import { errorOf, linesOf, membersOf, peakOf, placesOf, residualOf, stiffnessesOf } from './states.ts';

export const NETWORK_HEADER = { format: 'bendbook-network-answer', version: 1, units: UNITS } as const;

export interface NetworkAsked extends Pick<SolveAsked, 'accuracy' | 'elements' | 'cancelled'> {
  readonly parts: number;
  /** The pad or free node whose stiffnesses are wanted; every one that moves when left out. */
  readonly pad?: string | undefined;
}

export interface NetworkReport {
  readonly problems: readonly Problem[];
  readonly [key: string]: unknown;
}

/**
 * Everything the solver answers about a network. What went wrong stands in `problems`; points up to there stand.
 *
 * Problems: `no-such-id` for the pad, `too-large` where the document would be, and why the path ends early.
 *
 * @param model - a network that has been checked
 * @param notes - what reading it said
 * @param asked - points, accuracy, pad
 */
export function reportNetwork(model: BeamModel, notes: readonly Problem[], asked: NetworkAsked): NetworkReport {
  const { parts, pad, ...how } = asked;
  const refused = [...checkPad(model, pad), ...checkLines(model, parts)];
  if (refused.length > 0) return { notes, problems: refused };
  const answer = followPath(model, { ...how, parts: solvedParts(parts), shapes: true });
  const said = [...notes];
  const stopped = [answer.stopped, answer.second?.path.stopped].filter((problem) => problem !== undefined);
  return {
    accuracy: how.accuracy ?? 'interactive',
    members: membersOf(answer.shapes[0] ?? []),
    path: pathOf(answer, parts),
    ...(answer.second ? { second: secondOf(answer.second, parts) } : {}),
    error: sayable(errorOf(answer.error), 'error', said),
    iterations: answer.iterations,
    stiffness: sayable(stiffnessOf(model, pad), 'stiffness', said),
    notes: said,
    problems: stopped,
  };
}

/** Ids of what moves by itself: pads, and nodes of none. */
function movers({ nodes, pads }: BeamModel): readonly string[] {
  const carried = new Set(pads.flatMap((pad) => pad.nodes));
  return [...pads, ...nodes.filter(({ id }) => !carried.has(id))].map(({ id }) => id);
}

function checkPad(model: BeamModel, pad: string | undefined): readonly Problem[] {
  if (pad === undefined || movers(model).includes(pad)) return [];
  const message = `There is no pad or free node “${pad}”; give the id of one, or leave it out for all that move`;
  return [{ code: 'no-such-id', message, field: 'pad', value: pad }];
}

function checkLines({ members }: BeamModel, parts: number): readonly Problem[] {
  const lines = members.length * (parts + 1);
  if (lines <= MOST_LINES) return [];
  const message = `${parts} points of ${members.length} members are ${lines} middle lines, at most ${MOST_LINES} are told; ask for fewer points`;
  return [{ code: 'too-large', message, field: 'path', value: parts, limit: MOST_LINES }];
}

function pathOf({ points, shapes, events, stopped }: PathAnswer, parts: number) {
  return {
    points: toldOf(points, parts, ({ share }) => share).map(({ part, point, index }) => ({
      part,
      ...pointOf(point, shapes[index] ?? []),
    })),
    events: events.map(eventOf),
    ...(stopped ? { stopped } : {}),
  };
}

function secondOf({ path, imperfection, leaves }: NonNullable<PathAnswer['second']>, parts: number) {
  return { leaves_at_share: leaves, imperfection_mm: imperfection, ...pathOf(path, parts) };
}

function eventOf({ kind, share, effort, energy, stable }: PathEvent) {
  const stays = kind === 'rest' ? { stays: stable } : {};
  return { kind, share, effort_Nmm: effort, energy_Nmm: energy, ...stays };
}

function reactionOf({ at, x, y, moment }: Reaction) {
  return { at, x_N: x, y_N: y, moment_Nmm: moment };
}

function pointOf(point: PathPoint, shapes: readonly MemberShape[]) {
  return {
    share: point.share,
    effort_Nmm: point.effort,
    energy_Nmm: point.energy,
    unstable_ways: { guided: point.unstableWays, free: point.unstableFree },
    reactions: point.reactions.map(reactionOf),
    places: placesOf(point.poses),
    peak_strain: peakOf(point.peak),
    strain_within: point.peakWithin,
    strain_at_roots: point.peakAtEnds,
    ...residualOf(point.residual, point.share),
    iterations: point.iterations,
    lines: linesOf(shapes),
  };
}

/** Of one pad, or of all pads that are not wholly held and of free nodes that something is put on. */
function stiffnessOf(model: BeamModel, pad: string | undefined): Json {
  return (pad === undefined ? moving(model) : [pad]).map((of) => ({
    of,
    ...stiffnessesOf(spatialStiffness(model, of)),
  }));
}

function moving(model: BeamModel): readonly string[] {
  const { pads, supports, motions, loads } = model;
  const isPad = new Set(pads.map(({ id }) => id));
  const isPut = new Set([...motions, ...loads].map(({ at }) => at));
  const isHeld = (id: string) =>
    (['x', 'y', 'turn'] as const).every((direction) =>
      supports.some((support) => support.at === id && support[direction] === true),
    );
  return movers(model).filter((id) => (isPad.has(id) ? !isHeld(id) : isPut.has(id)));
}
