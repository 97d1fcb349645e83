import type { Mm } from '../units.ts';

/**
 * Force on the apex of a flat two-bar truss with pinned ends, pushed down through its snap.
 *
 *     P/(E·A) = 2·(1/l − 1/l₀)·(H − v),   l² = a² + (H − v)²,   l₀² = a² + H²
 *
 * Engineering strain, any rise; the bars do not buckle or bend.
 *
 * @param halfSpan - a from a support to below the apex [mm], > 0
 * @param rise - H of the apex as made [mm], > 0
 * @param travel - v of the apex downwards [mm], any
 * @returns force over E·A of one bar [-], positive against the travel as made
 *
 * Source: two-bar-truss.
 * @example trussForce(1, 0.2, 0.0852855553) // → 0.0029605176
 */
export function trussForce(halfSpan: Mm, rise: Mm, travel: Mm): number {
  const left = rise - travel;
  // 1/l − 1/l₀ = (l₀² − l²)/(l·l₀·(l + l₀)), which keeps its figures for a small travel.
  const [now, made] = [Math.hypot(halfSpan, left), Math.hypot(halfSpan, rise)];
  return (2 * left * travel * (2 * rise - travel)) / (now * made * (now + made));
}

/**
 * The force at which the apex of a two-bar truss snaps through, and its travel there.
 *
 *     P/(E·A) = 2·(1 − cos^(2/3) β₀)^(3/2)   where cos β = cos^(1/3) β₀,   v = H − a·tan β
 *
 * @param halfSpan - a from a support to below the apex [mm], > 0
 * @param rise - H of the apex as made [mm], > 0
 * @returns force over E·A of one bar [-] and travel [mm]
 *
 * Source: two-bar-truss.
 * @example trussLimit(1, 0.5) // → { force: 0.0383837398, travel: 0.222119909 }
 */
export function trussLimit(halfSpan: Mm, rise: Mm): { readonly force: number; readonly travel: Mm } {
  const square = (halfSpan / Math.hypot(halfSpan, rise)) ** (2 / 3);
  return { force: 2 * (1 - square) ** 1.5, travel: rise - halfSpan * Math.sqrt(1 / square - 1) };
}

/**
 * Force on the apex of a flat two-bar truss, for a rise much less than the span.
 *
 *     P/(E·A) = v·(H − v)·(2H − v)/l₀³
 *
 * @param halfSpan - a from a support to below the apex [mm], > 0
 * @param rise - H of the apex as made [mm], > 0
 * @param travel - v of the apex downwards [mm], any
 * @returns force over E·A of one bar [-]
 *
 * Source: two-bar-truss.
 * @example shallowTrussForce(1, 0.2, 0.1) // → 0.002828598
 */
export function shallowTrussForce(halfSpan: Mm, rise: Mm, travel: Mm): number {
  return (travel * (rise - travel) * (2 * rise - travel)) / Math.hypot(halfSpan, rise) ** 3;
}

/**
 * The force at which the apex of a two-bar truss snaps through, for a rise much less than the span.
 *
 *     P/(E·A) = (2/(3·√3))·(H/l₀)³   at   v = H·(1 − 1/√3)
 *
 * @param halfSpan - a from a support to below the apex [mm], > 0
 * @param rise - H of the apex as made [mm], > 0
 * @returns force over E·A of one bar [-] and travel [mm]
 *
 * Source: two-bar-truss.
 * @example shallowTrussLimit(1, 0.2) // → { force: 0.00290327445, travel: 0.0845299 }
 */
export function shallowTrussLimit(halfSpan: Mm, rise: Mm): { readonly force: number; readonly travel: Mm } {
  const travel = rise * (1 - 1 / Math.sqrt(3));
  return { force: shallowTrussForce(halfSpan, rise, travel), travel };
}
