/** Small networks for tests: one line each where a test speaks of one thing. */
import type { BeamModel, BeamNode, Member, Pad, Shape, Support } from '../../src/core/beam/model.ts';
import type { Point } from '../../src/core/geometry/outline.ts';
import { centrelineOf } from '../../src/core/beam/centreline.ts';
import { torsionOfRectangle } from '../../src/core/numeric/rectangleTorsion.ts';

export const HELD = { x: true, y: true, turn: true } as const;

/** A network in which nothing acts yet. */
export function network(parts: Partial<BeamModel> & Pick<BeamModel, 'nodes' | 'members'>): BeamModel {
  return {
    modulus: 2000,
    poisson: 0.35,
    pads: [],
    supports: [],
    motions: [],
    loads: [],
    springs: [],
    ties: [],
    ...parts,
  };
}

/** A member from a held node `root` at the origin to a free node `tip`. */
export function cantilever(
  shape: Shape,
  tip: Point,
  member: Partial<Member> = {},
  rest: Partial<BeamModel> = {},
): BeamModel {
  return network({
    nodes: [
      { id: 'root', x: 0, y: 0 },
      { id: 'tip', ...tip },
    ],
    members: [{ id: 'leaf', from: 'root', to: 'tip', shape, thickness: 0.84, width: 6, ...member }],
    supports: [{ at: 'root', ...HELD }],
    ...rest,
  });
}

/** Members each between a node of the held pad `fixed` and a node of the pad `moving`, whose reference point is given. */
export function between(
  lines: readonly { readonly from: Point; readonly to: Point; readonly shape?: Shape; readonly plane?: number }[],
  at: Point,
  member: Partial<Member> = {},
  rest: Partial<BeamModel> = {},
): BeamModel {
  const nodes: BeamNode[] = lines.flatMap(({ from, to }, i) => [
    { id: `f${i}`, ...from },
    { id: `m${i}`, ...to },
  ]);
  const pads: Pad[] = [
    { id: 'fixed', nodes: lines.map((_, i) => `f${i}`), at },
    { id: 'moving', nodes: lines.map((_, i) => `m${i}`), at },
  ];
  const supports: Support[] = [{ at: 'fixed', ...HELD }];
  const members: Member[] = lines.map(({ shape = { kind: 'straight' }, plane = 0 }, i) => ({
    id: `leaf${i}`,
    from: `f${i}`,
    to: `m${i}`,
    shape,
    thickness: 0.84,
    width: 6,
    plane,
    ...member,
  }));
  return network({ nodes, members, pads, supports, ...rest });
}

/** Stiffnesses of the first member's section, worked out here a second time, and its length. */
export function sectionOfFirst(model: BeamModel) {
  const [member] = model.members;
  const place = (id?: string) => model.nodes.find((node) => node.id === id);
  const [from, to] = [place(member?.from), place(member?.to)];
  if (!member || !from || !to || typeof member.thickness !== 'number') throw new Error('the first member is not plain');
  const { thickness: t, width: b } = member;
  const G = model.modulus / (2 * (1 + model.poisson));
  const J = torsionOfRectangle(Math.max(b, t) / Math.min(b, t)).c1 * Math.max(b, t) * Math.min(b, t) ** 3;
  return {
    length: centrelineOf(member, from, to).length,
    EA: model.modulus * b * t,
    kGA: (5 / 6) * G * b * t,
    EI: (model.modulus * b * t ** 3) / 12,
    EIo: (model.modulus * t * b ** 3) / 12,
    GJ: G * J,
  };
}
