import type { Drive, Section, Sizes } from '../flexures/family.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import type { Filament, Provenance, ProvenanceKind } from '../material/types.ts';
import type { Problem } from '../problems.ts';
import type { Mm, MPa } from '../units.ts';
import type { Joint } from './joint.ts';
import type { Solved } from './solved.ts';

/** `beyond`: more cycles are wanted than anyone has counted, so neither pass nor fail can be said. */
export type Grade = 'pass' | 'caution' | 'fail' | 'beyond';

export type AllowableName = 'repeated' | 'single' | 'yield' | 'break' | 'held';

/** One strain that the filament may see, against the strain of this joint. */
export interface Allowable {
  readonly name: AllowableName;
  /** As a fraction, already reduced for bending across layers. */
  readonly limit: number;
  /** The strain that is compared with it, as a fraction. */
  readonly strain: number;
  /** limit / strain: above 1 is room to spare; Infinity when nothing strains. */
  readonly margin: number;
  /** False when the brief does not call on it (not held, flexed once, …); it is then shown but not judged. */
  readonly applies: boolean;
  readonly grade: Grade;
  readonly provenance: Provenance;
}

/** Why the verdict is what it is: an allowable, the chance of reaching the wanted cycles, how the section prints, or how it moves. */
export type VerdictReason =
  | AllowableName
  | 'life'
  | 'printing'
  | 'within all limits'
  | 'beyond data'
  | 'first flex'
  | 'effort'
  | 'stays'
  | 'comes back'
  | 'touches'
  | 'warmth';

export interface Verdict {
  readonly grade: Grade;
  readonly reason: VerdictReason;
  /** Room to spare of the governing reason as a ratio, above 1 is spare; for `life` median / wanted. */
  readonly margin: number;
}

export interface StrainAnswer {
  /** Along the flexure, without the root: t·θ/(2L) for a pure moment; as a fraction. */
  readonly nominal: number;
  /** At the root, nominal × root factor: what the skin sees. */
  readonly peak: number;
  /** Stress concentration of the root fillet in bending. */
  readonly concentration: number;
  /** 1 + q·(Kt − 1), what is applied to strain. */
  readonly rootFactor: number;
  /** Notch sensitivity q assumed, 0 to 1. */
  readonly notchSensitivity: number;
  readonly where: 'root' | 'along the leaf';
}

export interface EffortAnswer {
  /** `turn`: a torque [N·mm] and a stiffness in [N·mm/rad]; `travel`: a force [N] and [N/mm]. */
  readonly measure: Drive['measure'];
  /** What holds the wanted amount, for the typical modulus. */
  readonly effort: number;
  /** With the low and the high modulus of the filament row. */
  readonly low: number;
  readonly high: number;
  /** Effort per amount of the whole joint, before anything stays bent; a secant where it is no straight line. */
  readonly stiffness: number;
  /** Modulus used [MPa] and where it comes from. */
  readonly modulus: MPa;
  readonly modulusLow: MPa;
  readonly modulusHigh: MPa;
  readonly provenance: Provenance;
  /** 1 for a narrow leaf to 1/(1 − ν²) for a wide one. */
  readonly widthRatio: number;
}

/** What stays bent after one flex to the wanted amount and a free release. */
export interface SetAnswer {
  /** Whole joint, [rad] or [mm]. */
  readonly amount: number;
  /** As a share of the wanted amount. */
  readonly fraction: number;
  /** Whole joint, [rad] or [mm]: as kind, and as harsh, as the figures of the row allow. */
  readonly low: number;
  readonly high: number;
}

/** How it stands the warmth in which it is used [°C]. */
export interface WarmthAnswer {
  readonly temperatureC: number;
  /** Where its filament softens, and by how much it stays below that. */
  readonly softensAt: number;
  readonly spare: number;
  /** Below the glass transition of what is rubbery in a room. */
  readonly isBrittle: boolean;
  readonly grade: Grade;
}

/** How far past the wanted amount the whole joint may be moved, [rad] or [mm] as its drive measures. */
export interface OverBend {
  /** Where the first trace of set begins: the skin reaches the yield stress. */
  readonly atSet: number;
  readonly atSingle: number;
  /** Where it plainly stays bent: the skin reaches the yield strain. */
  readonly atYield: number;
  readonly atBreak: number;
  /** Where a hard stop should hold it; never below the wanted amount. */
  readonly hardStop: number;
}

/** How the thin section lands on whole lines or layers. */
export interface Fit {
  readonly countOf: 'lines' | 'layers';
  /** Lines or layers in the section as it is: 2 for a sized joint, 1.5 for a measured one. */
  readonly exact: number;
  /** Nearest whole count, ties down, at least 1. */
  readonly nearest: number;
  /** Half-way between two counts, of which the lower is taken as nearest. */
  readonly tie: boolean;
  readonly nearestThickness: Mm;
  /** What will be laid: whole lines; nothing; or lines squeezed or stretched to fill. */
  readonly outcome: 'whole' | 'vanishes' | 'uneven';
  /** Contours that lay these lines, and whether one more line runs along the middle. */
  readonly contours: number;
  readonly middleLine: boolean;
}

/** Where the pad goes at the wanted angle of a leaf rolled to an arc, in the plane of bending [mm]. */
export interface Travel {
  /** Bend radius of the middle of one flexure; Infinity at zero angle. */
  readonly radius: Mm;
  /** How far the moving root goes in (towards the fixed pad) and up. */
  readonly inward: Mm;
  readonly upward: Mm;
}

/** Everything the tool says about one joint; every figure on screen and in the terminal comes from here. */
export interface Assessment {
  readonly joint: Joint;
  readonly drive: Drive;
  /** The sizes as they act: those that the drive does not ask for are at their typical values. */
  readonly sizes: Sizes;
  readonly filament: Filament;
  readonly section: Section;
  readonly length: Mm;
  readonly fillet: Mm;
  /** Absent for kinds without pads of a thickness of their own. */
  readonly padThickness: Mm | undefined;
  readonly inRow: number;
  readonly sideBySide: number;
  /** Share of the wanted amount that each of the flexures in the row takes, [rad] or [mm]. */
  readonly amountEach: number;
  /** The figures are those of a form that only estimates them; the solver has not answered. */
  readonly estimate: boolean;
  /** The whole way, where the solver was asked. */
  readonly solved?: Solved;
  readonly fit: Fit;
  readonly strain: StrainAnswer;
  readonly effort: EffortAnswer;
  readonly set: SetAnswer;
  readonly overBend: OverBend;
  /** Only for a leaf that rolls to an arc; other kinds and drives bend to other shapes. */
  readonly travel: Travel | undefined;
  readonly life: LifeAnswer;
  readonly warmth: WarmthAnswer;
  readonly allowables: readonly Allowable[];
  readonly verdict: Verdict;
  /** Weakest kind of provenance behind strain, effort and life. */
  readonly provenance: {
    readonly strain: ProvenanceKind;
    readonly effort: ProvenanceKind;
    readonly life: ProvenanceKind;
    readonly limits: ProvenanceKind;
  };
  readonly notes: readonly Problem[];
}
