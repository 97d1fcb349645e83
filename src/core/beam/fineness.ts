/** How fine the mesh is: where it begins, what is aimed at, and when it is made finer. */
import type { ErrorEstimate } from './answer.ts';
import { centrelineOf } from './centreline.ts';
import type { BeamModel, Member } from './model.ts';

/** `interactive` aims at 1e-6 in effort and places, `refined` at 1e-9. */
export type Accuracy = 'interactive' | 'refined';

const AIM = { interactive: 1e-6, refined: 1e-9 } as const;
/** Newton's last step: its square is what is left, well below the aim. */
export const LAST_STEP = { interactive: 1e-5, refined: 1e-8 } as const;
/** An element bends by up to so much before the first mesh has another [rad]. */
const TURN_PER_ELEMENT = { interactive: 1, refined: 0.4 } as const;
const FEWEST = 4;
const MOST = 128;
/** Between nodes the largest strain is read off a parabola, so it is known to fewer figures than the states are. */
const STRAIN_ALLOWANCE = 30;

/** The elements along every member that an answer begins with. */
export function firstMesh(model: BeamModel, accuracy: Accuracy): readonly number[] {
  return model.members.map((member) => firstElements(model, member, accuracy));
}

/** Twice as many elements, as far as that goes; undefined where it goes no further. */
export function finerMesh(elements: readonly number[]): readonly number[] | undefined {
  const finer = elements.map((count) => Math.min(MOST, 2 * count));
  return finer.some((count, i) => count !== elements[i]) ? finer : undefined;
}

export function isTooRough({ effort, position, strain }: ErrorEstimate, accuracy: Accuracy): boolean {
  return Math.max(effort, position, strain / STRAIN_ALLOWANCE) > AIM[accuracy];
}

/** Enough elements that none bends far: a multiple of 4, so that each half can be halved again. */
function firstElements(model: BeamModel, member: Member, accuracy: Accuracy): number {
  const at = (id: string) => model.nodes.find((node) => node.id === id) ?? { x: 0, y: 0 };
  const curve = centrelineOf(member, at(member.from), at(member.to));
  const samples = 32;
  let turn = 0;
  for (let i = 0; i < samples; i += 1) {
    const u = (i + 0.5) / samples;
    turn += (Math.abs(curve.curvature(u)) * curve.speed(u)) / samples;
  }
  const asked = Math.max(0, ...model.motions.map((motion) => Math.abs(motion.turn ?? 0)));
  const count = (turn + Math.min(asked, Math.PI)) / TURN_PER_ELEMENT[accuracy];
  // Waves give way in shorter waves, and thicknesses that change want more points, than their turning tells.
  const isPlain = typeof member.thickness === 'number' && member.shape.kind !== 'rise' && member.shape.kind !== 'wave';
  const shaped = isPlain ? FEWEST : 2 * FEWEST;
  return Math.min(MOST, Math.max(shaped, 4 * Math.ceil(count / 4)));
}
