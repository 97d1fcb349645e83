import fc from 'fast-check';
import { FILAMENTS } from '../../src/core/material/filaments.ts';
import { inOrder, ownFrom } from '../../src/core/material/ownFilament.ts';
import { checkFilament } from '../../src/core/material/ownCheck.ts';
import {
  CURVE_LIMITS,
  LAID_LIMITS,
  NEEDED,
  PROPERTY_LIMITS,
  PROPERTY_NAMES,
  SUREST_LIMITS,
  type Limits,
} from '../../src/core/material/ownLimits.ts';
import type { LaidThickness, OwnFilament, PropertyName, Provenance, Quantity } from '../../src/core/material/types.ts';
import { cleanName, words } from '../../src/files/names.ts';
import { filament } from './filament.ts';
import { anyTests } from './tallies.ts';

/** A row made from PETG and not changed. */
export function ownPetg(id = 'own-petg', name = 'PETG blue'): OwnFilament {
  return ownFrom(filament('petg'), name, id);
}

/** PETG whose lines come out thicker and layers thinner than set, and whose curve is surest where strips were counted. */
export function measuredPetg(id = 'own-measured', name = 'PETG, spool 3'): OwnFilament {
  const row = ownPetg(id, name);
  const provenance = { kind: 'measured', what: '5 strips' } as const;
  return {
    ...row,
    laid: {
      lines: { factor: 1.04, offset: 0.03, sigma: 0.012 },
      layers: { factor: 0.97, offset: -0.02, sigma: 0.015 },
    },
    life: {
      ...row.life,
      doubtFactor: 2,
      surestLife: 1000,
      doubtPerDecade: 0.15,
      provenance,
      certainty: 'by your own test',
    },
  };
}

const said = fc.string({ unit: 'binary', maxLength: 60 }).map(words);
const named = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 90 })
  .map(cleanName)
  .filter((text) => text !== '');

const INPUTS = ['published', 'memory', 'published and memory'] as const;

const provenance: fc.Arbitrary<Provenance> = fc.oneof(
  said.map((what) => ({ kind: 'measured' as const, what })),
  said.map((place) => ({ kind: 'published' as const, source: 'named-by-user' as const, place })),
  said.map((place) => ({ kind: 'published' as const, source: 's14-print-tension' as const, place })),
  said.map((because) => ({ kind: 'memory' as const, because })),
  fc.constant({ kind: 'memory' as const }),
  fc.record({ kind: fc.constant('computed' as const), from: said, inputs: fc.constantFrom(...INPUTS) }),
);

/** Never −0, which JSON does not tell from 0. */
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0);

/** Any value that a property may have. */
export function quantityOf(name: PropertyName): fc.Arbitrary<Quantity> {
  const { min, max, units } = PROPERTY_LIMITS[name];
  const figure = within(min, max);
  return fc
    .record({
      figures: fc.tuple(figure, figure, figure).map((three) => three.toSorted((a, b) => a - b)),
      hasLow: fc.boolean(),
      hasHigh: fc.boolean(),
      unit: fc.constantFrom(...units),
      direction: fc.constantFrom<Quantity['direction']>('along lines', 'across layers', 'flow', 'any'),
      provenance,
      range: fc.option(fc.constantFrom<Quantity['range']>('memory', 'published'), { nil: undefined }),
      note: fc.option(said, { nil: undefined }),
    })
    .map(({ figures, hasLow, hasHigh, range, note, ...kept }) => {
      const [low = 0, typical = 0, high = 0] = figures;
      return {
        typical,
        ...(hasLow ? { low } : {}),
        ...(hasHigh ? { high } : {}),
        ...kept,
        ...(range === undefined ? {} : { range }),
        ...(note === undefined ? {} : { note }),
      };
    });
}

const inside = ({ min, max }: Limits) => within(min, max);
const figure = (name: keyof typeof CURVE_LIMITS) => inside(CURVE_LIMITS[name]);

/** Near enough to what is set that a joint which can be made of any other row can be made of this one. */
const thickness: fc.Arbitrary<LaidThickness> = fc.record({
  factor: within(0.8, 1.2),
  offset: within(-0.1, 0.1),
  sigma: within(LAID_LIMITS.sigma.min, 0.1),
});

const laid = fc.record({ lines: thickness, layers: thickness }, { requiredKeys: [] });

const surest = fc.record(
  { surestLife: inside(SUREST_LIMITS.surestLife), doubtPerDecade: inside(SUREST_LIMITS.doubtPerDecade) },
  { requiredKeys: [] },
);

const life: fc.Arbitrary<OwnFilament['life']> = fc
  .record({
    A: figure('A'),
    exponents: fc.tuple(figure('b'), figure('c')).filter(([one, other]) => one !== other),
    B: figure('B'),
    gamma: figure('gamma'),
    firstFlexBreakStrain: figure('firstFlexBreakStrain'),
    sigmaLog10N: figure('sigmaLog10N'),
    maxReportableCycles: fc.integer({ min: 10, max: 1e9 }),
    doubtFactor: figure('doubtFactor'),
    certainty: said,
    provenance,
    note: fc.option(said, { nil: undefined }),
    surest,
  })
  .map(({ exponents, note, surest: moved, ...kept }) => ({
    ...kept,
    ...moved,
    b: Math.max(...exponents),
    c: Math.min(...exponents),
    ...(note === undefined ? {} : { note }),
  }));

/**
 * Any row of the user's own that can be used: values of every property, some as in a row of the table, some absent, and with
 * tests or without.
 */
export const ownFilament: fc.Arbitrary<OwnFilament> = fc
  .record({
    base: fc.constantFrom(...FILAMENTS),
    id: fc.stringMatching(/^own-[a-z0-9-]{1,40}$/),
    name: named,
    fullName: named,
    remark: said,
    printable: fc.boolean(),
    crystalline: fc.boolean(),
    changed: fc.record(Object.fromEntries(PROPERTY_NAMES.map((name) => [name, quantityOf(name)])), {
      requiredKeys: [],
    }),
    absent: fc.subarray(PROPERTY_NAMES.filter((name) => !NEEDED.includes(name))),
    life: fc.option(life, { nil: undefined }),
    laid: fc.option(laid, { nil: undefined }),
    tests: fc.option(anyTests, { nil: undefined }),
  })
  .map(({ base, id, name, changed, absent, life: curve, remark, laid: thick, tests, ...kept }) => {
    const row = ownFrom(base, name, id);
    const all: Record<string, Quantity | undefined> = { ...row.properties, ...changed };
    const present = Object.entries(all).filter(([key]) => !absent.includes(key as PropertyName));
    return inOrder({
      ...row,
      ...kept,
      properties: Object.fromEntries(present) as unknown as OwnFilament['properties'],
      life: curve ?? row.life,
      ...(thick === undefined ? {} : { laid: thick }),
      own: { ...row.own, remark, ...(tests === undefined ? {} : { tests }) },
    });
  })
  .filter((row) => checkFilament(row).length === 0);
