/**
 * Polynomials of one degree on an element from ξ = −1 to 1: nodes of Lobatto's rule, points of Gauss's rule with as
 * many points as the degree. Fields on these nodes with stresses at these points solve the rod's equations at the
 * points (Gauss collocation), so end values are exact to twice the degree, and nothing locks.
 */
export interface Rule {
  readonly degree: number;
  readonly nodes: readonly number[];
  readonly points: readonly number[];
  readonly weights: readonly number[];
  /** Value and derivative (by ξ) of the polynomial of node a at point g: index g·(degree + 1) + a. */
  readonly value: Float64Array;
  readonly slope: Float64Array;
}

/** Legendre's polynomial of a degree and its derivative at x, by the three-term recurrence. */
function legendre(degree: number, x: number): { readonly value: number; readonly slope: number } {
  let [before, now] = [1, x];
  for (let n = 2; n <= degree; n += 1) [before, now] = [now, ((2 * n - 1) * x * now - (n - 1) * before) / n];
  return { value: now, slope: (degree * (x * now - before)) / (x * x - 1) };
}

function gaussPoints(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    for (let step = 0; step < 20; step += 1) {
      const { value, slope } = legendre(count, x);
      x -= value / slope;
    }
    return x;
  });
}

/** Ends and the places where Legendre's polynomial is level. */
function lobattoNodes(degree: number): readonly number[] {
  const inner = Array.from({ length: degree - 1 }, (_, i) => {
    let x = -Math.cos((Math.PI * (i + 1)) / degree);
    for (let step = 0; step < 30; step += 1) {
      const { value, slope } = legendre(degree, x);
      // The polynomial's own equation gives its second derivative: (1 − x²)P″ = 2xP′ − n(n+1)P.
      const bend = (2 * x * slope - degree * (degree + 1) * value) / (1 - x * x);
      x -= slope / bend;
    }
    return x;
  });
  return [-1, ...inner, 1];
}

/** Polynomials that are 1 at one node and 0 at the others, with their slopes, at x. */
export function lagrange(nodes: readonly number[], x: number): { readonly value: number[]; readonly slope: number[] } {
  const value = nodes.map((at, a) =>
    nodes.reduce((product, other, b) => (a === b ? product : (product * (x - other)) / (at - other)), 1),
  );
  const slope = nodes.map((at, a) =>
    nodes.reduce((sum, skipped, c) => {
      if (c === a) return sum;
      const rest = nodes.reduce(
        (product, other, b) => (b === a || b === c ? product : (product * (x - other)) / (at - other)),
        1,
      );
      return sum + rest / (at - skipped);
    }, 0),
  );
  return { value, slope };
}

/**
 * The tables of one degree.
 *
 * @param degree - degree of the polynomials [-], whole, 2 to 8
 * @returns nodes, points and weights on −1 to 1 [-], values and slopes [-]
 */
export function ruleOf(degree: number): Rule {
  const nodes = lobattoNodes(degree);
  const points = gaussPoints(degree);
  const tables = points.map((x) => lagrange(nodes, x));
  return {
    degree,
    nodes,
    points,
    weights: points.map((x) => {
      const { slope } = legendre(degree, x);
      return 2 / ((1 - x * x) * slope * slope);
    }),
    value: Float64Array.from(tables.flatMap((table) => table.value)),
    slope: Float64Array.from(tables.flatMap((table) => table.slope)),
  };
}
