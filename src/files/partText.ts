/** Writing a part: apart from reading, which needs much more and is needed later. */
import type { Joint, Part } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/known.ts';
import { ownFilaments } from '../core/material/shelf.ts';
import { PART_FORMAT, PART_VERSION, UNITS } from './limits.ts';

/** The fields of these names that are there, in this order. */
function picked<T extends object>(from: T, names: readonly (keyof T)[]) {
  return Object.fromEntries(names.flatMap((name) => (from[name] === undefined ? [] : [[name, from[name]]])));
}

const SWING = ['amount', 'ways', 'least', 'cycles'] as const;
const SURROUNDINGS = ['temperatureC', 'moisture'] as const;
const PROFILE = ['nozzle', 'lineWidth', 'layerHeight', 'firstLayerHeight', 'lying', 'fitRule', 'filament'] as const;

/** The joint with its fields in the order in which they are written, whatever order they were made in. */
function inOrder({ id, name, family, sizes, movement, profile, surroundings, measuredThickness }: Joint) {
  const known = Object.keys(findFamily(family)?.parameters ?? sizes);
  const { also } = movement;
  return {
    id,
    name,
    family,
    sizes: picked(sizes, known),
    movement: {
      ...picked(movement, ['drive', ...SWING]),
      ...(also === undefined ? {} : { also: also.map((swing) => picked(swing, SWING)) }),
      ...picked(movement, ['held', 'heldHours', 'chance', 'effortAtMost', 'stays']),
    },
    profile: picked(profile, PROFILE),
    ...(surroundings === undefined ? {} : { surroundings: picked(surroundings, SURROUNDINGS) }),
    ...(measuredThickness === undefined ? {} : { measuredThickness }),
  };
}

/**
 * The part as the text of a file, with the filaments of the user's own that its joints use. The same part gives the
 * same text.
 *
 * @param part - any part whose joints have been checked
 * @param shelf - where its joints find the user's own filaments
 * @returns pretty JSON, ends with a line end
 */
export function writePart({ name, invented, joints }: Part, shelf = ownFilaments()): string {
  const part = { name, invented, joints: joints.map(inOrder) };
  const filaments = shelf.filter(({ id }) => joints.some(({ profile }) => profile.filament === id));
  const document = { format: PART_FORMAT, version: PART_VERSION, units: UNITS, part, filaments };
  return `${JSON.stringify(document, null, 2)}\n`;
}
