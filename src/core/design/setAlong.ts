import type { MemberShape } from '../beam/answer.ts';
import { findRoot } from '../numeric/roots.ts';
import { plasticCurvature } from '../strength/permanentSet.ts';
import type { Solved } from './solved.ts';

/** One member: places along it, and at each what it weighs in the movement, and what it is bent to. */
interface Bent {
  readonly along: Float64Array;
  /** b·t³·φ, as EI·φ but for what is the same everywhere. */
  readonly weight: Float64Array;
  /** φ, curvature by movement in the first small state. */
  readonly unit: Float64Array;
  /** Largest curvature on the way, with its sign, and the strain of the skin that it makes. */
  readonly most: Float64Array;
  readonly strain: Float64Array;
}

/** A section that is all but fully plastic bends without end; the moment is kept so much short of that. */
const SHORT_OF_PLASTIC = 1.5 * (1 - 1e-6);

/**
 * What stays of one movement to the wanted amount, summed up along all members.
 *
 * Each section keeps the curvature κ − M/EI. The moments are those of the solver, which knows no flow, less by one factor μ: where
 * they flow curvature gathers, so that less of them makes the same movement.
 *
 *     M = μ·EI·κ_solved,   ∫ EI·φ·κ(M) ds = ∫ EI·φ·κ_solved ds,   δ = ∫ EI·φ·(κ(M) − M/EI) ds/∫ EI·φ² ds
 *
 * φ is the curvature per unit of movement in the first small state. δ is what a joint moves by that is let go with curvatures κ_res
 * which need not fit together: they leave moments m that balance by themselves. A unit of effort on the drive bends it by moments
 * EI·φ/k, where k = ∫ EI·φ² is its stiffness. By virtual work of these on the real movement, δ = ∫ (EI·φ/k)·(κ_res + m/EI) ds, and
 * the part with m is none: φ fits together, and m balances without a load. So it holds for what is statically indeterminate too;
 * that moments keep their proportions when they flow is exact only where statics alone decides them.
 *
 * Stretch and springs are left out. Of a kind that snaps φ says little of the place where it comes to rest; the caller caps what
 * stays by the plain rule.
 *
 * @param solved - the way with its shapes: curvatures [1/mm], amounts [rad] or [mm]
 * @returns a function from the strain at which the skin begins to flow [-] to what stays [rad] or [mm], ≥ 0; undefined where the
 *   way has no shapes or nothing bends
 *
 * Source: elastic-plastic, unit-load-method.
 */
export function setAlong(solved: Solved): ((onset: number) => number) | undefined {
  const members = bentOf(solved);
  const sum = (term: (member: Bent) => Float64Array, weight = (member: Bent) => member.weight) =>
    members.reduce((total, member) => total + overlap(member.along, weight(member), term(member)), 0);
  const stiffness = sum(({ unit }) => unit);
  if (!(stiffness > 0)) return undefined;
  const movement = Math.abs(sum(({ most }) => most)) / stiffness;
  const most = members.reduce((largest, { strain }) => strain.reduce((a, b) => Math.max(a, b), largest), 0);
  // Sections that are bent against the movement flow as well: sizes count for how much, signs only for where to.
  const flown = (factor: number, onset: number) =>
    sum(
      ({ strain, most: curvature }) =>
        curvature.map((value, i) => {
          const k = (strain[i] ?? 0) / onset;
          return k > 0 ? Math.abs(value) * (plasticCurvature(factor * k) / k - 1) : 0;
        }),
      ({ weight }) => weight.map(Math.abs),
    );
  return (onset) => {
    if (most <= onset) return 0;
    const end = Math.min(1, (SHORT_OF_PLASTIC * onset) / most);
    if (flown(end, onset) <= 0) return (1 - end) * movement;
    const factor = findRoot((value) => flown(value, onset), 0, end, 1e-12);
    return factor.ok ? (1 - factor.value.value) * movement : 0;
  };
}

function bentOf({ forward, amount, network }: Solved): readonly Bent[] {
  const points = forward.points.filter((point) => Math.abs(point.amount) <= amount * (1 + 1e-9));
  const [, first] = points;
  if (!first || first.amount === 0) return [];
  return first.shapes.map((shape, at) => {
    const { along, thickness, member } = shape;
    const width = network.model.members.find(({ id }) => id === member)?.width ?? 1;
    const unit = curvatureOf(shape).map((value) => value / first.amount);
    const most = points.map(({ shapes }) => shapes[at]).reduce(furthest, new Float64Array(along.length));
    return {
      along: finer(along),
      weight: finer(unit.map((value, i) => width * (thickness[i] ?? 0) ** 3 * value)),
      unit: finer(unit),
      most: finer(most),
      strain: finer(most.map((value, i) => (Math.abs(value) * (thickness[i] ?? 0)) / 2)),
    };
  });
}

/** Samples are for drawing; what begins to flow between two of them is looked for at so many places. */
const PLACES_BETWEEN = 8;

/** With places between the samples, on straight lines. */
function finer(values: Float64Array): Float64Array {
  return Float64Array.from({ length: (values.length - 1) * PLACES_BETWEEN + 1 }, (_, i) => {
    const [at, share] = [Math.floor(i / PLACES_BETWEEN), (i % PLACES_BETWEEN) / PLACES_BETWEEN];
    return share === 0 ? values[at]! : (1 - share) * values[at]! + share * values[at + 1]!;
  });
}

/** Change of curvature from the printed shape [1/mm], from the strains of both faces. */
function curvatureOf({ left, right, thickness }: MemberShape): Float64Array {
  return left.map((strain, i) => (strain - (right[i] ?? 0)) / (thickness[i] ?? 1));
}

/** At each place the curvature that is largest in size, with its sign. */
function furthest(most: Float64Array, shape: MemberShape | undefined): Float64Array {
  if (!shape) return most;
  const now = curvatureOf(shape);
  return most.map((value, i) => (Math.abs(now[i] ?? 0) > Math.abs(value) ? (now[i] ?? 0) : value));
}

/** ∫ f·g ds, exact where both run straight between the samples. */
function overlap(along: Float64Array, f: Float64Array, g: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < along.length; i++) {
    const [f0, f1, g0, g1] = [f[i - 1]!, f[i]!, g[i - 1]!, g[i]!];
    sum += ((along[i]! - along[i - 1]!) * (2 * (f0 * g0 + f1 * g1) + f0 * g1 + f1 * g0)) / 6;
  }
  return sum;
}
