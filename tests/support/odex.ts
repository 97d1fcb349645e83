/** The package odex as the tests use it: an integrator that shares nothing with the core. */
import { createRequire } from 'node:module';

/** What is used of the package: its own types are source text that this project's settings would refuse. */
interface Odex {
  readonly Solver: new (size: number) => {
    absoluteTolerance: number;
    relativeTolerance: number;
    maxSteps: number;
    solve(
      f: (s: number, y: number[]) => number[],
      from: number,
      y: number[],
      to: number,
    ): { readonly y: number[]; readonly outcome: number };
  };
}
const require = createRequire(import.meta.url);

/** The extrapolation method of E. Hairer and G. Wanner. */
export const { Solver } = require('odex') as Odex;
