import type { Path } from '../geometry/outline.ts';
import type { PrintProfile, Lying } from '../print/profile.ts';
import type { Problem } from '../problems.ts';
import type { SourceKey } from '../sources.ts';
import type { Mm } from '../units.ts';

/** One size of a flexure family: what it may be, and why. */
export interface Parameter {
  /** Lengths [mm], counts [-], angles [rad], ratios [-]. */
  readonly kind: 'length' | 'count' | 'angle' | 'ratio';
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key. */
  readonly step: number;
  readonly typical: number;
  /** Why the limits are what they are. */
  readonly because: string;
  /** Asked only where the joint is driven in one of these ways; everywhere when left out. */
  readonly drives?: readonly string[];
}

/** Sizes of one joint by parameter name; lengths [mm]. */
export type Sizes<P extends Record<keyof P, number> = Record<string, number>> = Readonly<P>;

/** The thin section: what bends. */
export interface Section {
  readonly thickness: Mm;
  /** Width out of the bending plane, b [mm]. */
  readonly width: Mm;
  readonly count: number;
  readonly countOf: 'lines' | 'layers';
}

/** The smallest things a printer lays: how wide a line, how high a layer [mm]. */
export type BeadSize = Pick<PrintProfile, 'lineWidth' | 'layerHeight'>;

/** Where the flexure grows out of its pad. */
export interface Root {
  readonly fillet: Mm;
  /** Thickness of the pad in the bending plane, D [mm]. */
  readonly shoulder: Mm;
}

/** A way in which a joint of a family is moved: what the user asks of it, and what it answers with. */
export interface Drive {
  readonly id: string;
  /** `turn`: amount in rad, effort in N·mm. `travel`: amount in mm, effort in N. */
  readonly measure: 'turn' | 'travel';
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly typical: number;
  readonly because: string;
}

/**
 * A closed form: the instant answer, and a check of the solver inside its own range.
 *
 * Efforts are per MPa of modulus: [mm³] for a moment, [mm²] for a force; times the modulus they are N·mm and N.
 */
export interface HandForm<P> {
  /** Which drive it answers; the first form of a drive is the one shown before the solver has answered. */
  readonly drive: string;
  readonly source: SourceKey;
  /** Whether it must agree with the solver within `rel` for these; outside it is only an estimate. */
  appliesTo(sizes: P, thickness: Mm, amount: number): boolean;
  /** Largest nominal surface strain at this amount, as a fraction; without root factors. */
  peakStrain?(sizes: P, thickness: Mm, amount: number): number;
  /** True where the network does not see this strain, and only the form tells it. */
  readonly isStrainOutside?: boolean;
  /** Effort at this amount per MPa of modulus, all flexures side by side together, width ratio 1. */
  effort?(sizes: P, thickness: Mm, amount: number): number;
  readonly rel: number;
  readonly because: string;
}

/**
 * Everything the rest of the program needs to know about one kind of flexure, apart from its network, which only the
 * solver needs (`network.ts`). The brief, the drawing, the export, the saved file and the tests all run off this;
 * if a new family needs an `if (family === …)` anywhere else, the contract is wrong.
 */
export interface FlexureFamily<P extends Record<keyof P, number> = Record<string, number>> {
  readonly id: string;
  readonly lyings: readonly [Lying, ...Lying[]];
  readonly countOf: 'lines' | 'layers';
  readonly parameters: { readonly [K in keyof P]: Parameter };
  /** Names of the parameters that play the common roles; a role that a family has not is left out. */
  readonly roles: {
    /** Lines across, or layers through, the thin section. */
    readonly count: keyof P & string;
    /** The size that gives more room and less strain when it grows. */
    readonly length: keyof P & string;
    readonly depth: keyof P & string;
    readonly fillet?: keyof P & string;
    readonly pad?: keyof P & string;
    /** How many flexures one behind the other share the movement. */
    readonly inRow?: keyof P & string;
    /** How many alike side by side push together: effort times as much, strain unchanged. */
    readonly sideBySide?: keyof P & string;
  };
  /** Whether it may come to rest in a second place: the brief then asks whether it should. */
  readonly snaps?: true;
  /** Ways in which it can be moved; the first is the usual one. */
  readonly drives: readonly [Drive, ...Drive[]];
  /** Refusals and cautions about these sizes; limits of single parameters are checked by `checkSizes`. */
  check(sizes: P, thickness: Mm, bead: BeadSize): readonly Problem[];
  section(sizes: P, profile: PrintProfile): Section;
  /** Thickness [mm] is that of the section as it bends: a measured one may differ from the sized one. */
  root(sizes: P, thickness: Mm): Root;
  /**
   * One flexure with its pads in the plane in which it bends: closed outlines as printed, x from 0 to the flexing length,
   * for kinds whose outline is lines and arcs. The others are drawn round their network.
   */
  outline?(sizes: P, thickness: Mm): readonly Path[];
  /**
   * The whole joint from above, as it lies on the plate, for kinds that bend out of that plane through cuts that no other
   * view shows: closed outlines, holes clockwise. It is then what goes into a drawing program.
   */
  plan?(sizes: P): readonly Path[];
  readonly handForms: readonly HandForm<P>[];
}
