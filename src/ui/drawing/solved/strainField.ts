import type { MemberShape } from '../../../core/beam/answer.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Mm } from '../../../core/units.ts';
import type { SceneMember } from './scene.ts';

/** The middle line of a member in a state, with places so close together that it looks bent and not broken. */
export interface FineShape {
  readonly along: readonly Mm[];
  readonly x: readonly Mm[];
  readonly y: readonly Mm[];
  readonly angle: readonly number[];
  readonly thickness: readonly Mm[];
  /** Surface strain left and right of the line, tension positive. */
  readonly left: readonly number[];
  readonly right: readonly number[];
}

/** At most so many pieces between two samples. */
const MOST_PIECES = 12;

/** The same line with samples no further than `step` apart [mm]: cubics that keep the directions at the samples. */
export function refined(shape: MemberShape, step: Mm): FineShape {
  const fine: Record<keyof FineShape, number[]> = {
    along: [],
    x: [],
    y: [],
    angle: [],
    thickness: [],
    left: [],
    right: [],
  };
  const last = shape.x.length - 1;
  for (let i = 0; i < last; i++) {
    const chord = Math.hypot(shape.x[i + 1]! - shape.x[i]!, shape.y[i + 1]! - shape.y[i]!);
    const pieces = Math.min(MOST_PIECES, Math.max(1, Math.ceil(chord / step)));
    for (let k = 0; k < pieces; k++) addPlace(fine, shape, i, k / pieces, chord);
  }
  addPlace(fine, shape, last - 1, 1, 0);
  return fine;
}

const EVENLY = ['along', 'angle', 'thickness', 'left', 'right'] as const;

function addPlace(fine: Record<keyof FineShape, number[]>, shape: MemberShape, i: number, u: number, chord: Mm): void {
  for (const key of EVENLY) fine[key].push(shape[key][i]! + u * (shape[key][i + 1]! - shape[key][i]!));
  const cubic = (p: number, q: number, from: number, to: number) => {
    const [u2, u3] = [u * u, u * u * u];
    return (2 * u3 - 3 * u2 + 1) * p + (u3 - 2 * u2 + u) * from + (3 * u2 - 2 * u3) * q + (u3 - u2) * to;
  };
  const [a, b] = [shape.angle[i]!, shape.angle[i + 1]!];
  fine.x.push(cubic(shape.x[i]!, shape.x[i + 1]!, chord * Math.cos(a), chord * Math.cos(b)));
  fine.y.push(cubic(shape.y[i]!, shape.y[i + 1]!, chord * Math.sin(a), chord * Math.sin(b)));
}

/** Strain as a magnitude at a place of a fine line, `across` from −0.5 on the right surface to 0.5 on the left one. */
export type StrainField = (i: number, across: number) => number;

/** What the root of a joint does to strain beside it. */
type Root = Pick<Assessment, 'fillet' | 'strain'>;

/**
 * Strain anywhere in a member: straight across from one surface to the other, and beside a root the peak of its fillet
 * on top, which fades as on the drawing of a leaf (`rootStrainShare` of the core).
 */
export function strainField(shape: FineShape, { roots }: SceneMember, { fillet, strain }: Root): StrainField {
  const last = shape.along.length - 1;
  const length = shape.along[last]! - shape.along[0]!;
  const ends = roots.flatMap((isRoot, k) => (isRoot ? [k === 0 ? 0 : last] : []));
  const more = strain.rootFactor - 1;
  return (i, across) => {
    const [left, right, thickness] = [shape.left[i]!, shape.right[i]!, shape.thickness[i]!];
    const plain = Math.abs((left + right) / 2 + across * (left - right));
    if (!(more > 0)) return plain;
    const fade = Math.max(fillet, thickness / 20) / 2;
    const skin = (0.5 - Math.abs(across)) * thickness;
    return ends.reduce((sum, end) => {
      const out = Math.abs(shape.along[i]! - shape.along[end]!);
      if (out > Math.min(6 * fade, length / 2)) return sum;
      const nearSkin = Math.abs(across >= 0 ? shape.left[end]! : shape.right[end]!);
      return sum + more * nearSkin * Math.exp(-Math.hypot(out, skin) / fade);
    }, plain);
  };
}
