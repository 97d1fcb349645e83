/** Figures of a whole toolpath, whatever program wrote it. */
import type { Box3 } from '../../geometry/mesh/triangleMesh.ts';
import type { Mm } from '../../units.ts';

/** All that is laid at one height. */
export interface LayerFigures {
  /** Height of the nozzle while it lays [mm]: the top of the layer. Of a spiral: where this turn begins. */
  readonly z: Mm;
  /** Over what was laid before it, lower down; z itself for the first [mm]. */
  readonly height: Mm;
  /** Length of what is laid [mm], filament in it [mm]. */
  readonly length: Mm;
  readonly laid: Mm;
  /** Pieces that lay something. */
  readonly pieces: number;
  readonly least: { readonly x: Mm; readonly y: Mm };
  readonly greatest: { readonly x: Mm; readonly y: Mm };
}

export interface ToolpathFigures {
  /** Commands that lay something on their way, that move without, and that only move filament. */
  readonly printingMoves: number;
  readonly travelMoves: number;
  readonly feedOnlyMoves: number;
  /** Feed-only moves that draw back. */
  readonly retractions: number;
  readonly printingLength: Mm;
  readonly travelLength: Mm;
  /** Filament pushed on beyond what had been drawn back before, as the file asks [mm]; in all, and of each tool that has any. */
  readonly filament: Mm;
  readonly byTool: readonly { readonly tool: number; readonly filament: Mm }[];
  /** Filament of printing moves alone, all that was pushed on, and what is pushed on less what is drawn back [mm]. */
  readonly filamentOnMoves: Mm;
  readonly feedForward: Mm;
  readonly feedNet: Mm;
  /** Around the centre lines of all that is laid [mm]; absent where nothing is. */
  readonly box?: Box3;
  /** Heights at which something is laid, told apart to a tenth of a micron; of a spiral thousands. */
  readonly heights: number;
  /** By height, lowest first; of a spiral its turns. */
  readonly layers: readonly LayerFigures[];
  /** Where most of what is laid rises as it goes: how much it rises a turn [mm]. */
  readonly pitch?: Mm;
  /** True where there are more heights than are told apart. */
  readonly isCut: boolean;
}
