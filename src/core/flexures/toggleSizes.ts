import type { Mm } from '../units.ts';

export type ToggleSizes = {
  /** Lines across each neck. */
  readonly lines: number;
  /** Lines across the spring leaf. */
  readonly springLines: number;
  /** Flexing length of the outer necks; the middle one is twice as long, because it bends twice as far. */
  readonly hinge: Mm;
  /** Length of each link between the ends of its necks. */
  readonly link: Mm;
  /** Angle between each link and the line of thrust, as printed. */
  readonly incline: number;
  /** Flexing length of the spring leaf. */
  readonly spring: Mm;
  readonly depth: Mm;
  readonly fillet: Mm;
  /** Thickness of the links. */
  readonly pad: Mm;
  readonly sideBySide: number;
};

/**
 * Thickness of the spring leaf, from that of the necks by their lines.
 *
 * A leaf of n lines counts as n times one line. Where beads overlap it comes out up to a tenth thinner, which is within
 * what a printed spring differs from the next.
 *
 * @param sizes - lines of necks and spring [-]
 * @param thickness - of the necks [mm], > 0
 * @returns thickness of the spring leaf [mm]
 *
 * Source: common-practice.
 * @example springThickness({ lines: 2, springLines: 6 }, 0.84) // → 2.52
 */
export function springThickness({ lines, springLines }: Pick<ToggleSizes, 'lines' | 'springLines'>, thickness: Mm): Mm {
  return (springLines * thickness) / lines;
}

/**
 * From the tip of the spring leaf up to the line of thrust: half the end pad and the root fillet under it.
 *
 * @param sizes - thickness of the pads and root fillet [mm]
 * @returns arm [mm]
 *
 * @example thrustArm({ pad: 4, fillet: 0.6 }) // → 2.6
 */
export function thrustArm({ pad, fillet }: Pick<ToggleSizes, 'pad' | 'fillet'>): Mm {
  return pad / 2 + fillet;
}

/**
 * Height of the middle neck above the line of thrust, as printed.
 *
 * @param sizes - length [mm] and incline [rad] of the links
 * @returns height [mm]
 *
 * @example roofHeight({ link: 30, incline: radians(30) }) // → 15.0000000
 */
export function roofHeight({ link, incline }: Pick<ToggleSizes, 'link' | 'incline'>): Mm {
  return link * Math.sin(incline);
}
