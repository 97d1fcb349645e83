/**
 * The planar rod that stretches, shears and bends, solved a second time: its equations written anew as a system of the
 * first order, integrated by an extrapolation method, with the unknown forces at the root found by Newton's method on
 * differences. It shares no code and no method with the solver.
 */
import { Solver } from './odex.ts';

/** A rod by its own coordinate u from 0 to 1: length per u, as-printed curvature, and stiffness EA, GA, EI there. */
export interface Rod {
  readonly speed: (u: number) => number;
  readonly curvature: (u: number) => number;
  readonly stiffness: (u: number) => { readonly axial: number; readonly shear: number; readonly bending: number };
}

/** Place, direction and moment at a section. */
export interface Section {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly moment: number;
}

/** The force along a rod (that which what follows puts on what comes before), and the section at its end. */
export interface Solved extends Section {
  readonly forceX: number;
  readonly forceY: number;
  readonly rootMoment: number;
  readonly energy: number;
}

/** From the root on, with a force that is the same all along because nothing acts between the ends. */
function integrate(rod: Rod, root: Section, forceX: number, forceY: number): Section & { readonly energy: number } {
  const solver = new Solver(5);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-13;
  // A rod that needs more winds round and round: the forces are out of all bounds.
  solver.maxSteps = 300;
  const slopes = (u: number, [, , angle = NaN, moment = NaN]: number[]) => {
    const { axial, shear, bending } = rod.stiffness(u);
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const [along, across] = [forceX * c + forceY * s, forceY * c - forceX * s];
    const [stretched, sheared] = [1 + along / axial, across / shear];
    const dx = stretched * c - sheared * s;
    const dy = stretched * s + sheared * c;
    const stored = (along * along) / axial + (across * across) / shear + (moment * moment) / bending;
    const all = [dx, dy, rod.curvature(u) + moment / bending, dy * forceX - dx * forceY, stored / 2];
    return all.map((slope) => slope * rod.speed(u));
  };
  const { y, outcome } = solver.solve(slopes, 0, [root.x, root.y, root.angle, root.moment, 0], 1);
  if (outcome !== 0) throw new Error('the rod cannot be integrated; start nearer');
  return { x: y[0]!, y: y[1]!, angle: y[2]!, moment: y[3]!, energy: y[4]! };
}

/**
 * Finds force and moment at the root for which the end is as asked.
 *
 * @param rod - the rod
 * @param root - where it is held: place and direction
 * @param misses - three numbers of one size that are 0 when the end is as asked
 * @param start - forces and moment to start from
 * @param scale - sizes of force and moment, for differences
 */
export function shoot(
  rod: Rod,
  root: Omit<Section, 'moment'>,
  misses: (end: Solved) => readonly [number, number, number],
  scale: { readonly force: number; readonly moment: number },
  start: readonly [number, number, number] = [0, 0, 0],
): Solved {
  const run = ([forceX, forceY, moment]: readonly number[]): Solved => {
    const given = [forceX! * scale.force, forceY! * scale.force, moment! * scale.moment] as const;
    const end = integrate(rod, { ...root, moment: given[2] }, given[0], given[1]);
    return { ...end, forceX: given[0], forceY: given[1], rootMoment: given[2] };
  };
  let z: readonly number[] = [start[0] / scale.force, start[1] / scale.force, start[2] / scale.moment];
  for (let i = 0; i < 30; i += 1) {
    const miss = misses(run(z));
    const step = 1e-6;
    const columns = z.map((_, k) => {
      const moved = (by: number) => misses(run(z.map((value, j) => (j === k ? value + by : value))));
      const [more, less] = [moved(step), moved(-step)];
      return more.map((value, r) => (value - less[r]!) / (2 * step));
    });
    const change = solveThree(columns, miss);
    z = z.map((value, k) => value - change[k]!);
    if (Math.hypot(...change) < 1e-12 * Math.max(1, Math.hypot(...z))) return run(z);
  }
  const left = Math.hypot(...misses(run(z)));
  if (left < 1e-11) return run(z);
  throw new Error(`shooting does not converge: ${left} is left`);
}

const det = ([a, b, c]: readonly (readonly number[])[]) =>
  a![0]! * (b![1]! * c![2]! - b![2]! * c![1]!) -
  b![0]! * (a![1]! * c![2]! - a![2]! * c![1]!) +
  c![0]! * (a![1]! * b![2]! - a![2]! * b![1]!);

/** Cramer's rule; the three columns, then the right side. */
function solveThree(columns: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const whole = det(columns);
  return columns.map((_, k) => det(columns.map((column, j) => (j === k ? right : column))) / whole);
}
