/** Names and values of fields as problems mention them; a field is a path such as `sizes.length` or `joints[2].name`. */
import { asRad } from '../../core/units.ts';
import { angle, grouped, length, type LengthUnit } from './numbers.ts';

const NAMES: Readonly<Record<string, string>> = {
  lines: 'Lines across',
  layers: 'Layers through',
  length: 'Flexing length',
  depth: 'Depth',
  fillet: 'Root fillet',
  pad: 'Pad thickness',
  inRow: 'The number in a row',
  sideBySide: 'The number side by side',
  taper: 'Taper',
  centre: 'Place of the pin',
  along: 'Half length of the notch',
  deep: 'Depth of the notch',
  straight: 'Straight part of the neck',
  between: 'Angle between the leaves',
  crossing: 'Where the leaves cross',
  fused: 'Whether the leaves are fused',
  gap: 'Gap between the planes',
  leaves: 'The number of leaves',
  spacing: 'Spacing',
  runs: 'The number of runs',
  nozzle: 'Nozzle',
  lineWidth: 'Line width',
  layerHeight: 'Layer height',
  firstLayerHeight: 'First layer',
  lying: 'How it lies',
  fitRule: 'How lines are counted',
  filament: 'Filament',
  family: 'Kind of flexure',
  angle: 'Angle',
  angleRad: 'Angle',
  ways: 'One way or both ways',
  cycles: 'Number of flexes',
  held: 'Whether it is held bent',
  chance: 'Share that should get there',
  measuredThickness: 'Measured thickness',
  thickness: 'Thickness',
  name: 'Name',
  id: 'Joint key',
};

const LENGTHS = new Set([
  'length',
  'depth',
  'fillet',
  'pad',
  'along',
  'deep',
  'straight',
  'gap',
  'spacing',
  'nozzle',
  'lineWidth',
  'layerHeight',
  'firstLayerHeight',
  'measuredThickness',
  'thickness',
]);

function lastKey(field: string | undefined): string {
  return (
    field
      ?.split('.')
      .at(-1)
      ?.replace(/\[\d+\]$/, '') ?? ''
  );
}

/** “Flexing length”; a field that is not known by name is quoted as it is. */
export function fieldName(field: string | undefined): string {
  const key = lastKey(field);
  if (Object.hasOwn(NAMES, key)) return NAMES[key] ?? key;
  return field === undefined ? 'The value' : `“${field}”`;
}

/** A value of a field in the chosen unit: “12.00 mm”, “35°”, “5 000”. */
export function fieldValue(field: string | undefined, value: number | string | undefined, unit: LengthUnit): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `“${value}”`;
  if (!Number.isFinite(value)) return 'no number';
  const key = lastKey(field);
  if (LENGTHS.has(key)) return length(value, unit, unit === 'mm' && value < 0.1 ? 3 : undefined);
  if (key === 'angle' || key === 'angleRad' || key === 'between') return angle(asRad(value));
  if (key === 'chance') return `${Number((value * 100).toFixed(1))} in 100`;
  return Number.isInteger(value) ? grouped(value) : String(Number(value.toFixed(3)));
}
