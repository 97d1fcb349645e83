import { assess, type Judge } from '../core/design/assess.ts';
import { bySolver } from '../core/design/bySolver.ts';
import type { Solve } from '../core/design/rememberSolved.ts';
import type { SolveDetail } from '../core/design/solveJoint.ts';
import type { Alive } from './protocol.ts';

/** What assesses by the solver, and says meanwhile that it is alive; what is remembered is not solved anew. */
export function judgeWith(detail: SolveDetail, alive: Alive, solve: Solve): Judge {
  const cancelled = () => {
    alive();
    return false;
  };
  const respond = bySolver({ ...detail, cancelled }, solve);
  return (joint) => assess(joint, respond);
}
