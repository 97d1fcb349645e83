/** What the strain–life curve of each row of the table stands on, and the one published test that folded printed hinges. */
import type { SourceKey } from '../sources.ts';
import { radians } from '../units.ts';
import type { ProvenanceKind, RowId } from './types.ts';

/** 40° over 2 mm at two lines of 0.42 mm, ε = (t/2)·θ/L: the strain at which practice counts few cycles, 0.1466. */
export const PRACTICE_FOLD = ((0.84 / 2) * radians(40)) / 2;

/** Strain guessed for the fold at which our curve of PP was set to meet the published test. */
export const GUESSED_FOLD = 0.18;

/** Something counted, remembered or chosen that a curve was set by. */
export interface Anchor {
  readonly cycles: number;
  /** Peak strain as a fraction; absent where only the life was seen. */
  readonly strain?: number;
  /** R of the cycles; 0 is from rest and back. */
  readonly ratio: number;
  /** Broke by then; broke before; was still whole. */
  readonly says: 'at' | 'fewer' | 'more';
  /** Whether cycles stand in a document that was seen; else they are remembered or chosen. */
  readonly seen: boolean;
  /** Weakest kind behind cycles and strain together. */
  readonly kind: ProvenanceKind;
  /** What it is, as the head of a row, and what else there is to know of it. */
  readonly what: string;
  readonly more: string;
  readonly sources: readonly SourceKey[];
}

/** A remembered or chosen point. */
function chosen(cycles: number, strain: number, what: string, more: string, source: SourceKey): Anchor {
  return { cycles, strain, ratio: 0, says: 'at', seen: false, kind: 'memory', what, more, sources: [source] };
}

function practice(cycles: number): Anchor {
  const more = '40° over 2 mm at two lines of 0.42 mm';
  return chosen(cycles, PRACTICE_FOLD, 'Few cycles: common practice', more, 'common-practice');
}

function springy(cycles: number, strain: number, more: string): Anchor {
  return chosen(cycles, strain, 'Many cycles: chosen, springy part alone', more, 'strain-life');
}

function folded(what: string, says: 'fewer' | 'more', cycles: number): Anchor {
  return {
    cycles,
    ratio: 0,
    says,
    seen: true,
    kind: 'published',
    what: `Printed ${what} hinges, folded`,
    more: 'the strain of the fold was not visible',
    sources: ['s2-printed-hinges'],
  };
}

/** A published stress over a remembered modulus: the count is published, the strain no better than the modulus. */
function stressed(
  {
    cycles,
    stress,
    modulus,
    ratio,
    factor = 1,
  }: Record<'cycles' | 'stress' | 'modulus' | 'ratio', number> & {
    readonly factor?: number;
  },
  what: string,
  source: SourceKey,
): Anchor {
  return {
    cycles,
    strain: (factor * stress) / modulus,
    ratio,
    says: 'at',
    seen: true,
    kind: 'memory',
    what: `${what}: ${stress} MPa`,
    more: `over ${modulus} MPa from memory${factor === 1 ? '' : `, × ${factor} for printing by judgement`}`,
    sources: [source],
  };
}

const S3 = 's3-moulded-fatigue';
/** Moulded, bent both ways. */
const MOULDED_PC: readonly (readonly [cycles: number, stress: number])[] = [
  [1e4, 37.2],
  [1e5, 13.8],
  [1e6, 6.9],
  [1e7, 5.5],
];
const MOULDED_PA66: typeof MOULDED_PC = [
  [1e4, 44.8],
  [1e5, 40.7],
  [1e6, 36.5],
  [1e7, 35.9],
];

export const EVIDENCE: Readonly<Record<RowId, readonly Anchor[]>> = {
  pla: [
    practice(3),
    stressed({ cycles: 2e6, stress: 11.1, modulus: 3200, ratio: 0 }, 'Printed PLA, pulled', 's1-pla-fatigue'),
    folded('PLA', 'fewer', 1000),
  ],
  petg: [practice(200), springy(2e6, 0.0055, 'from memory'), folded('PETG', 'fewer', 1000)],
  abs: [practice(20), springy(2e6, 0.004, 'from memory')],
  asa: [practice(30), springy(2e6, 0.0045, 'from memory')],
  pa6: [
    practice(1500),
    ...MOULDED_PA66.map(([cycles, stress]) =>
      stressed({ cycles, stress, modulus: 2900, ratio: -1 }, 'Moulded PA66, bent both ways', S3),
    ),
    springy(2e6, 0.0115, 'chosen below the moulded PA66'),
    folded('nylon', 'fewer', 1000),
  ],
  pa12: [
    practice(1000),
    stressed({ cycles: 1e6, stress: 29.3, modulus: 1650, ratio: 0.1 }, 'Sintered PA12, pulled', 's4-pa12-fatigue'),
    springy(1e6, 0.012, 'chosen below the sintered part'),
    folded('nylon', 'fewer', 1000),
  ],
  pp: [
    chosen(
      1e6,
      GUESSED_FOLD,
      'A guessed strain for the fold test',
      'the one value at which every result of that test agrees with these curves; tuned to it, so no confirmation',
      's2-printed-hinges',
    ),
    folded('PP', 'more', 1e6),
  ],
  tpu95a: [
    chosen(2e6, 0.3, 'A guessed strain for the fold test', 'set, not fatigue, is the limit', 's2-printed-hinges'),
    folded('TPU', 'more', 2e6),
  ],
  pc: [
    practice(20),
    ...MOULDED_PC.map(([cycles, stress]) =>
      stressed({ cycles, stress, modulus: 2350, ratio: -1, factor: 0.7 }, 'Moulded PC, bent both ways', S3),
    ),
  ],
  'pp-moulded': [
    {
      cycles: 1e6,
      // 0.3 × 1.5 mm folded flat.
      strain: (0.15 * Math.PI) / 1.5,
      ratio: 0,
      says: 'more',
      seen: true,
      kind: 'published',
      what: 'Moulded hinges of 0.3 × 1.5 mm, folded flat',
      more: 'published sizes and a published statement, “more than a million”; no test',
      sources: ['s7-moulded-hinge', 's24-hinge-article'],
    },
    chosen(1e6, 0.3, 'A round strain for that statement', 'chosen', 's24-hinge-article'),
  ],
};

/** How far a curve can be trusted, by what its row says of itself. */
export type Strength = 'weak' | 'fair' | 'strong';

/**
 * How far a curve can be trusted.
 *
 * @param certainty - what the row says of its own curve [-]
 * @returns `strong` or `fair` where it calls itself that at one end at least, else `weak`
 *
 * @example strengthOf('weak at both ends') // → 'weak'
 */
export function strengthOf(certainty: string): Strength {
  if (/\bstrong\b/i.test(certainty)) return 'strong';
  return /\bfair\b/i.test(certainty) ? 'fair' : 'weak';
}

/** One row of the published test that folded printed hinges. */
export interface Folded {
  /** As the test names it. */
  readonly name: string;
  readonly cycles: number;
  readonly says: Anchor['says'];
  /** Our row that it is set beside, if there is one. */
  readonly row?: RowId;
}

export const FOLD_SOURCE: SourceKey = 's2-printed-hinges';

export const FOLD_TEST: readonly Folded[] = [
  { name: 'TPU', cycles: 2e6, says: 'more', row: 'tpu95a' },
  { name: 'PP', cycles: 1e6, says: 'more', row: 'pp' },
  { name: 'styrene elastomer', cycles: 244_424, says: 'at' },
  { name: 'nylon', cycles: 1000, says: 'fewer', row: 'pa12' },
  { name: 'PETG', cycles: 1000, says: 'fewer', row: 'petg' },
  { name: 'PLA', cycles: 1000, says: 'fewer', row: 'pla' },
];
