import type { Section } from '../flexures/family.ts';
import type { LifeAnswer } from '../life/lifeAnswer.ts';
import type { Filament, Provenance, ProvenanceKind } from '../material/types.ts';
import type { Problem } from '../problems.ts';
import type { Mm, MPa, NMm, Rad } from '../units.ts';
import type { Joint } from './joint.ts';

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

/** Why the verdict is what it is: an allowable, the chance of reaching the wanted cycles, or how the section prints. */
export type VerdictReason = AllowableName | 'life' | 'printing' | 'within all limits' | 'beyond data' | 'first flex';

export interface Verdict {
  readonly grade: Grade;
  readonly reason: VerdictReason;
  /** Room to spare of the governing reason as a ratio, above 1 is spare; for `life` median / wanted. */
  readonly margin: number;
}

export interface StrainAnswer {
  /** t·θ/(2L), as a fraction. */
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
  /** Torque to hold the wanted angle [N·mm], for the typical modulus. */
  readonly torque: NMm;
  /** With the low and the high modulus of the filament row. */
  readonly torqueLow: NMm;
  readonly torqueHigh: NMm;
  /** Torque per angle of the whole joint [N·mm/rad]. */
  readonly stiffness: number;
  /** Modulus used [MPa] and where it comes from. */
  readonly modulus: MPa;
  readonly modulusLow: MPa;
  readonly modulusHigh: MPa;
  readonly provenance: Provenance;
  /** 1 for a narrow leaf to 1/(1 − ν²) for a wide one. */
  readonly widthRatio: number;
}

/** How far past the wanted angle it may be bent, whole joint [rad]. */
export interface OverBend {
  /** Where the first trace of set begins: the skin reaches the yield stress. */
  readonly atSet: Rad;
  readonly atSingle: Rad;
  /** Where it plainly stays bent: the skin reaches the yield strain. */
  readonly atYield: Rad;
  readonly atBreak: Rad;
  /** Where a hard stop should hold it; never below the wanted angle. */
  readonly hardStop: Rad;
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

/** Where the pad goes at the wanted angle, in the plane of bending [mm]. */
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
  readonly filament: Filament;
  readonly section: Section;
  readonly length: Mm;
  readonly fillet: Mm;
  readonly padThickness: Mm;
  readonly inRow: number;
  /** Angle of each of the flexures in the row [rad]. */
  readonly angleEach: Rad;
  readonly fit: Fit;
  readonly strain: StrainAnswer;
  readonly effort: EffortAnswer;
  /** Left after one bend to the wanted angle, whole joint. */
  readonly set: { readonly angle: Rad; readonly fraction: number };
  readonly overBend: OverBend;
  readonly travel: Travel;
  readonly life: LifeAnswer;
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
