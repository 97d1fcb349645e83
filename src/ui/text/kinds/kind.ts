/** What the words of one kind of flexure are, and what the kinds share. In a sentence `{name}` stands for a value. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Sizes } from '../../../core/flexures/family.ts';
import type { Lying } from '../../../core/print/profile.ts';
import type { Mm } from '../../../core/units.ts';
import type { LengthUnit } from '../numbers.ts';

/** A length that follows from the sizes and belongs on a drawing. */
interface Follows {
  readonly label: string;
  readonly value: Mm;
}

export interface KindText {
  readonly name: string;
  /** In the catalogue of kinds: what it does, and what stands after “Choose for” and “Costs”. */
  readonly does: string;
  readonly chooseFor: string;
  readonly costs: string;
  /** What bends, one and several. */
  readonly piece: string;
  readonly pieces: string;
  /** What the lines run along, or the layers make up: “the leaf”, “each arm”. */
  readonly thin: string;
  /** One line or layer of the count. */
  readonly unitOfCount: 'line' | 'layer';
  /** Names of the sizes, as labels. */
  readonly sizes: Readonly<Record<string, string>>;
  /** The same beside a drawing, where more must be said. */
  readonly drawn?: Readonly<Record<string, string>>;
  /**
   * The size that strains less when it grows: “the leaf … long”, “as short as”. It takes that many times its growth in
   * room, 1 when left out; or something else instead.
   */
  readonly room: {
    /** As an axis has it: “flexing length”. */
    readonly called: string;
    readonly thing: string;
    readonly is: string;
    readonly little: string;
    readonly times?: number;
    readonly instead?: string;
  };
  /** What the thick body on either side is called. */
  readonly padName: string;
  /** How many root fillets there are and where. */
  readonly fillets: string;
  /** What the size across the bending plane is called in a past-tense sentence: “made 6 mm deep”. */
  readonly deep: string;
  /** What it does in each of its drives, as it stands after “it”. */
  readonly drives: Readonly<Record<string, string>>;
  /** How it lies, where the common words do not fit, as it stands after “printed”. */
  readonly lying?: Partial<Readonly<Record<Lying, string>>>;
  /** Sizes that are chosen in words rather than counted, by size and value. */
  readonly choices?: Readonly<Record<string, Readonly<Record<number, string>>>>;
  /** The wish for its effort, as it stands in the brief: any, and no more than what follows. */
  readonly wish?: { readonly any: string; readonly most: string };
  readonly brief: string;
  readonly measuredBrief: string;
  /** The rest of the sizes, as far as a drive and the other sizes ask for them. */
  readonly details: (drive: string, sizes: Sizes) => string;
  /** What the brief tells and does not ask, in the place of `{told}`. */
  readonly told?: (sizes: Sizes, amount: number, unit: LengthUnit) => string;
  /** Lengths to draw that follow from the sizes, the thickness and how far it moves. */
  readonly follows?: (sizes: Sizes, thickness: Mm, amount: number) => readonly Follows[];
  /** Where as many as are counted in a row do not each take an equal share of the movement. */
  readonly uneven?: true;
  /** Where start points go. */
  readonly starts: string;
  /** Print notes of its own. */
  readonly notes: (a: Assessment, unit: LengthUnit) => readonly string[];
  /** In the place of the usual note on eye protection. */
  readonly eyes?: string;
}

/** How it is used: the second sentence of a brief begins so. */
export const USE = 'It is {held}, and {chance} should get there; it may push back {wish}.';
export const LINES = 'Nozzle {nozzle}, layers {layerHeight}, the first {firstLayerHeight}; lines counted as {fitRule}.';

/** A brief of lines, as sized and as measured: how it moves and is printed, and over what. */
export function briefs(moves: string, over: string): Pick<KindText, 'brief' | 'measuredBrief'> {
  return {
    brief: `${moves}, {count} across, ${over}.`,
    measuredBrief: `Measured {thickness} thick: ${moves.charAt(0).toLowerCase()}${moves.slice(1)}, ${over}.`,
  };
}

/** A size of a checked joint. */
export function sizeOf(sizes: Sizes, name: string): number {
  return sizes[name] ?? Number.NaN;
}
