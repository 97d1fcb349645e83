/** What is told of a toolpath file: its text, its figures, and what lies near each thin section. */
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import type { PassedOver } from '../flexure.ts';
import type { Near } from './near.ts';
import type { Place } from './place.ts';
import type { ToolpathFigures } from './toolpathFigures.ts';

/** Diameter of the filament: no toolpath states it in a command. */
export interface DiameterRead {
  readonly diameter: Mm;
  /** `told` by the user, or `sized`: the one of 1.75 and 2.85 mm with which lines come out as wide as printers lay them. */
  readonly by: 'told' | 'sized';
}

/** What stands in layers that are alike, seen from above: outer outlines counter-clockwise, holes clockwise [mm]. */
export interface LayerPlan {
  /** Top of the last of them, and bottom of the first. */
  readonly z: Mm;
  readonly bottom: Mm;
  readonly outlines: readonly (readonly Point[])[];
}

/** A thin section with what lies near it. */
export interface PlaceNear {
  readonly place: Place;
  readonly near: Near;
}

export interface CheckedToolpath<Text> {
  readonly text: Text;
  readonly figures: ToolpathFigures;
  readonly filament: DiameterRead;
  readonly places: readonly PlaceNear[];
  /** Thin, but no flexures. */
  readonly passedOver: readonly PassedOver[];
  /** The whole body, from the bottom up. */
  readonly plans: readonly LayerPlan[];
  /** How many of the layers were looked through for thin sections: all, unless there are very many; of a spiral, which is one wall all round, none. */
  readonly looked: { readonly layers: number; readonly of: number };
  /** The thickest that was looked for [mm]. */
  readonly thickest: Mm;
  /** True where looking was ended by a limit on work. */
  readonly isCut: boolean;
}
