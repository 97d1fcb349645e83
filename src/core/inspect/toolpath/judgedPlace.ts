/** What is told of what is laid across a thin section, held against what its joint wants. */
import type { Assessment, Grade } from '../../design/assessment.ts';
import type { Joint } from '../../design/joint.ts';
import type { Result } from '../../result.ts';
import type { Mm } from '../../units.ts';
import type { PlaceAudit, Span } from './audit.ts';
import type { Place } from './place.ts';

/** What should lie across: whole, equal lines from end to end and no start points. */
export interface WantedLaid {
  /** Of a joint of the user's, or what the file itself lays most. */
  readonly from: 'joint' | 'file';
  /** Lines across; of a crease layers through. */
  readonly count: number;
  readonly countOf: 'lines' | 'layers';
  /** Width of each line; of a crease height of each layer [mm]. */
  readonly each: Mm;
  readonly thickness: Mm;
  /** How deep it is along its axis [mm], where that is known. */
  readonly depth?: Mm;
}

/** Runs of layers, first to last, counted from 1 at the bottom of the section. */
export type LayerRun = readonly [first: number, last: number];

export type LaidFindingKind =
  // faults
  | 'nothing-laid' // layers in which nothing lies across
  | 'starts-on-it' // contours start, or lines begin, in the zone to be kept free
  | 'stops-on-it' // lines end inside
  | 'too-few' // fewer lines than wanted all along the run
  | 'too-many' // more whole lines than wanted
  | 'thin-line' // a line that is under three quarters of the wanted width lies among them; `broken` where it is not all along
  | 'open-all-along' // a gap between two lines from end to end
  | 'open-places' // shorter gaps
  | 'pressed' // neighbours lie closer than their plastic has room for
  | 'uneven' // whole lines differ from the wanted width by more than a tenth, or change that much along the section
  | 'wider-first' // the lowest one or two layers are wider (or narrower), as first layers are
  | 'thickness' // another thickness than wanted, with what it does to strain and effort
  | 'depth' // another depth than wanted
  | 'runs-across' // lines run across the section instead of along it
  | 'crossed' // moves that lay nothing cross it
  | 'no-direction' // upright: every layer is a joint that bending pulls apart
  // good
  | 'whole' // all layers have the wanted count of equal lines
  | 'free-of-starts'
  | 'as-thick'
  | 'as-deep';

export interface LaidFinding {
  readonly kind: LaidFindingKind;
  readonly grade: Grade;
  /** Where it holds, rising; empty where it is about the section as a whole. */
  readonly layers: readonly LayerRun[];
  /** How many layers that is. */
  readonly count: number;
  /** How many starts, stops, gaps or crossings there are. */
  readonly places?: number;
  /** Widths or heights that it speaks of [mm]. */
  readonly widths?: Span;
  /** Where along the run [mm]. */
  readonly at?: Span;
  /** Lines across that it speaks of. */
  readonly lines?: Span;
  /** Share [-]: how much wider, how much runs along. */
  readonly share?: number;
  /** Layers in which a thin line is broken; crossings that are lifted. */
  readonly broken?: readonly LayerRun[];
  readonly lifted?: number;
  /** Lines of the text, at most five, where a start or stop is found. */
  readonly textLines?: readonly number[];
}

/** A row of what is wanted beside what is laid. */
export interface LaidRow {
  readonly what:
    'lines' | 'thickness' | 'line-width' | 'spread' | 'starts' | 'stops' | 'open' | 'depth' | 'strain' | 'effort';
  readonly grade: Grade;
  /** Absent where nothing is wanted, as `none` where none is wanted. */
  readonly wanted?: number | 'none';
  readonly laid: number | Span | 'none';
  /** Of starts, stops and open places: layers that have any. */
  readonly layers?: number;
}

/** Something to do about it. */
export type LaidChange =
  /** Draw it as thick as so many whole lines [mm]. */
  | { readonly kind: 'draw'; readonly thickness: Mm; readonly count: number; readonly of: 'lines' | 'layers' }
  /** Or lay lines of this width, so that a whole count fills what is drawn [mm]; what that does to strain [-] and to effort [times]. */
  | {
      readonly kind: 'lay';
      readonly lineWidth: Mm;
      readonly count: number;
      readonly strain?: number;
      readonly effort?: number;
    }
  /** Put start points onto the pad: clears so many layers. */
  | { readonly kind: 'start-elsewhere'; readonly layers: number }
  /** Leave gaps under one line alone, so that no thin line is pressed in. */
  | { readonly kind: 'leave-gaps' }
  /** Lead travel round the section. */
  | { readonly kind: 'travel-round'; readonly crossings: number }
  /** Lay contours along it: one more contour. */
  | { readonly kind: 'contours'; readonly count: number }
  /** Turn the part on the plate, so that lines run along it. */
  | { readonly kind: 'turn' };

/** What a joint of the user's comes to when it is as thick as it is laid. */
export interface AsLaid {
  /** The joint as it is, and with the thickness that is laid. */
  readonly joint: Joint;
  readonly before: Result<Assessment>;
  readonly after: Result<Assessment>;
}

export interface JudgedPlace {
  readonly place: Place;
  readonly audit: PlaceAudit;
  readonly wanted: WantedLaid;
  readonly grade: Grade;
  /** Worst first, those that are good last. */
  readonly findings: readonly LaidFinding[];
  readonly rows: readonly LaidRow[];
  readonly changes: readonly LaidChange[];
  /** Where it is held against a joint. */
  readonly asLaid?: AsLaid;
}
