/** Beginning an answer at the last state of an earlier one. */
import { bring } from './bring.ts';
import { forcesOf } from './forces.ts';
import { unscaled, type Kept } from './kept.ts';
import type { BeamModel } from './model.ts';
import { isNear, isSame } from './nearness.ts';
import { prepare, type Network } from './network.ts';
import { unstableWays } from './observe.ts';
import { settle } from './settle.ts';
import { onMesh } from './transfer.ts';
import { arcBetween, walkerFrom, type Walker } from './walker.ts';

/** A share further than was walked may be so much further. */
const FURTHER = 1.25;
/** Enough for what is near, and for falling to both sides; what needs more is not. */
const BUDGET = 300;
/** Sides are alike where their energies agree to this part. */
const ALIKE = 1e-6;
/** And are two sides where they lie at least so far apart: turns in rad, movements over scale. */
const APART = 1e-3;

/**
 * The state of a network at a share, from that of a neighbour.
 *
 * It is only taken where a walk from rest is bound to come to the same: both are built alike and near each other, the
 * neighbour's whole way was sure (`Kept`), Newton's steps shrink from the first, and the ways of giving are as many, also
 * of the first path where another is taken; which may lean to either side, so that both must be alike.
 *
 * @param model - checked network [-]
 * @param kept - of an earlier answer [-]
 * @param share - of the motions and loads of the network [-]
 * @param tolerance - largest last step of Newton's method [-]
 * @returns a walker in equilibrium there; undefined where the walk must be made from rest
 */
export function beginAt(model: BeamModel, kept: Kept, share: number, tolerance: number): Walker | undefined {
  const isThere = share === kept.state.share && isSame(model, kept.model);
  if (!isThere && !(kept.isSure && isInReach(kept, share) && isNear(kept.walked.model, model))) return undefined;
  const network = prepare(model, kept.elements);
  const walker = broughtTo(network, kept, share, tolerance);
  if (!walker || isThere || !kept.beside) return walker;
  const part = share / kept.state.share;
  const beside = broughtTo(network, kept.beside, part * kept.beside.state.share, tolerance);
  return beside && hasSidesAlike(beside) ? walker : undefined;
}

/** Whether a state that gives falls to two that mirror each other: then it does not matter which is told. */
function hasSidesAlike(walker: Walker): boolean {
  const { network, state } = walker;
  const [a, b] = ([1, -1] as const).map((side) => settle(walker, state, side)?.state);
  if (!a || !b || arcBetween(walker, a, b) < APART) return false;
  const [stored, other] = [forcesOf(network, a).energy, forcesOf(network, b).energy];
  return Math.abs(stored - other) <= ALIKE * stored;
}

function isInReach({ walked }: Kept, share: number): boolean {
  const part = share / walked.share;
  return part > 0 && part <= FURTHER;
}

function broughtTo(
  network: Network,
  { state, unstableWays: ways }: Pick<Kept, 'state' | 'unstableWays'>,
  share: number,
  tolerance: number,
): Walker | undefined {
  const walker = walkerFrom(network, unscaled(network, state, share), tolerance, BUDGET);
  return bring(walker) && unstableWays(walker) === ways ? walker : undefined;
}

/** The same state on another mesh of the same network. */
export function onFiner(from: Walker, elements: readonly number[], tolerance: number): Walker | undefined {
  const network = prepare(from.network.model, elements);
  const walker = walkerFrom(network, onMesh(from.network, from.state, network), tolerance, BUDGET);
  return bring(walker) ? walker : undefined;
}
