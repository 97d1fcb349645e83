/** The nodes of a mesh as printed. */
import type { Centreline } from './centreline.ts';
import type { BeamModel, Member } from './model.ts';
import type { Rule } from './rule.ts';

/** What a run is made of before its end frames are known. */
export interface Stretch {
  readonly member: Member;
  readonly index: number;
  readonly curve: Centreline;
  readonly model: BeamModel;
  readonly rule: Rule;
}

export interface Marched {
  readonly home: Float64Array;
  readonly jacobian: Float64Array;
  readonly curvature: Float64Array;
  readonly along: Float64Array;
}

/**
 * Node positions as printed, found by the same collocation that the solver uses, so that the network as printed is
 * free of stress to the last digit at any fineness.
 */
export function march(
  stretch: Stretch,
  elements: number,
  from: number,
  to: number,
  start: Pose3,
  along0: number,
): Marched {
  const { curve, rule } = stretch;
  const { degree } = rule;
  const home = new Float64Array(3 * (elements * degree + 1));
  const along = new Float64Array(elements * degree + 1);
  const jacobian = new Float64Array(elements * degree);
  const curvature = new Float64Array(elements * degree);
  const integral = integralsOf(rule);
  home.set(start);
  along[0] = along0;
  const half = (to - from) / (2 * elements);
  for (let e = 0; e < elements; e += 1) {
    const middle = from + half * (2 * e + 1);
    const first = e * degree;
    for (let g = 0; g < degree; g += 1) {
      const u = middle + half * (rule.points[g] ?? 0);
      jacobian[first + g] = curve.speed(u) * half;
      curvature[first + g] = curve.curvature(u);
    }
    const bend = (g: number) => (jacobian[first + g] ?? 0) * (curvature[first + g] ?? 0);
    const angleAt = (weights: readonly number[]) =>
      (home[3 * first + 2] ?? 0) + weights.reduce((sum, weight, g) => sum + weight * bend(g), 0);
    const angles = integral.toPoints.map(angleAt);
    integral.toNodes.forEach((weights, a) => {
      const node = first + a + 1;
      const sum = (f: (g: number) => number) => weights.reduce((total, weight, g) => total + weight * f(g), 0);
      home[3 * node] = (home[3 * first] ?? 0) + sum((g) => (jacobian[first + g] ?? 0) * Math.cos(angles[g] ?? 0));
      home[3 * node + 1] =
        (home[3 * first + 1] ?? 0) + sum((g) => (jacobian[first + g] ?? 0) * Math.sin(angles[g] ?? 0));
      home[3 * node + 2] = angleAt(weights);
      along[node] = (along[first] ?? 0) + sum((g) => jacobian[first + g] ?? 0);
    });
  }
  return { home, jacobian, curvature, along };
}

export type Pose3 = readonly [number, number, number];

/** Weights that integrate, from the start of an element, what is known at its points: to each point and inner node. */
interface Integrals {
  readonly toPoints: readonly (readonly number[])[];
  readonly toNodes: readonly (readonly number[])[];
}

const integralsByRule = new WeakMap<Rule, Integrals>();

function integralsOf(rule: Rule): Integrals {
  const known = integralsByRule.get(rule);
  if (known) return known;
  const made = {
    toPoints: rule.points.map((x) => integralsTo(rule, x)),
    toNodes: rule.nodes.slice(1).map((x) => integralsTo(rule, x)),
  };
  integralsByRule.set(rule, made);
  return made;
}

/** ∫ from −1 to x of the polynomials that are 1 at one point and 0 at the others, by the rule itself on that stretch. */
function integralsTo({ points, weights }: Rule, x: number): readonly number[] {
  const half = (x + 1) / 2;
  return points.map((at, g) =>
    points.reduce((sum, point, k) => {
      const place = -1 + half * (point + 1);
      const value = points.reduce(
        (product, other, h) => (h === g ? product : (product * (place - other)) / (at - other)),
        1,
      );
      return sum + (weights[k] ?? 0) * half * value;
    }, 0),
  );
}
