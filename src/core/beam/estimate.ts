/** How far states may be from those of an infinitely fine mesh. */
import type { ErrorEstimate } from './answer.ts';
import { correct } from './correct.ts';
import { reducedFor } from './equilibrium.ts';
import { LAST_STEP } from './fineness.ts';
import { forcesOf } from './forces.ts';
import { placeOf, prepare, type Network } from './network.ts';
import type { Observed } from './observe.ts';
import { peaksOf } from './shapes.ts';
import { onMesh } from './transfer.ts';

/** Halving the mesh raises the error 256 times in theory; taking only 8 keeps the estimate above the error. */
const GAIN = 8;
/** A strain that matters to nobody: errors are not weighed against less. */
const NO_STRAIN = 1e-6;
/** A movement, of the network's scale, that matters to nobody. */
const NO_MOVEMENT = 1e-6;

const UNKNOWN = {
  effort: Number.POSITIVE_INFINITY,
  strain: Number.POSITIVE_INFINITY,
  position: Number.POSITIVE_INFINITY,
};

/**
 * The most strained and the last of some states, solved on half the mesh as well and compared.
 *
 * @param network - the mesh that they were solved on [-]
 * @param seen - states in the order in which they are passed [-]
 * @param leastEffort - efforts are not weighed against less [N·mm]
 * @returns differences over what they are weighed against [-]
 */
export function estimate(network: Network, seen: readonly Observed[], leastEffort = 0): ErrorEstimate {
  const { elements } = network;
  const last = seen.at(-1);
  if (!last || (seen.length < 2 && last.point.share === 0)) return { effort: 0, strain: 0, position: 0, elements };
  if (elements.some((count) => count % 4 !== 0)) return { ...UNKNOWN, elements };
  const coarse = prepare(
    network.model,
    elements.map((count) => count / 2),
  );
  const worst = seen.reduce((a, b) => (Math.abs(b.point.peak.strain) > Math.abs(a.point.peak.strain) ? b : a));
  const effortScale = seen.reduce((most, { point }) => Math.max(most, Math.abs(point.effort)), leastEffort);
  const gaps = [...new Set([worst, last])].map((observed) => gapTo(network, coarse, observed));
  const most = (of: (gap: Gap) => number) => Math.max(...gaps.map(of)) / GAIN;
  const strain = Math.max(Math.abs(worst.point.peak.strain), NO_STRAIN);
  return {
    effort: effortScale > 0 ? most((gap) => gap.effort) / effortScale : 0,
    strain: most((gap) => gap.strain) / strain,
    position:
      most((gap) => gap.position) /
      Math.max(movementIn(network, last), movementIn(network, worst), NO_MOVEMENT * network.scale),
    elements,
  };
}

/** How far any pad or free node has gone [mm]; turns count by the network's scale. */
function movementIn({ frames, scale }: Network, { point }: Observed): number {
  let most = 0;
  frames.names.forEach((name, i) => {
    const pose = point.poses[name];
    if (!pose) return;
    const [x, y] = [frames.home[3 * i]!, frames.home[3 * i + 1]!];
    most = Math.max(most, Math.hypot(pose.x - x, pose.y - y), Math.abs(pose.turn) * scale);
  });
  return most;
}

interface Gap {
  readonly effort: number;
  readonly strain: number;
  readonly position: number;
}

function gapTo(fine: Network, coarse: Network, { state, point }: Observed): Gap {
  const start = onMesh(fine, state, coarse);
  const { converged } = correct(coarse, start, reducedFor(coarse), LAST_STEP.refined);
  if (!converged) return UNKNOWN;
  const forces = forcesOf(coarse, start);
  const { peak } = peaksOf(coarse, start);
  let position = 0;
  for (let slot = 0; slot < 3 * fine.frames.named; slot += 1) {
    const moved = Math.abs(placeOf(coarse, start, slot) - placeOf(fine, state, slot));
    position = Math.max(position, slot % 3 === 2 ? moved * fine.scale : moved);
  }
  return {
    effort: Math.abs(forces.effort - point.effort),
    strain: Math.abs(Math.abs(peak.strain) - Math.abs(point.peak.strain)),
    position,
  };
}
