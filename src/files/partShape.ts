/** The shape of a part on file and in a link: which fields there are and what kind of value each holds. */
import * as v from 'valibot';
import { MOISTURES, WAYS } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/index.ts';
import { FIT_RULES, LYINGS } from '../core/print/profile.ts';
import { filamentsShape } from './filamentShape.ts';
import { MAX_ALSO, MAX_JOINTS, UNITS } from './limits.ts';
import { fields, listOf, number } from './shape.ts';

/** Key of a row in a table of the core. The cut only bounds messages: no row's key is nearly as long. */
const key = v.pipe(
  v.string(),
  v.transform((text) => text.slice(0, 80)),
);

const swing = {
  amount: number,
  ways: v.picklist(WAYS),
  least: v.exactOptional(number),
  cycles: number,
} as const;

export const movementShape = fields({
  drive: key,
  ...swing,
  also: v.exactOptional(listOf(fields(swing), MAX_ALSO)),
  held: v.boolean(),
  heldHours: v.exactOptional(number),
  chance: number,
  effortAtMost: v.exactOptional(number),
  stays: v.exactOptional(v.boolean()),
});

export const surroundingsShape = fields({ temperatureC: number, moisture: v.picklist(MOISTURES) });

export const profileShape = fields({
  nozzle: number,
  lineWidth: number,
  layerHeight: number,
  firstLayerHeight: number,
  lying: v.picklist(LYINGS),
  fitRule: v.picklist(FIT_RULES),
  filament: key,
});

/** The sizes that the family named beside them has; of an unknown family nothing can be said. */
function sizesShape(joint: unknown) {
  const named = typeof joint === 'object' && joint !== null && 'family' in joint ? joint.family : undefined;
  const family = typeof named === 'string' ? findFamily(named) : undefined;
  const names = Object.keys(family?.parameters ?? {});
  return fields(Object.fromEntries(names.map((name) => [name, number])));
}

export const jointShape = v.lazy((joint) =>
  fields({
    id: v.string(),
    name: v.string(),
    family: key,
    sizes: sizesShape(joint),
    movement: movementShape,
    profile: profileShape,
    surroundings: v.exactOptional(surroundingsShape),
    measuredThickness: v.exactOptional(number),
  }),
);

const partShape = fields({
  name: v.string(),
  invented: v.boolean(),
  joints: listOf(jointShape, MAX_JOINTS),
});

export const documentShape = fields({ units: v.literal(UNITS), part: partShape, filaments: filamentsShape });
