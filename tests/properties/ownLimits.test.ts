/** Whatever a filament of the user's own may say, every answer that rests on it is a number. */
import { afterEach, describe, expect, it } from 'vitest';
import { standingOf } from '../../src/core/design/acrossFilaments.ts';
import { medianLifeAt, strainAtCycles } from '../../src/core/design/curves.ts';
import { doubtOf } from '../../src/core/design/doubt.ts';
import { holdAnswer } from '../../src/core/design/hold.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { meanStrainLives } from '../../src/core/life/meanStrain.ts';
import { checkFilament } from '../../src/core/material/ownCheck.ts';
import { CURVE_FIGURES, CURVE_LIMITS, PROPERTY_LIMITS, PROPERTY_NAMES } from '../../src/core/material/ownLimits.ts';
import { putOnShelf } from '../../src/core/material/shelf.ts';
import type { OwnFilament, PropertyName } from '../../src/core/material/types.ts';
import { USUAL_SPREAD } from '../../src/core/print/spread.ts';
import { assessed, changed, LEAF } from '../support/joints.ts';
import { ownPetg } from '../support/ownFilaments.ts';

const ENDS = ['min', 'max'] as const;
const OWN = ownPetg();

/** What must not be passed by a value is put there as well. */
const WITH: Partial<Record<PropertyName, PropertyName>> = {
  yieldStrain: 'strainAtBreak',
  strainAtBreak: 'yieldStrain',
};

function rowWith(name: PropertyName, typical: number): OwnFilament {
  const names = [name, WITH[name]].filter((one) => one !== undefined);
  const values = names.map((one) => {
    const [unit] = PROPERTY_LIMITS[one].units;
    return [one, { typical, unit, direction: 'any', provenance: { kind: 'memory' } }] as const;
  });
  return { ...OWN, properties: { ...OWN.properties, ...Object.fromEntries(values) } };
}

const ROWS = [
  ...PROPERTY_NAMES.flatMap((name) =>
    ENDS.map((end) => [`${name} ${end}`, rowWith(name, PROPERTY_LIMITS[name][end])] as const),
  ),
  ...CURVE_FIGURES.flatMap((name) =>
    ENDS.map((end) => [`${name} ${end}`, { ...OWN, life: { ...OWN.life, [name]: CURVE_LIMITS[name][end] } }] as const),
  ),
].filter(([, row]) => checkFilament(row).length === 0);

const USED = changed(LEAF, { movement: { held: true }, profile: { filament: OWN.id } });
const THICK = changed(USED, { sizes: { lines: 4 } });
const JOINTS: readonly Joint[] = [
  { ...THICK, surroundings: { temperatureC: 23, moisture: 'dry' } },
  changed(THICK, {
    movement: { ways: 'both ways', also: [{ amount: LEAF.movement.amount / 2, ways: 'one way', cycles: 1e6 }] },
    profile: { lying: 'upright' },
  }),
];

/** Places of an answer at which there is no number, or no end to it. */
function unsaid(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => unsaid(inside, `${path}.${key}`));
}

afterEach(() => putOnShelf([]));

describe('a filament at a limit of what it may say', () => {
  it.each(ROWS)('%s: every answer is a number', (_, row) => {
    putOnShelf([row]);
    for (const joint of JOINTS) {
      const a = assessed(joint);
      const { effort, set, overBend, life, warmth, allowables } = a;
      const lives = meanStrainLives(life.wear[0], a.filament, effort.modulus);
      const held = holdAnswer(a);
      const curves = [medianLifeAt(a, 0), medianLifeAt(a, 0.01), strainAtCycles(a, 100), strainAtCycles(a, 1e9)];
      const answers = { effort, set, overBend, life, warmth, allowables, lives, curves };
      expect(unsaid({ ...answers, held: held.ok ? held.value : [], standing: standingOf(a, row) })).toEqual([]);
      const doubt = doubtOf(joint, { spread: USUAL_SPREAD, samples: 64, how: 'quasi-random', seed: 1 });
      expect(doubt.ok && unsaid(doubt.value)).toEqual([]);
    }
  });
});
