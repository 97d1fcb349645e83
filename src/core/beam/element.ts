/**
 * One element of Reissner's planar rod: exact strains of a rod that stretches, shears and bends through any angle.
 *
 *     Γ₁ = cos θ·x′ + sin θ·y′ − 1,   Γ₂ = −sin θ·x′ + cos θ·y′,   κ = θ′ − κ₀
 *
 * The tangent uses stresses N, V, M that are carried as unknowns of their own (see `advanceStress`) and not those of
 * the present strains: Newton's steps then do not lock where a thin rod turns far but stretches little.
 *
 * The loops are long because splitting them would copy a dozen numbers per point; they are all of the solver's time.
 */
import type { Run } from './mesh.ts';
import type { Rule } from './rule.ts';

/** Per point, what the last tangent was taken at: cos θ, sin θ, Γ₁, Γ₂, κ. */
export const KEPT = 5;

/**
 * Tangent and out-of-balance forces of one element, with inner nodes first, then its first and its last node.
 *
 * @param rule - polynomials [-]
 * @param run - the run it belongs to [-]
 * @param element - which of its elements [-]
 * @param nodes - x, y [mm], angle [rad] of the run's nodes
 * @param stress - N, V [N], M [N·mm] carried at the run's points
 * @param kept - filled with what `advanceStress` needs [-, 1/mm]
 * @param tangent - filled: upper triangle, square of side 3·(degree + 1) [N/mm, N, N·mm]
 * @param force - filled: force of the element on its nodes, 3·(degree + 1) [N, N, N·mm]
 * @returns strain energy [N·mm]
 */
export function elementTangent(
  rule: Rule,
  run: Run,
  element: number,
  nodes: Float64Array,
  stress: Float64Array,
  kept: Float64Array,
  tangent: Float64Array,
  force: Float64Array,
): number {
  const { degree, value, slope, weights } = rule;
  const size = 3 * (degree + 1);
  const inner = 3 * (degree - 1);
  tangent.fill(0);
  force.fill(0);
  const first = 3 * element * degree;
  let energy = 0;
  for (let g = 0; g < degree; g += 1) {
    const point = element * degree + g;
    const row = g * (degree + 1);
    const jac = run.jacobian[point]!;
    const per = 1 / jac;
    let [dx, dy, angle, bend] = [0, 0, 0, 0];
    for (let a = 0; a <= degree; a += 1) {
      const n = first + 3 * a;
      const d = slope[row + a]! * per;
      dx += d * nodes[n]!;
      dy += d * nodes[n + 1]!;
      bend += d * nodes[n + 2]!;
      angle += value[row + a]! * nodes[n + 2]!;
    }
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    const stretch = c * dx + s * dy;
    const shear = c * dy - s * dx;
    const curvature = bend - run.curvature[point]!;
    const k = KEPT * point;
    kept[k] = c;
    kept[k + 1] = s;
    kept[k + 2] = stretch - 1;
    kept[k + 3] = shear;
    kept[k + 4] = curvature;
    const w = weights[g]! * jac;
    const ea = run.axial[point]! * w;
    const ga = run.shear[point]! * w;
    const ei = run.bending[point]! * w;
    const [n0, v0] = [ea * (stretch - 1), ga * shear];
    const m0 = ei * curvature;
    energy += 0.5 * (n0 * (stretch - 1) + v0 * shear + m0 * curvature);
    // Force of the present strains…
    const fx = n0 * c - v0 * s;
    const fy = n0 * s + v0 * c;
    const ft = n0 * shear - v0 * stretch;
    // …and stiffness with the carried stresses.
    const n1 = stress[3 * point]! * w;
    const v1 = stress[3 * point + 1]! * w;
    const kxx = ea * c * c + ga * s * s;
    const kxy = (ea - ga) * c * s;
    const kyy = ea * s * s + ga * c * c;
    const kxt = ea * c * shear + ga * s * stretch - n1 * s - v1 * c;
    const kyt = ea * s * shear - ga * c * stretch + n1 * c - v1 * s;
    const ktt = ea * shear * shear + ga * stretch * stretch - n1 * stretch - v1 * shear;
    for (let a = 0; a <= degree; a += 1) {
      const i = a === 0 ? inner : a === degree ? inner + 3 : 3 * (a - 1);
      const da = slope[row + a]! * per;
      const na = value[row + a]!;
      force[i] = force[i]! + da * fx;
      force[i + 1] = force[i + 1]! + da * fy;
      force[i + 2] = force[i + 2]! + na * ft + da * m0;
      const [dxx, dxy, dyy] = [da * kxx, da * kxy, da * kyy];
      const [dxt, dyt, nxt, nyt] = [da * kxt, da * kyt, na * kxt, na * kyt];
      const [ntt, dei] = [na * ktt, da * ei];
      for (let b = a; b <= degree; b += 1) {
        const j = b === 0 ? inner : b === degree ? inner + 3 : 3 * (b - 1);
        const db = slope[row + b]! * per;
        const nb = value[row + b]!;
        // Only the upper triangle is filled; the first node stands after the inner ones, so its blocks are turned.
        if (i <= j) {
          const r = i * size + j;
          tangent[r] = tangent[r]! + dxx * db;
          tangent[r + 1] = tangent[r + 1]! + dxy * db;
          tangent[r + 2] = tangent[r + 2]! + dxt * nb;
          tangent[r + size] = tangent[r + size]! + dxy * db;
          tangent[r + size + 1] = tangent[r + size + 1]! + dyy * db;
          tangent[r + size + 2] = tangent[r + size + 2]! + dyt * nb;
          tangent[r + 2 * size] = tangent[r + 2 * size]! + nxt * db;
          tangent[r + 2 * size + 1] = tangent[r + 2 * size + 1]! + nyt * db;
          tangent[r + 2 * size + 2] = tangent[r + 2 * size + 2]! + ntt * nb + dei * db;
        } else {
          const r = j * size + i;
          tangent[r] = tangent[r]! + dxx * db;
          tangent[r + 1] = tangent[r + 1]! + dxy * db;
          tangent[r + 2] = tangent[r + 2]! + nxt * db;
          tangent[r + size] = tangent[r + size]! + dxy * db;
          tangent[r + size + 1] = tangent[r + size + 1]! + dyy * db;
          tangent[r + size + 2] = tangent[r + size + 2]! + nyt * db;
          tangent[r + 2 * size] = tangent[r + 2 * size]! + dxt * nb;
          tangent[r + 2 * size + 1] = tangent[r + 2 * size + 1]! + dyt * nb;
          tangent[r + 2 * size + 2] = tangent[r + 2 * size + 2]! + ntt * nb + dei * db;
        }
      }
    }
  }
  return energy;
}

/**
 * Carries the stresses of a run along with a step of its nodes: what linear elasticity gives for the strains at the
 * last tangent plus their change to first order.
 *
 * @param rule - polynomials [-]
 * @param run - the run [-]
 * @param step - change of x, y [mm] and angle [rad] of its nodes
 * @param kept - what the last tangent was taken at [-, 1/mm]
 * @param stress - N, V [N], M [N·mm] at its points, replaced
 */
export function advanceStress(
  rule: Rule,
  run: Run,
  step: Float64Array,
  kept: Float64Array,
  stress: Float64Array,
): void {
  const { degree, value, slope } = rule;
  for (let point = 0; point < run.elements * degree; point += 1) {
    const g = point % degree;
    const row = g * (degree + 1);
    const first = 3 * (point - g);
    let [dx, dy, angle, bend] = [0, 0, 0, 0];
    for (let a = 0; a <= degree; a += 1) {
      const n = first + 3 * a;
      const d = slope[row + a]!;
      dx += d * step[n]!;
      dy += d * step[n + 1]!;
      bend += d * step[n + 2]!;
      angle += value[row + a]! * step[n + 2]!;
    }
    const per = 1 / run.jacobian[point]!;
    const k = KEPT * point;
    const [c, s] = [kept[k]!, kept[k + 1]!];
    const [stretch, shear] = [kept[k + 2]!, kept[k + 3]!];
    const lineStretch = stretch + (c * dx + s * dy) * per + shear * angle;
    const lineShear = shear + (c * dy - s * dx) * per - (1 + stretch) * angle;
    stress[3 * point] = run.axial[point]! * lineStretch;
    stress[3 * point + 1] = run.shear[point]! * lineShear;
    stress[3 * point + 2] = run.bending[point]! * (kept[k + 4]! + bend * per);
  }
}

/**
 * Force of a run on its nodes from the stresses it carries.
 *
 * @param rule - polynomials [-]
 * @param run - the run [-]
 * @param nodes - x, y [mm], angle [rad] of its nodes
 * @param stress - N, V [N], M [N·mm] carried at its points
 * @param force - filled, three by node [N, N, N·mm]
 */
export function runForce(rule: Rule, run: Run, nodes: Float64Array, stress: Float64Array, force: Float64Array): void {
  const { degree, value, slope, weights } = rule;
  force.fill(0);
  for (let point = 0; point < run.elements * degree; point += 1) {
    const g = point % degree;
    const row = g * (degree + 1);
    const first = 3 * (point - g);
    let [dx, dy, angle] = [0, 0, 0];
    for (let a = 0; a <= degree; a += 1) {
      const n = first + 3 * a;
      dx += slope[row + a]! * nodes[n]!;
      dy += slope[row + a]! * nodes[n + 1]!;
      angle += value[row + a]! * nodes[n + 2]!;
    }
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const w = weights[g]!;
    const [n0, v0, m0] = [w * stress[3 * point]!, w * stress[3 * point + 1]!, w * stress[3 * point + 2]!];
    const [fx, fy] = [n0 * c - v0 * s, n0 * s + v0 * c];
    const ft = n0 * (c * dy - s * dx) - v0 * (c * dx + s * dy);
    for (let a = 0; a <= degree; a += 1) {
      const n = first + 3 * a;
      const d = slope[row + a]!;
      force[n] = force[n]! + d * fx;
      force[n + 1] = force[n + 1]! + d * fy;
      force[n + 2] = force[n + 2]! + value[row + a]! * ft + d * m0;
    }
  }
}
