/**
 * What crosses between the page and its workers: plain data only, since functions cannot. It is copied, not handed over:
 * an answer holds hundreds of short arrays (1176 for an arch), which copy in 1.5 ms and would take 2.3 ms to hand over,
 * and the worker remembers them.
 */
import type { Assessment } from '../core/design/assessment.ts';
import type { DoubtAnswer, DoubtAsked } from '../core/design/doubtAnswer.ts';
import type { Joint } from '../core/design/joint.ts';
import type { EffortWanted, MatchAnswer } from '../core/design/matchAnswer.ts';
import type { Nudged } from '../core/design/nudges.ts';
import type { Remedy, Spare } from '../core/design/remedy.ts';
import type { FindAnswer } from '../core/find/findAnswer.ts';
import type { Wanted } from '../core/find/wanted.ts';
import type { CheckedPart } from '../core/inspect/checkedPart.ts';
import type { LengthUnit } from '../core/inspect/lengthUnit.ts';
import type { PlateUp } from '../core/inspect/judged.ts';
import type { PartPicture, PictureOptions } from '../core/inspect/picture/picture.ts';
import type { CheckedToolpath, PlaceNear } from '../core/inspect/toolpath/checkedToolpath.ts';
import type { Place } from '../core/inspect/toolpath/place.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Result } from '../core/result.ts';
import type { GcodeText } from '../files/gcode/gcodeText.ts';

/** What would make a joint pass, or how far each value may go while it does. */
export interface Ways {
  /** The joint that they start from, as the solver answers it. */
  readonly before: Assessment;
  /** Their assessments come without the way there, which nobody draws. */
  readonly remedies: readonly Remedy[];
  readonly spares: readonly Spare[];
  /** True where the search ended before it had looked at all that it would. */
  readonly isCut: boolean;
}

/** How far the check of a part has come: what is being done, and how many thin sections there are so far. */
export interface PartNews {
  readonly doing: 'reading' | 'mending' | 'looking';
  readonly found: number;
}

/** A part file: it is handed over by name only, not copied, and read where it is. */
interface PartFile {
  readonly file: Blob;
  readonly name: string;
  /** Another for every file, so that what has been read need not be read again. */
  readonly key: string;
  /** As the user says; otherwise as the file states, or as its size suggests. */
  readonly unit?: LengthUnit;
}

/** How far the check of a toolpath has come, and how many thin sections there are so far. */
export interface ToolpathNews {
  readonly doing: 'reading' | 'outlining' | 'looking' | 'gathering';
  readonly found: number;
}

/** A toolpath: handed over by name only, and read piece by piece where it is. */
interface ToolpathFile {
  readonly file: Blob;
}

/** Every job with what it takes and gives. A new one is a line here and a function that `jobs.ts` or `lateJobs.ts` calls. */
interface Jobs {
  /** `drawn`: with the whole way and its shapes; a verdict alone does without. */
  readonly assess: {
    readonly input: { readonly joint: Joint; readonly drawn: boolean };
    readonly output: Result<Assessment>;
  };
  readonly waysOut: { readonly input: { readonly joint: Joint }; readonly output: Result<Ways> };
  readonly doubt: {
    readonly input: { readonly joint: Joint; readonly asked: DoubtAsked };
    readonly output: Result<DoubtAnswer>;
  };
  /** What small changes do, each without its way; and the joint itself, as the solver answers it. */
  readonly nudges: {
    readonly input: { readonly joint: Joint };
    readonly output: Result<{ readonly before: Assessment; readonly nudged: readonly Nudged[] }>;
  };
  readonly matchEffort: {
    readonly input: { readonly joint: Joint; readonly wanted: EffortWanted };
    readonly output: Result<MatchAnswer>;
  };
  /** Its news are all that has been found so far. */
  readonly find: {
    readonly input: { readonly wanted: Wanted };
    readonly output: Result<FindAnswer>;
    readonly news: FindAnswer;
  };
  readonly checkPart: {
    readonly input: PartFile & {
      /** The thickest that is looked for [mm]. */
      readonly thickest: number;
    };
    readonly output: Result<CheckedPart>;
    readonly news: PartNews;
  };
  readonly drawPart: {
    readonly input: PartFile & { readonly up: PlateUp; readonly options: PictureOptions };
    readonly output: Result<PartPicture>;
  };
  readonly checkToolpath: {
    readonly input: ToolpathFile & {
      readonly name: string;
      /** Of the filament, as the user says [mm]; otherwise the one with which lines come out as wide as printers lay them. */
      readonly diameter?: number;
      /** The thickest that is looked for [mm]. */
      readonly thickest: number;
      /** Drawn by the user or carried over: gathered along with what is found, after it. */
      readonly boxes?: readonly Place[];
    };
    readonly output: Result<CheckedToolpath<GcodeText>>;
    readonly news: ToolpathNews;
  };
  /** What lies near other places of a toolpath that was checked. */
  readonly nearPlaces: {
    readonly input: ToolpathFile & {
      readonly diameter: number;
      readonly places: readonly Place[];
      /** Of a spiral, how much it rises a turn [mm]. */
      readonly pitch?: number;
    };
    readonly output: Result<readonly PlaceNear[]>;
  };
}

export type JobName = keyof Jobs;
export type Input<K extends JobName> = Jobs[K]['input'];
export type Output<K extends JobName> = Jobs[K]['output'];
/** What a job tells on its way, before it has ended. */
export type News<K extends JobName> = K extends JobName
  ? Jobs[K] extends { readonly news: infer N }
    ? N
    : never
  : never;

export interface Request<K extends JobName = JobName> {
  readonly id: number;
  readonly job: K;
  readonly input: Input<K>;
  /** Filaments of the user's own as they are now: a worker has a shelf of its own. */
  readonly own: readonly OwnFilament[];
}

/**
 * `ready` once, when the worker has loaded; then for each request any number of `progress`, with the share that is done
 * where the job knows it, and of `news` of a job that has any, and one of the others.
 */
export type Reply =
  | { readonly is: 'ready' }
  | { readonly is: 'progress'; readonly id: number; readonly share?: number }
  | { readonly is: 'news'; readonly id: number; readonly news: News<JobName> }
  | { readonly is: 'done'; readonly id: number; readonly output: Output<JobName> }
  | { readonly is: 'crashed'; readonly id: number; readonly message: string };

/**
 * Called again and again while a job computes, so that whoever waits can tell long from hung; with the share that is done
 * where the job knows it.
 */
export type Alive = (share?: number) => void;

/** Called with what a job has found so far. */
export type Tell = (news: News<JobName>) => void;
