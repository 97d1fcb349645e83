import { checkSurroundings, MOVEMENT_LIMITS } from '../design/movementLimits.ts';
import { findFamily } from '../flexures/known.ts';
import { findFilament } from '../material/shelf.ts';
import { checkProfile } from '../print/checkProfile.ts';
import { LYINGS } from '../print/profile.ts';
import { outsideRange, plain, type Problem, type Range } from '../problems.ts';
import type { Mm } from '../units.ts';
import { depthsFor } from './lots.ts';
import type { Wanted } from './wanted.ts';

/** What a search may be asked for besides what a joint may: room [mm], and what may stay bent as a share of the amount [-]. */
export const WANTED_LIMITS = {
  along: { min: 1, max: 300, because: 'less holds no flexure, and more does not fit a usual plate' },
  across: { min: 0.5, max: 300, because: 'less is about one line, and more does not fit a usual plate' },
  depth: { min: 0.4, max: 300, because: 'less is a single thick layer or line, and more does not fit a usual plate' },
  set: { min: 0.001, max: 1, because: 'less cannot be measured, and more than all of it cannot stay' },
} as const satisfies Record<string, Range>;

type Checked = Problem | undefined;

/** Depths are tried in steps, and between two of them there is none. */
function noDepthBetween(most: Mm, depthAtLeast: Mm): Checked {
  if (depthsFor({ room: { along: 0, across: 0, depth: most }, depthAtLeast }).length > 0) return undefined;
  const limit =
    depthsFor({ room: { along: 0, across: 0, depth: most }, depthAtLeast: 0 }).at(-1) ?? WANTED_LIMITS.depth.min;
  const message = `No depth is tried between ${plain(depthAtLeast)} and ${plain(most)} mm; let it be ${plain(limit)} mm`;
  return { code: 'no-depth-between', message, field: 'depthAtLeast', value: depthAtLeast, limit };
}

function checkRoom({ room, depthAtLeast }: Wanted): readonly Checked[] {
  const sides = (['along', 'across', 'depth'] as const).map((side) =>
    outsideRange(`room.${side}`, `room ${side}`, room[side], WANTED_LIMITS[side]),
  );
  const shallow = { ...WANTED_LIMITS.depth, max: room.depth, because: 'there is no more depth than the room has' };
  const least = outsideRange('depthAtLeast', 'depth at least', depthAtLeast, shallow);
  return [...sides, least ?? (sides.some((side) => side) ? undefined : noDepthBetween(room.depth, depthAtLeast))];
}

function checkEffort({ movement, effortAtLeast }: Wanted): readonly Checked[] {
  const { effortAtMost } = movement;
  const { min, max, because } = MOVEMENT_LIMITS.effortAtMost;
  const most = {
    min,
    max: effortAtMost ?? max,
    because: effortAtMost === undefined ? because : 'it may push no harder',
  };
  return [
    effortAtMost === undefined
      ? undefined
      : outsideRange('movement.effortAtMost', 'effort at most', effortAtMost, MOVEMENT_LIMITS.effortAtMost, ''),
    effortAtLeast === undefined ? undefined : outsideRange('effortAtLeast', 'effort at least', effortAtLeast, most, ''),
  ];
}

function checkSet({ movement: { amount }, measure, setAtMost }: Wanted): Checked {
  if (setAtMost === undefined) return undefined;
  const { min, max, because } = WANTED_LIMITS.set;
  const range = { min: min * amount, max: max * amount, because };
  return outsideRange('setAtMost', 'what may stay bent', setAtMost, range, measure === 'turn' ? '°' : 'mm');
}

/** At least one of each is ticked, and each of them is known. */
function checkTicked(
  field: 'families' | 'filaments' | 'lyings',
  what: string,
  ticked: readonly string[],
  isKnown: (id: string) => boolean,
): Checked {
  const strange = ticked.find((id) => !isKnown(id));
  if (strange !== undefined) {
    return {
      code: 'not-one-of',
      message: `There is no ${what} called “${strange}”; tick one from the list`,
      field,
      value: strange,
    };
  }
  if (ticked.length > 0) return undefined;
  return { code: 'none-ticked', message: `No ${what} is ticked, so nothing can be tried; tick at least one`, field };
}

/** The parts of a movement that do not depend on the kind; how far each kind goes is a matter of the search. */
function checkMoved({ movement }: Wanted): readonly Checked[] {
  const { amount, cycles, chance, ways, least } = movement;
  const some: Range = { min: 1e-6, max: 1e4, because: 'it must move, and nothing from a desktop printer moves so far' };
  const back: Range = {
    min: -amount,
    max: amount * (1 - 1e-12),
    because: 'it comes back short of where it goes, and no farther to the other side',
  };
  return [
    outsideRange('movement.amount', 'amount', amount, some, ''),
    ways === 'between' ? outsideRange('movement.least', 'other end', least ?? 0, back, '') : undefined,
    outsideRange('movement.cycles', 'number of flexes', cycles, MOVEMENT_LIMITS.cycles, ''),
    Number.isFinite(cycles) && !Number.isInteger(cycles)
      ? {
          code: 'not-whole',
          message: `number of flexes ${plain(cycles)} is not whole; give a count`,
          field: 'movement.cycles',
          value: cycles,
        }
      : undefined,
    outsideRange('movement.chance', 'chance', chance, MOVEMENT_LIMITS.chance, ''),
  ];
}

/**
 * What is wrong with what is looked for; empty when it can be searched for.
 *
 * Problems: those of `checkProfile`, `not-a-number`, `not-whole`, `below-minimum`, `above-maximum`, `not-one-of`, `no-depth-between`,
 * `none-ticked`.
 *
 * @param wanted - what is looked for: room [mm], effort [N·mm] or [N], set and amounts [rad] or [mm]; anything, as typed or read
 * @returns refusals [-] whose fields are paths in `wanted`, for example `room.along`
 */
export function checkWanted(wanted: Wanted): readonly Problem[] {
  return [
    ...checkMoved(wanted),
    ...checkEffort(wanted),
    ...checkRoom(wanted),
    checkSet(wanted),
    ...checkProfile(wanted.profile).problems,
    ...checkSurroundings(wanted.surroundings),
    checkTicked('families', 'kind', wanted.families, (id) => findFamily(id) !== undefined),
    checkTicked('filaments', 'filament', wanted.filaments, (id) => findFilament(id) !== undefined),
    checkTicked('lyings', 'way to lie', wanted.lyings, (id) => LYINGS.some((lying) => lying === id)),
  ].filter((problem) => problem !== undefined);
}
