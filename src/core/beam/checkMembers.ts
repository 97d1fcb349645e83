/** Whether every member of a network can be laid out as it is told. */
import type { Point } from '../geometry/outline.ts';
import { plain, type Problem } from '../problems.ts';
import { centrelineOf } from './centreline.ts';
import type { BeamModel, Member, Profile, Shape } from './model.ts';
import { FULL_TURN, LIMITS, SPIRAL_MISS } from './modelLimits.ts';
import { checkNumber, problem, quoted, someOf } from './modelProblems.ts';

/**
 * What is wrong with the members of a network, one by one.
 *
 * @param model - a network with any numbers and texts in it [mm, MPa, rad]
 * @returns problems [-], empty when every member can be laid out
 */
export function checkMembers(model: BeamModel): readonly Problem[] {
  const nodes = new Map(model.nodes.map((node) => [node.id, node]));
  return model.members.flatMap((member, i) => {
    const field = `members[${i}]`;
    const own = [
      ...checkEnd(`${field}.from`, member.from, nodes),
      ...checkEnd(`${field}.to`, member.to, nodes),
      ...checkNumber(`${field}.width`, member.width, LIMITS.width, 'mm'),
      ...checkNumber(`${field}.widthRatio`, member.widthRatio, LIMITS.widthRatio),
      ...checkNumber(`${field}.plane`, member.plane, LIMITS.plane),
      ...checkHinged(`${field}.hinged`, member.hinged),
      ...checkThickness(`${field}.thickness`, member.thickness, member.shape),
    ];
    const [from, to] = [nodes.get(member.from), nodes.get(member.to)];
    const areKnown =
      from !== undefined &&
      to !== undefined &&
      [from.x, from.y, to.x, to.y].every((v) => Math.abs(v) <= LIMITS.coordinate.max);
    if (!areKnown) return own;
    const ways = member.from === member.to ? [toItself(field, member)] : checkShape(field, member.shape, from, to);
    return [...own, ...(own.length + ways.length > 0 ? ways : checkCurve(field, member, from, to))];
  });
}

function checkEnd(field: string, id: string, nodes: ReadonlyMap<string, Point>): readonly Problem[] {
  if (nodes.has(id)) return [];
  const message = `${field} is ${quoted(id)}, but there is no such node; there are ${someOf([...nodes.keys()])}`;
  return [problem('no-such-id', field, message, { value: id })];
}

function toItself(field: string, { to }: Member): Problem {
  const message = `${field} runs from ${quoted(to)} to itself; give it another node to end at`;
  return problem('network-shape', `${field}.to`, message, { value: to });
}

function notOneOf(field: string, value: string, choices: readonly string[]): Problem {
  const limit = choices.join(', ');
  return problem('not-one-of', field, `${field} is ${quoted(value)}, expected one of ${limit}`, { value, limit });
}

function checkHinged(field: string, hinged: Member['hinged']): readonly Problem[] {
  const choices = ['from', 'to', 'both'];
  return hinged === undefined || choices.includes(hinged) ? [] : [notOneOf(field, hinged, choices)];
}

const PARTS = ['whole', 'opening', 'closing'];

function checkThickness(field: string, profile: Profile, shape: Shape): readonly Problem[] {
  if (typeof profile === 'number') return checkNumber(field, profile, LIMITS.thickness, 'mm');
  if (profile.kind === 'taper') {
    return [
      ...checkNumber(`${field}.from`, profile.from, LIMITS.thickness, 'mm'),
      ...checkNumber(`${field}.to`, profile.to, LIMITS.thickness, 'mm'),
    ];
  }
  if (profile.kind !== 'notch')
    return [notOneOf(`${field}.kind`, String((profile as { kind: unknown }).kind), ['taper', 'notch'])];
  const curved =
    shape.kind === 'straight'
      ? []
      : [
          problem(
            'network-shape',
            field,
            `${field} is a notch, but the member is not straight; make it straight or give it a plain thickness`,
            { value: shape.kind, limit: 'straight' },
          ),
        ];
  return [
    ...checkNumber(`${field}.least`, profile.least, LIMITS.thickness, 'mm'),
    ...checkNumber(`${field}.deep`, profile.deep, LIMITS.deep, 'mm'),
    ...(PARTS.includes(profile.part) ? [] : [notOneOf(`${field}.part`, profile.part, PARTS)]),
    ...curved,
  ];
}

/** One check for each kind: a new kind does not compile without. */
const SHAPES: {
  readonly [K in Shape['kind']]: (
    f: string,
    s: Extract<Shape, { kind: K }>,
    from: Point,
    to: Point,
  ) => readonly Problem[];
} = {
  straight: (field, _, from, to) => checkChord(field, from, to),
  arc: (field, { turn }, from, to) => [...checkChord(field, from, to), ...checkArcTurn(`${field}.shape.turn`, turn)],
  wave: (field, { rise }, from, to) => [
    ...checkChord(field, from, to),
    ...checkNumber(`${field}.shape.rise`, rise, LIMITS.coordinate, 'mm'),
  ],
  rise: (field, { heading }, from, to) => {
    const own = checkNumber(`${field}.shape.heading`, heading, LIMITS.heading);
    return own.length > 0 ? own : checkRise(field, heading, from, to);
  },
  spiral: (field, { centre, turns }, from, to) => {
    const own = [
      ...checkNumber(`${field}.shape.centre.x`, centre.x, LIMITS.coordinate, 'mm'),
      ...checkNumber(`${field}.shape.centre.y`, centre.y, LIMITS.coordinate, 'mm'),
      ...checkNumber(`${field}.shape.turns`, turns, LIMITS.turns),
    ];
    return own.length > 0 ? own : checkSpiral(field, centre, turns, from, to);
  },
};

function checkShape(field: string, shape: Shape, from: Point, to: Point): readonly Problem[] {
  if (!Object.hasOwn(SHAPES, shape.kind)) return [notOneOf(`${field}.shape.kind`, shape.kind, Object.keys(SHAPES))];
  const check = SHAPES[shape.kind] as (f: string, s: Shape, a: Point, b: Point) => readonly Problem[];
  return check(field, shape, from, to);
}

function checkChord(field: string, from: Point, to: Point): readonly Problem[] {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const { min } = LIMITS.length;
  if (chord >= min) return [];
  const message = `${field} has its nodes ${plain(chord)} mm apart, at least ${min} mm are needed; move one or leave it out`;
  return [problem('network-shape', field, message, { value: chord, limit: min })];
}

function checkArcTurn(field: string, turn: number): readonly Problem[] {
  if (!(Math.abs(turn) >= FULL_TURN && Number.isFinite(turn))) return checkNumber(field, turn, LIMITS.turn);
  const message = `${field} is ${plain(turn)} rad, but an arc turns less than a full turn of ${plain(FULL_TURN)} rad; make two of it`;
  return [problem('above-maximum', field, message, { value: turn, limit: FULL_TURN })];
}

function checkRise(field: string, heading: number, from: Point, to: Point): readonly Problem[] {
  const along = (to.x - from.x) * Math.cos(heading) + (to.y - from.y) * Math.sin(heading);
  const { min } = LIMITS.length;
  if (along >= min) return [];
  const message = `${field} comes ${plain(along)} mm on along its heading, at least ${min} mm are needed; turn the heading towards its second node`;
  return [problem('network-shape', `${field}.shape.heading`, message, { value: along, limit: min })];
}

function checkSpiral(field: string, centre: Point, turns: number, from: Point, to: Point): readonly Problem[] {
  const radii = [from, to].map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y));
  const least = Math.min(...radii);
  if (!(least >= LIMITS.length.min)) {
    const message = `${field}.shape.centre lies ${plain(least)} mm from a node of the spiral, at least ${LIMITS.length.min} mm are needed; move it to what the spiral winds about`;
    return [problem('network-shape', `${field}.shape.centre`, message, { value: least, limit: LIMITS.length.min })];
  }
  if (turns === 0) {
    const message = `${field}.shape.turns is 0, so the spiral never comes round; give its turns, or make the member straight`;
    return [problem('network-shape', `${field}.shape.turns`, message, { value: 0 })];
  }
  const seen = Math.atan2(to.y - centre.y, to.x - centre.x) - Math.atan2(from.y - centre.y, from.x - centre.x);
  const off = (seen - FULL_TURN * turns) / FULL_TURN;
  const missed = off - Math.round(off);
  if (Math.abs(missed) * FULL_TURN <= SPIRAL_MISS) return [];
  const agreeing = Number((turns + missed).toPrecision(12));
  const message = `${field}.shape.turns is ${turns}, but from its centre its nodes lie ${agreeing} turns apart; give ${agreeing}, or move a node`;
  return [problem('network-shape', `${field}.shape.turns`, message, { value: turns, limit: agreeing })];
}

/** Places along a curve at which it is looked at. */
const LOOKS = 64;

/** Length, and whether the inner side of a bend still has a radius. */
function checkCurve(field: string, member: Member, from: Point, to: Point): readonly Problem[] {
  const curve = centrelineOf(member, from, to);
  const { min, max } = LIMITS.length;
  if (!(curve.length >= min && curve.length <= max)) {
    const message = `${field} is ${plain(curve.length)} mm long, ${min} to ${max} mm are taken; move its nodes or change its shape`;
    return [problem('network-shape', field, message, { value: curve.length, limit: curve.length < min ? min : max })];
  }
  const looks = Array.from({ length: LOOKS + 1 }, (_, i) => i / LOOKS);
  const folded = looks.find((u) => !(Math.abs(curve.curvature(u)) * curve.thickness(u) < 2));
  if (folded === undefined) return [];
  const [radius, half] = [1 / Math.abs(curve.curvature(folded)), curve.thickness(folded) / 2];
  const message = `${field} bends to a radius of ${plain(radius)} mm, but half its thickness is ${plain(half)} mm, so its inner side would fold over; bend it less or thin it`;
  return [problem('network-shape', `${field}.shape`, message, { value: radius, limit: half })];
}
