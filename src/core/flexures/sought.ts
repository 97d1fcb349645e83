/** The third part of the contract for a flexure family: what a search varies of it, and the room that it takes. */
import type { Lying } from '../print/profile.ts';
import type { Mm } from '../units.ts';
import type { BeadSize, Sizes } from './family.ts';

/** A box round what bends, as printed: along it and across it in the plane of bending, and out of that plane. */
export interface Room {
  readonly along: Mm;
  readonly across: Mm;
  readonly depth: Mm;
}

/** What is laid over air: held at both ends, and standing out from one [mm]; 0 where nothing is. */
export interface Unsupported {
  readonly bridge: Mm;
  readonly ledge: Mm;
}

/** One size that a search tries, and the values that it tries: a fixed ladder in rising order, so that a wider search holds a narrower. */
export interface Rungs {
  readonly size: string;
  readonly values: readonly number[];
}

/** How a search goes about a family. */
export interface Sought<P extends Record<keyof P, number> = Record<string, number>> {
  /**
   * Sizes that shape it, lines or layers and length among them; every combination is tried. Sizes that are neither here nor in
   * `inProportion` follow from these, by `sizes`. A size that the drive does not ask for (`isAsked`) is not tried, so that no
   * two shapes that are tried act alike.
   */
  readonly rungs: readonly Rungs[];
  /**
   * Sizes that change neither its strain nor its room in the plane, and that its effort grows in proportion to (but for how wide
   * strips stiffen): depth, and how many stand side by side.
   */
  readonly inProportion: readonly (keyof P & string)[];
  /**
   * All sizes, from those that are tried; what is left out there, as a drive does not ask for it, is typical.
   *
   * @param tried - values of the rungs and of what is in proportion, by name
   * @param thickness - of the thin section [mm]
   * @param bead - how wide a line and how high a layer [mm]
   */
  sizes(tried: Readonly<Record<string, number>>, thickness: Mm, bead: BeadSize): Sizes<P>;
  /**
   * Room of one, whatever stands side by side: with its root fillets, without the pads at its ends, which are the user's own
   * bodies, and with what lies between them, as pads in a row, links and slats do.
   */
  room(sizes: P, thickness: Mm): Room;
  /** Left out where nothing of one is laid over air however it lies. */
  unsupported?(sizes: P, thickness: Mm, lying: Lying): Unsupported;
  /**
   * Whether it is likely to stay in a second place: says which are worth a solve, never what is answered.
   *
   * @param drive - how it is moved; freely where left out
   */
  mayStay?(sizes: P, thickness: Mm, drive?: string): boolean;
  /**
   * Whether it is likely to stay clear of itself: likewise says only which are worth a solve.
   *
   * @param drive - how it is moved
   * @param amount - how far [rad] or [mm]
   */
  mayClear?(sizes: P, thickness: Mm, drive: string, amount: number): boolean;
}
