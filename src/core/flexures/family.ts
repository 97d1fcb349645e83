import type { Path } from '../geometry/outline.ts';
import type { PrintProfile, Lying } from '../print/profile.ts';
import type { Problem } from '../problems.ts';
import type { SourceKey } from '../sources.ts';
import type { Mm, Rad } from '../units.ts';

/** One size of a flexure family: what it may be, and why. */
export interface Parameter {
  readonly kind: 'length' | 'count';
  readonly min: number;
  readonly max: number;
  /** One press of an arrow key. */
  readonly step: number;
  readonly typical: number;
  /** Why the limits are what they are. */
  readonly because: string;
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

/** A closed form that must agree with the solver inside its own range. */
export interface CrossCheck<P> {
  readonly source: SourceKey;
  appliesTo(sizes: P): boolean;
  peakStrain(sizes: P, thickness: Mm, angle: Rad): number;
  readonly rel: number;
  readonly because: string;
}

/**
 * Everything the rest of the program needs to know about one kind of flexure.
 * The brief, the drawing, the export, the saved file and the tests all run off this;
 * if a new family needs an `if (family === …)` anywhere else, the contract is wrong.
 */
export interface FlexureFamily<P extends Record<keyof P, number> = Record<string, number>> {
  readonly id: string;
  readonly lyings: readonly [Lying, ...Lying[]];
  readonly countOf: 'lines' | 'layers';
  readonly parameters: { readonly [K in keyof P]: Parameter };
  /** Names of the parameters that play the common roles. */
  readonly roles: {
    readonly count: keyof P & string;
    readonly length: keyof P & string;
    readonly depth: keyof P & string;
    readonly fillet: keyof P & string;
    readonly pad: keyof P & string;
    /** How many flexures one behind the other share the movement. */
    readonly inRow: keyof P & string;
  };
  /** Refusals and cautions about these sizes; limits of single parameters are checked by `checkSizes`. */
  check(sizes: P, thickness: Mm, bead: BeadSize): readonly Problem[];
  section(sizes: P, profile: PrintProfile): Section;
  /** Thickness [mm] is that of the section as it bends: a measured one may differ from the sized one. */
  root(sizes: P, thickness: Mm): Root;
  /** Closed outlines of the undeformed flexure with its pads, x from 0 to the flexing length. */
  outline(sizes: P, thickness: Mm): readonly Path[];
  readonly crossChecks: readonly CrossCheck<P>[];
}
