/** Whether members are slender enough to be beams, judged by how far they run on between what joins them. */
import { plain, type Problem } from '../problems.ts';
import { centrelineOf } from './centreline.ts';
import { groupsOf } from './groups.ts';
import type { BeamModel, Profile } from './model.ts';
import { SLENDER, THICKEST_SHARE } from './modelLimits.ts';
import { problem } from './modelProblems.ts';

/**
 * Members too thick for their length. One that runs on into another through a free node counts with it: a fillet may be
 * shorter than it is thick.
 *
 * @param model - network whose numbers, names and shapes have been checked [mm]
 * @returns problems [-] that refuse it and notes [-] that deserve a caution, by the first member of a run
 */
export function checkRuns(model: BeamModel): {
  readonly problems: readonly Problem[];
  readonly notes: readonly Problem[];
} {
  const lengths = lengthsOf(model);
  const said = runsOf(model).flatMap((run) => {
    const length = run.reduce((sum, i) => sum + lengths[i]!, 0);
    const thickness = Math.min(...run.map((i) => leastOf(model.members[i]!.thickness)));
    return length >= SLENDER * thickness ? [] : [tooThick(`members[${run[0]!}].thickness`, length, thickness)];
  });
  return { problems: said.filter(isRefused), notes: said.filter((each) => !isRefused(each)) };
}

function isRefused({ code }: Problem): boolean {
  return code === 'above-maximum';
}

function tooThick(field: string, length: number, thickness: number): Problem {
  const [t, l] = [`${plain(thickness)} mm`, `${plain(length)} mm`];
  if (thickness > THICKEST_SHARE * length) {
    const message = `${field} is at least ${t} on a length of ${l}, at most ${THICKEST_SHARE} times the length is taken; that is a pad, not a beam`;
    return problem('above-maximum', field, message, { value: thickness, limit: THICKEST_SHARE * length });
  }
  const message = `${field} is at least ${t} on a length of ${l}, which is under five times as long, so answers are rougher than they look; make it longer or thinner`;
  return problem('leaf-too-thick-for-length', field, message, { value: length, limit: SLENDER * thickness });
}

function leastOf(profile: Profile): number {
  if (typeof profile === 'number') return profile;
  return profile.kind === 'taper' ? Math.min(profile.from, profile.to) : profile.least;
}

function lengthsOf({ nodes, members }: BeamModel): readonly number[] {
  const place = new Map(nodes.map((node) => [node.id, node]));
  return members.map((member) => centrelineOf(member, place.get(member.from)!, place.get(member.to)!).length);
}

/** Members in runs: joined where a node of no pad has exactly two ends. */
function runsOf({ members, pads }: BeamModel): readonly (readonly number[])[] {
  const carried = new Set(pads.flatMap(({ nodes }) => nodes));
  const endsAt = new Map<string, number[]>();
  members.forEach(({ from, to }, i) => {
    for (const node of [from, to]) endsAt.set(node, [...(endsAt.get(node) ?? []), i]);
  });
  const joints = [...endsAt].flatMap(([node, [a, b, more]]) =>
    carried.has(node) || a === undefined || b === undefined || more !== undefined ? [] : [[a, b] as const],
  );
  return groupsOf(members.length, joints);
}
