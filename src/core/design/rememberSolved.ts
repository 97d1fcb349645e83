import type { Result } from '../result.ts';
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
  const { drive, amount, ways } = joint.movement;
  const { parts, whole, beyond, accuracy } = detail;
  const poisson = filament.properties.poissonsRatio.typical;
  return JSON.stringify([
    [family.id, Object.entries(sizes), section.thickness, section.width, poisson],
    [drive, amount, ways],
    [parts, whole, beyond, accuracy],
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
