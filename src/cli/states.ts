/** States of a network as the terminal says them: places, middle lines, strains, stiffnesses, errors. */
import type { ErrorEstimate, MemberShape, Peak, Pose } from '../core/beam/answer.ts';
import { DIRECTIONS, type SixStiffnesses, type SpatialStiffness } from '../core/beam/spatialStiffness.ts';
import { figures, snake } from './keys.ts';

export function peakOf({ strain, member, along, side, atEnd }: Peak) {
  return { value: strain, member, along_mm: along, side, at_root: atEnd };
}

/** By pad, then by node of no pad. */
export function placesOf(poses: Readonly<Record<string, Pose>>) {
  return Object.entries(poses).map(([at, { x, y, turn }]) => ({ at, x_mm: x, y_mm: y, turn_rad: turn }));
}

function listed(values: Float64Array): readonly number[] {
  return Array.from(values, figures);
}

/** What of the middle lines is the same in every state. */
export function membersOf(shapes: readonly MemberShape[]) {
  return shapes.map(({ member, along, thickness }) => ({
    member,
    along_mm: listed(along),
    thickness_mm: listed(thickness),
  }));
}

/** Middle lines of one state, with a figure for each of `along_mm` of their member. */
export function linesOf(shapes: readonly MemberShape[]) {
  return shapes.map(({ member, x, y, angle, left, right }) => ({
    member,
    x_mm: listed(x),
    y_mm: listed(y),
    angle_rad: listed(angle),
    strain_left: listed(left),
    strain_right: listed(right),
  }));
}

/** Six stiffnesses times the modulus they are to be for. */
function sixOf(six: SixStiffnesses, modulus: number) {
  return Object.fromEntries(
    DIRECTIONS.map((name) => {
      const unit = name.startsWith('turn') ? 'Nmm_per_rad' : 'N_per_mm';
      return [`${snake(name)}_${unit}`, modulus * six[name]] as const;
    }),
  );
}

export function stiffnessesOf({ free, held }: SpatialStiffness, modulus = 1) {
  return { free: sixOf(free, modulus), held: sixOf(held, modulus) };
}

export function errorOf({ effort, strain, position, elements }: ErrorEstimate) {
  return { effort, strain, position, elements: [...elements] };
}

/** At rest nothing is loaded: what is left out of balance would be weighed against round-off. */
export function residualOf(residual: number, moved: number) {
  return moved === 0 ? {} : { residual };
}
