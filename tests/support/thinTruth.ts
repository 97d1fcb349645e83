/** What is known of the thin sections of our own parts, and how far findings are from it. */
import { expect } from 'vitest';
import type { Flexure, FlexureKind } from '../../src/core/inspect/flexure.ts';
import { expectClose } from './close.ts';
import { ownTruth } from './corpus.ts';

type Triple = readonly [number, number, number];

/** Lengths in mm in the frame of the file. */
export interface KnownNeck {
  readonly kind: string;
  readonly centre_mm: Triple;
  readonly flex_direction: Triple;
  readonly thickness_direction: Triple;
  readonly width_direction: Triple;
  readonly thickness_mm: number;
  readonly length_between_pads_mm: number;
  readonly width_mm: number;
  readonly fillet_radius_mm: number;
}

export interface KnownPart {
  readonly file_unit: 'mm' | 'inch';
  readonly necks: readonly KnownNeck[];
}

export function knownParts(): readonly (readonly [string, KnownPart])[] {
  return Object.entries(ownTruth().files as unknown as Readonly<Record<string, KnownPart>>);
}

const KINDS: Readonly<Record<string, FlexureKind>> = {
  'straight leaf': 'leaf',
  'half of a crossed leaf': 'leaf',
  'curved leaf (round arc)': 'leaf',
  'curved (cosine) arch, clamped both ends': 'arch',
  'web thin in the build direction': 'crease',
};

export const kindKnownAs = (neck: KnownNeck): FlexureKind => KINDS[neck.kind]!;

const away = ({ x, y, z }: Flexure['centre'], [a, b, c]: Triple) => Math.hypot(x - a, y - b, z - c);

/** Angle between two lines [rad], whichever way they point. */
export function lineAngle({ x, y, z }: Flexure['along'], [a, b, c]: Triple): number {
  return Math.acos(Math.min(1, Math.abs(x * a + y * b + z * c)));
}

const WANTED = 'what is asked of the finder';
const TWO_DEGREES = Math.PI / 90;

/** Fails unless each known neck was found, as large and as it lies, and nothing else. */
export function expectFound(flexures: readonly Flexure[], necks: readonly KnownNeck[], where: string): void {
  expect(flexures.length, `${where}: how many thin sections`).toBe(necks.length);
  const left = [...flexures];
  for (const neck of necks) {
    const nearest = left.reduce((best, one) =>
      away(one.centre, neck.centre_mm) < away(best.centre, neck.centre_mm) ? one : best,
    );
    left.splice(left.indexOf(nearest), 1);
    const { thickness, length, depth, along, across, axis, roots } = nearest;
    expectClose(away(nearest.centre, neck.centre_mm), 0, { abs: 0.02 * neck.length_between_pads_mm, because: WANTED });
    expectClose(thickness.least, neck.thickness_mm, { rel: 0.02, because: WANTED });
    expectClose(length, neck.length_between_pads_mm, { rel: 0.1, because: WANTED });
    expectClose(depth, neck.width_mm, { rel: 0.02, because: WANTED });
    for (const [found, known] of [
      [along, neck.flex_direction],
      [across, neck.thickness_direction],
      [axis, neck.width_direction],
    ] as const) {
      expectClose(lineAngle(found, known), 0, { abs: TWO_DEGREES, because: WANTED });
    }
    for (const root of roots) {
      expectClose(root.fillet, neck.fillet_radius_mm, { rel: 0.05, because: 'facets of a fillet are chords of it' });
    }
  }
}
