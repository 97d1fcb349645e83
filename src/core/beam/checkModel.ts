import type { Problem } from '../problems.ts';
import { failIfAny, ok, type Result } from '../result.ts';
import { checkActions } from './checkActions.ts';
import { checkHeld } from './checkHeld.ts';
import { checkMembers } from './checkMembers.ts';
import { checkRuns } from './checkRuns.ts';
import type { BeamModel, BeamNode } from './model.ts';
import { LIMITS, LISTS, LONGEST_ID, MOST_BECAUSE, MOST_ENTRIES } from './modelLimits.ts';
import { checkNumber, problem, quoted, someOf } from './modelProblems.ts';

/**
 * Whether a network can be solved at all: every number, every name, every shape, and that something drives it and
 * nothing of it floats away. Whether it moves well is the solver's matter.
 *
 * @param model - a network with any numbers and texts in it [mm, N, MPa, rad]
 * @returns the network itself with cautions [-], or everything that is wrong with it, each with its field
 *
 * Problems: `too-large`, `not-a-number`, `below-minimum`, `above-maximum`, `not-one-of`, `missing-field`,
 * `given-twice`, `no-such-id`, `network-shape`, `network-conflict`, `network-loose`, `network-idle`.
 * Notes: `leaf-too-thick-for-length`.
 */
export function checkModel(model: BeamModel): Result<BeamModel> {
  const tooMany = failIfAny(checkCounts(model));
  if (tooMany) return tooMany;
  const own = failIfAny([
    ...checkNumber('modulus', model.modulus, LIMITS.modulus),
    ...checkNumber('poisson', model.poisson, LIMITS.poisson),
    ...checkIds('nodes', model.nodes),
    ...checkIds('members', model.members),
    ...checkIds('pads', model.pads),
    ...checkNodes(model.nodes),
    ...checkPads(model),
    ...checkMembers(model),
    ...checkActions(model),
  ]);
  if (own) return own;
  // Lengths and parts can be told only of a network whose every name and number stands.
  const { problems, notes } = checkRuns(model);
  return failIfAny([...problems, ...checkHeld(model)]) ?? ok(model, notes);
}

function checkCounts(model: BeamModel): readonly Problem[] {
  const lists = Object.keys(LISTS) as (keyof typeof LISTS)[];
  const counts = [
    ...lists.map((list) => ({ field: list as string, count: model[list].length })),
    ...model.pads.map(({ nodes }, i) => ({ field: `pads[${i}].nodes`, count: nodes.length })),
  ];
  const tooMany = counts.flatMap(({ field, count }) =>
    count <= MOST_ENTRIES
      ? []
      : [
          problem(
            'too-large',
            field,
            `${field} holds ${count}, at most ${MOST_ENTRIES} are taken (${MOST_BECAUSE}); leave some out`,
            {
              value: count,
              limit: MOST_ENTRIES,
            },
          ),
        ],
  );
  return [...tooMany, ...(model.members.length > 0 ? [] : [noMembers()])];
}

function noMembers(): Problem {
  return problem('missing-field', 'members', 'members is empty, so nothing bends; give at least one');
}

function checkIds(list: string, entries: readonly { readonly id: string }[]): readonly Problem[] {
  const seen = new Map<string, number>();
  return entries.flatMap(({ id }, i) => {
    const field = `${list}[${i}].id`;
    const first = seen.get(id);
    if (first === undefined) seen.set(id, i);
    return checkId(field, id, first === undefined ? undefined : `${list}[${first}]`);
  });
}

function checkId(field: string, id: string, first: string | undefined): readonly Problem[] {
  if (id === '') return [problem('missing-field', field, `${field} is empty; give a name that nothing else has`)];
  if (id.length > LONGEST_ID) {
    const message = `${field} is ${id.length} characters long, at most ${LONGEST_ID} are taken; shorten it`;
    return [problem('too-large', field, message, { value: id.length, limit: LONGEST_ID })];
  }
  if (id === '__proto__') {
    const message = `${field} is “__proto__”, which programs that read the answer may stumble over; choose another`;
    return [problem('network-conflict', field, message, { value: id })];
  }
  if (first === undefined) return [];
  return [
    problem('given-twice', field, `${field} is ${quoted(id)}, which ${first} is called too; rename one`, { value: id }),
  ];
}

function checkNodes(nodes: readonly BeamNode[]): readonly Problem[] {
  return nodes.flatMap(({ x, y }, i) => [
    ...checkNumber(`nodes[${i}].x`, x, LIMITS.coordinate, 'mm'),
    ...checkNumber(`nodes[${i}].y`, y, LIMITS.coordinate, 'mm'),
  ]);
}

function checkPads({ nodes, pads }: BeamModel): readonly Problem[] {
  const known = new Set(nodes.map(({ id }) => id));
  const owner = new Map<string, string>();
  const own = pads.flatMap((pad, i) => [
    ...(pad.nodes.length > 0
      ? []
      : [
          problem(
            'network-shape',
            `pads[${i}].nodes`,
            `pads[${i}].nodes is empty; give the nodes that ${quoted(pad.id)} carries, or leave it out`,
          ),
        ]),
    ...checkNumber(`pads[${i}].at.x`, pad.at?.x, LIMITS.coordinate, 'mm'),
    ...checkNumber(`pads[${i}].at.y`, pad.at?.y, LIMITS.coordinate, 'mm'),
    ...pad.nodes.flatMap((node, j) => {
      const before = owner.get(node);
      owner.set(node, before ?? pad.id);
      return checkCarried(`pads[${i}].nodes[${j}]`, node, before, known);
    }),
  ]);
  // Supports and the answer speak of pads and free nodes by id alone.
  const shared = pads.flatMap(({ id }, i) =>
    known.has(id) && !owner.has(id)
      ? [
          problem(
            'given-twice',
            `pads[${i}].id`,
            `pads[${i}].id is ${quoted(id)}, which a node of no pad is called too; rename one`,
            { value: id },
          ),
        ]
      : [],
  );
  return [...own, ...shared];
}

function checkCarried(
  field: string,
  node: string,
  before: string | undefined,
  known: ReadonlySet<string>,
): readonly Problem[] {
  if (!known.has(node)) {
    const message = `${field} is ${quoted(node)}, but there is no such node; there are ${someOf([...known])}`;
    return [problem('no-such-id', field, message, { value: node })];
  }
  if (before === undefined) return [];
  const message = `${field} is ${quoted(node)}, which the pad ${quoted(before)} carries already; a node belongs to one pad, once`;
  return [problem('network-conflict', field, message, { value: node })];
}
