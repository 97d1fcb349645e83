/** What each demonstration says: its names, its question, and how the question stands. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Goal, Values } from '../../core/lesson/demos/demo.ts';
import type { DemoId } from '../../core/lesson/demos/ids.ts';
import type { LengthUnit } from './numbers.ts';
import { DEMO_BENDS } from './lessonDemoBends.ts';
import { DEMO_PAIRS } from './lessonDemoPairs.ts';

/** Symbols that stand in the working, each with its words under the picture. */
export type Sign = 'ε' | 'θ' | 't' | 'L' | 'n' | 's' | 'k' | 'b' | 'E' | 'M' | 'F' | 'h' | 'm' | 'T';

/** The joints as assessed, A and B first. */
export interface Told {
  readonly answers: readonly Assessment[];
  readonly values: Values;
  readonly unit: LengthUnit;
}

export interface DemoWords {
  /** In the path, and in the names of its joints. */
  readonly name: string;
  /** As a class is asked: no answer, no number. */
  readonly ask: string;
  readonly claim: string;
  /** How it is set up, with its handles as `{key}`. */
  readonly sentence: string;
  readonly handles: Readonly<Record<string, string>>;
  readonly question: string;
  /** How the question stands, with numbers, and why. */
  readonly answer: (goal: Goal, told: Told) => string;
  readonly why: string;
  /** What of a joint differs from the others, beside its letter. */
  readonly varies: (a: Assessment, told: Told, at: number) => string;
  /** A second figure under the strain. */
  readonly also?: (a: Assessment, told: Told, at: number) => string | undefined;
  readonly symbols: readonly Sign[];
  readonly plot: { readonly name: string; readonly aid: string; readonly across: string };
  /** In the title block. */
  readonly setUp: string;
}

export const DEMO_WORDS: Readonly<Record<DemoId, DemoWords>> = { ...DEMO_BENDS, ...DEMO_PAIRS };

export const SIGN_WORDS: Readonly<Record<Sign, string>> = {
  ε: 'strain of the skin (outer fibre)',
  θ: 'angle, as arc over radius: no unit',
  t: 'thickness',
  L: 'flexing length',
  n: 'how many there are',
  s: 'scale of the part',
  k: 'how much more the root strains',
  b: 'depth, out of the picture',
  E: 'modulus: how stiff the filament is',
  M: 'effort to turn it',
  F: 'push',
  h: 'rise of the arch as printed',
  m: 'power by which the push fades',
  T: 'time held, in minutes',
};
