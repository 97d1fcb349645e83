/** Writing a part: apart from reading, which needs much more and is needed later. */
import type { Joint, Part } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/known.ts';
import { PART_FORMAT, UNITS } from './limits.ts';
import { MIGRATIONS, versionAfter } from './partMigrations.ts';

/** The joint with its fields in the order in which they are written, whatever order they were made in. */
function inOrder({ id, name, family, sizes, movement, profile, measuredThickness }: Joint) {
  const { drive, amount, ways, cycles, held, chance, effortAtMost, stays } = movement;
  const { nozzle, lineWidth, layerHeight, firstLayerHeight, lying, fitRule, filament } = profile;
  const known = Object.keys(findFamily(family)?.parameters ?? sizes);
  return {
    id,
    name,
    family,
    sizes: Object.fromEntries(known.map((size) => [size, sizes[size]])),
    movement: {
      drive,
      amount,
      ways,
      cycles,
      held,
      chance,
      ...(effortAtMost === undefined ? {} : { effortAtMost }),
      ...(stays === undefined ? {} : { stays }),
    },
    profile: { nozzle, lineWidth, layerHeight, firstLayerHeight, lying, fitRule, filament },
    ...(measuredThickness === undefined ? {} : { measuredThickness }),
  };
}

/**
 * The part as the text of a file. The same part gives the same text.
 *
 * @param part - any part whose joints have been checked
 * @returns pretty JSON, ends with a line end
 */
export function writePart({ name, invented, joints }: Part): string {
  const part = { name, invented, joints: joints.map(inOrder) };
  const document = { format: PART_FORMAT, version: versionAfter(MIGRATIONS), units: UNITS, part };
  return `${JSON.stringify(document, null, 2)}\n`;
}
