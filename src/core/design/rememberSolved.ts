import type { Filament } from '../material/types.ts';
import { fail, type Result } from '../result.ts';
import { leastOf } from './joint.ts';
import { solveJoint, type SolveDetail } from './solveJoint.ts';
import type { Solved } from './solved.ts';
import type { Understood } from './understand.ts';

/** How a checked joint is solved: anew each time, or remembered. */
export type Solve = (understood: Understood, detail?: SolveDetail) => Result<Solved>;

/** Enough for every joint of a usual part and a search for ways out; one of them takes up to a megabyte. */
const MOST = 48;

/** All that a solved way depends on: of the filament only Poisson's ratio, of the brief only how it is moved. */
function keyOf(understood: Understood, detail: SolveDetail): string {
  const { family, sizes, section, filament, joint } = understood;
  const { drive, amount } = joint.movement;
  const { parts, whole, beyond, accuracy } = detail;
  const poisson = filament.properties.poissonsRatio.typical;
  return JSON.stringify([
    [family.id, Object.entries(sizes), section.thickness, section.width, poisson],
    // One way or between is the same where it never goes back.
    [drive, amount, Math.min(0, leastOf(joint.movement))],
    // How near counts as near, where it is looked for.
    [parts, whole, beyond, accuracy, whole === false ? undefined : joint.profile.lineWidth],
  ]);
}

/**
 * A solver that remembers what it has solved last, so that another filament, number of flexes or share of prints does
 * not solve the same network again. What was cancelled is not remembered.
 *
 * @param solve - what solves [-]
 * @param most - how many ways are kept [-], ≥ 1
 * @returns the same answers as `solve`
 */
export function rememberSolved(solve: Solve = solveJoint, most = MOST): Solve {
  const known = new Map<string, Result<Solved>>();
  return (understood, detail = {}) => {
    const key = keyOf(understood, detail);
    const found = known.get(key) ?? solve(understood, detail);
    // The last used is put last, so that the first is the one to forget.
    known.delete(key);
    if (!wasCancelled(found)) known.set(key, found);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
    return found;
  };
}

function wasCancelled(solved: Result<Solved>): boolean {
  if (!solved.ok) return false;
  const { forward, back } = solved.value;
  return forward.stopped?.code === 'cancelled' || back?.stopped?.code === 'cancelled';
}

/**
 * A solver for a search among filaments, which takes each to narrow as much as one of them does, so that what is solved
 * for one is known of all. Strains hardly depend on it (shear alone does); efforts of wide strips by up to a twelfth.
 * What is found so is to be solved as it is before it is told.
 *
 * @param solve - what solves [-]
 * @param like - the filament whose Poisson's ratio is taken [-]
 * @returns nearly the same answers as `solve`
 */
export function narrowingLike(solve: Solve, like: Pick<Filament, 'properties'>): Solve {
  const { poissonsRatio } = like.properties;
  return (understood, detail) => {
    const { filament } = understood;
    return solve(
      { ...understood, filament: { ...filament, properties: { ...filament.properties, poissonsRatio } } },
      detail,
    );
  };
}

/**
 * A solver for a search that must end: after so many asks it refuses.
 *
 * Problems: `over-budget`.
 *
 * @param solve - what solves [-]
 * @param most - asks that are answered [-], ≥ 0
 * @returns the same answers as `solve` while they last, and whether one was refused
 */
export function withinSolves(solve: Solve, most: number): { readonly solve: Solve; readonly isCut: () => boolean } {
  let asked = 0;
  const bounded: Solve = (understood, detail) => {
    asked += 1;
    if (asked <= most) return solve(understood, detail);
    const message = `The search has solved ${most} joints, the most it may; ask for less, or look on from another joint`;
    return fail({ code: 'over-budget', message, field: 'joint', value: asked, limit: most });
  };
  return { solve: bounded, isCut: () => asked > most };
}
