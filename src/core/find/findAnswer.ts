import type { Joint } from '../design/joint.ts';
import type { Room } from '../flexures/sought.ts';
import type { Mm } from '../units.ts';

/** Every way in which a joint can fall short of what is looked for, in the order in which they are told. */
export const SHORTCOMINGS = [
  'along',
  'across',
  'depth',
  'tall',
  'overhang',
  'breaks',
  'life',
  'uncounted',
  'sags',
  'bends for good',
  'set',
  'warmth',
  'hard',
  'soft',
  'comes back',
  'stays',
  'touches',
] as const;

/**
 * `along`, `across`, `depth`: needs more room [mm] · `tall`: too tall for its thickness to stand while it is printed [-] ·
 * `overhang`: laid too far over air [mm] · `breaks`: strains past what it stands once [-] · `life`: too few last [share] ·
 * `uncounted`: more is wanted than anybody has counted [cycles] · `sags`: held bent past what it stands [-] ·
 * `bends for good`: strains past where it stays bent [-] · `set`: stays bent by more than wanted [rad] or [mm] ·
 * `warmth`: softens or turns brittle [K] · `hard`, `soft`: pushes back too hard, too little [N·mm] or [N] · `comes back`: where it
 * should stay · `stays`: where it should come back · `touches`: itself, on the way.
 */
export type Shortcoming = (typeof SHORTCOMINGS)[number];

/** What is known of one design, by the same assessment as any joint's. */
export interface Figures {
  readonly room: Room;
  /** The larger of its sides in the plane of bending: what the trade-off sets against the chance. */
  readonly size: Mm;
  /** Share of prints that reach the wanted number, 0 to 1, scatter and doubt together. */
  readonly chance: number;
  /** Half break by so many [cycles]. */
  readonly median: number;
  /** True where half last past what anybody has counted: no life is told. */
  readonly pastCount: boolean;
  /** Peak strain of the skin as a fraction. */
  readonly strain: number;
  /** [N·mm] or [N] */
  readonly effort: number;
  /** [rad] or [mm] */
  readonly set: number;
  /** The figures are exact by hand, or solved; or an estimate that is still to be solved, of which none is left in the end. */
  readonly by: 'hand form' | 'solver' | 'estimate';
}

/** One that meets all that is wanted, and than which nothing of its kind in its filament is both smaller and surer. */
export interface Design {
  readonly joint: Joint;
  readonly figures: Figures;
  /** Nothing that was found, of any kind, is both smaller and surer. */
  readonly isBest: boolean;
}

/** One way in which a design falls short: what it has, and what was asked, in the unit of the shortcoming. */
export interface Shortfall {
  readonly reason: Shortcoming;
  readonly value: number;
  readonly limit: number;
}

/** One that falls short, and in what. */
export interface Miss {
  readonly joint: Joint;
  readonly figures: Figures;
  readonly short: readonly [Shortfall, ...Shortfall[]];
}

/** How many fall short in one way: in this alone, and with others too; and the one of the former that comes nearest. */
export interface Failed {
  readonly reason: Shortcoming;
  readonly alone: number;
  readonly withOthers: number;
  readonly nearest?: Miss;
}

/** What a search has found so far, or in the end. */
export interface FindAnswer {
  /** Joints that have been tried, and that there are to try. */
  readonly tried: number;
  readonly total: number;
  /** Share of the whole work that is done, 0 to 1: when all have been tried, the most promising are still to be solved. */
  readonly share: number;
  /** Of those tried: combinations of sizes that cannot be made at all. */
  readonly impossible: number;
  /** Of those tried: those that meet all that is wanted, as far as hand forms tell. */
  readonly meets: number;
  /** Smallest first, then softest. */
  readonly designs: readonly Design[];
  /** Most frequent first. */
  readonly failed: readonly Failed[];
  /** Where nothing was found: the one that comes nearest, whatever it falls short in. */
  readonly closest?: Miss;
  /** False while it goes on. */
  readonly isDone: boolean;
}
