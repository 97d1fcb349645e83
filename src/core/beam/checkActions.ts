/** Whether what acts on a network names what is there, and no two things ask for the same movement. */
import type { Problem, Range } from '../problems.ts';
import type { BeamModel } from './model.ts';
import { LIMITS } from './modelLimits.ts';
import { checkNumber, problem, quoted, someOf } from './modelProblems.ts';

const DIRECTIONS = ['x', 'y', 'turn'] as const;
type Direction = (typeof DIRECTIONS)[number];

/**
 * What is wrong with the supports, motions, loads, springs and ties of a network, and whether anything drives it.
 *
 * @param model - a network with any numbers and texts in it [mm, N, rad]
 * @returns problems [-], empty when all can act
 */
export function checkActions(model: BeamModel): readonly Problem[] {
  return [...checkPlaces(model), ...checkAmounts(model), ...checkConflicts(model), ...checkDriven(model)];
}

function checkPlaces(model: BeamModel): readonly Problem[] {
  const owner = new Map(model.pads.flatMap(({ id, nodes }) => nodes.map((node) => [node, id] as const)));
  const pads = new Set(model.pads.map(({ id }) => id));
  const free = new Set(model.nodes.map(({ id }) => id).filter((id) => !owner.has(id)));
  const check = (field: string, id: string): readonly Problem[] => {
    if (pads.has(id) || free.has(id)) return [];
    const pad = owner.get(id);
    const message =
      pad === undefined
        ? `${field} is ${quoted(id)}, but there is no such pad, nor such a node of no pad; there are ${someOf([...pads, ...free])}`
        : `${field} is ${quoted(id)}, a node that the pad ${quoted(pad)} carries; name the pad`;
    return [problem('no-such-id', field, message, pad === undefined ? { value: id } : { value: id, limit: pad })];
  };
  const each = (list: 'supports' | 'motions' | 'loads' | 'springs' | 'ties') =>
    model[list].flatMap(({ at }, i) => check(`${list}[${i}].at`, at));
  return [
    ...each('supports'),
    ...each('motions'),
    ...each('loads'),
    ...each('springs'),
    ...model.springs.flatMap(({ at, to }, i) =>
      to === undefined ? [] : checkOther(`springs[${i}].to`, at, to, check),
    ),
    ...each('ties'),
    ...model.ties.flatMap(({ at, like }, i) => checkOther(`ties[${i}].like`, at, like, check)),
  ];
}

function checkOther(
  field: string,
  at: string,
  other: string,
  check: (field: string, id: string) => readonly Problem[],
): readonly Problem[] {
  if (at !== other) return check(field, other);
  const message = `${field} is ${quoted(other)}, which it starts from; name another pad or free node`;
  return [problem('network-conflict', field, message, { value: other })];
}

function checkAmounts({ motions, loads, springs, ties }: BeamModel): readonly Problem[] {
  type Ranges = Readonly<Record<string, Range>>;
  const moves: Ranges = { x: LIMITS.move, y: LIMITS.move, turn: LIMITS.turn };
  const pushes: Ranges = { x: LIMITS.load, y: LIMITS.load, moment: LIMITS.load };
  const stiff: Ranges = { x: LIMITS.stiffness, y: LIMITS.stiffness, turn: LIMITS.stiffness, twist: LIMITS.stiffness };
  const times: Ranges = { x: LIMITS.factor, y: LIMITS.factor, turn: LIMITS.factor };
  const each = (list: string, entries: readonly object[], ranges: Ranges) =>
    entries.flatMap((entry, i) =>
      Object.entries(ranges).flatMap(([name, range]) =>
        checkNumber(`${list}[${i}].${name}`, (entry as Readonly<Record<string, number | undefined>>)[name], range),
      ),
    );
  return [
    ...each('motions', motions, moves),
    ...each('loads', loads, pushes),
    ...each('springs', springs, stiff),
    ...each('ties', ties, times),
  ];
}

function key(at: string, direction: Direction): string {
  return `${direction} ${at}`;
}

/** Who has the say over each movement: at most one support, motion or tie, and no chain of ties. */
function checkConflicts({ supports, motions, ties }: BeamModel): readonly Problem[] {
  const taken = new Map<string, string>();
  const problems: Problem[] = [];
  const take = (field: string, at: string, direction: Direction) => {
    const by = taken.get(key(at, direction));
    if (by === undefined) taken.set(key(at, direction), field);
    else problems.push(contested(`${field}.${direction}`, at, direction, by));
  };
  // Held twice is held.
  supports.forEach((support, i) => {
    for (const d of DIRECTIONS) if (support[d] === true) taken.set(key(support.at, d), `supports[${i}]`);
  });
  motions.forEach((motion, i) => {
    for (const d of DIRECTIONS) if (motion[d] !== undefined) take(`motions[${i}]`, motion.at, d);
  });
  ties.forEach((tie, i) => {
    for (const d of DIRECTIONS) if (tie[d] !== undefined) take(`ties[${i}]`, tie.at, d);
  });
  ties.forEach((tie, i) => {
    for (const d of DIRECTIONS) {
      const by = taken.get(key(tie.like, d));
      if (tie[d] === undefined || tie.like === tie.at || by?.startsWith('ties') !== true) continue;
      const field = `ties[${i}].like`;
      const message = `${field} is ${quoted(tie.like)}, which ${by} ties in ${wordFor(d)} itself; tie both to the same third`;
      problems.push(problem('network-conflict', field, message, { value: tie.like }));
    }
  });
  return problems;
}

function wordFor(direction: Direction): string {
  return direction === 'turn' ? 'turning' : direction;
}

function contested(field: string, at: string, direction: Direction, by: string): Problem {
  const message = `${field} asks for ${quoted(at)} in ${wordFor(direction)}, over which ${by} has the say already; leave one out`;
  return problem('network-conflict', field, message, { value: at });
}

function checkDriven({ motions, loads }: BeamModel): readonly Problem[] {
  const amounts = [
    ...motions.flatMap(({ x, y, turn }) => [x, y, turn]),
    ...loads.flatMap(({ x, y, moment }) => [x, y, moment]),
  ].filter((amount) => amount !== undefined);
  if (amounts.some((amount) => amount !== 0)) return [];
  const message =
    amounts.length === 0
      ? 'Nothing moves or loads the network; give a motion or a load'
      : 'Every motion and load of the network is 0; give one another amount';
  return [problem('network-idle', 'motions', message)];
}
