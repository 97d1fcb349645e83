/** Names and values of fields as problems mention them; a field is a path such as `sizes.length` or `joints[2].name`. */
import type { Problem } from '../../core/problems.ts';
import { asRad } from '../../core/units.ts';
import { angle, grouped, length, NO_BREAK, type LengthUnit } from './numbers.ts';

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
  arms: 'The number of arms',
  hub: 'Hub diameter',
  ring: 'Ring diameter',
  turns: 'Turns of each arm',
  arches: 'The number of arches',
  span: 'Span',
  rise: 'Rise',
  apart: 'Distance between the arches',
  block: 'Width of the block',
  hinge: 'Length of the necks',
  link: 'Length of the links',
  incline: 'Incline of the links',
  spring: 'Length of the spring leaf',
  springLines: 'Lines across the spring leaf',
  cells: 'The number of cells',
  cell: 'Length of a cell',
  leaf: 'Length of a leaf',
  rows: 'Rows of slits',
  pitch: 'Distance between rows',
  slit: 'Length of a slit',
  slitWidth: 'Width of a slit',
  bridge: 'Bridge between slits',
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
  drive: 'How it is moved',
  effortAtMost: 'Effort at most',
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
  'hub',
  'ring',
  'span',
  'rise',
  'apart',
  'block',
  'hinge',
  'link',
  'spring',
  'cell',
  'leaf',
  'pitch',
  'slit',
  'slitWidth',
  'bridge',
  'nozzle',
  'lineWidth',
  'layerHeight',
  'firstLayerHeight',
  'measuredThickness',
  'thickness',
]);

const ANGLES = new Set(['angle', 'angleRad', 'between', 'incline']);
/** Shares of something, said in per cent. */
const SHARES = new Set(['taper', 'centre', 'crossing']);

function lastKey(field: string | undefined): string {
  return (
    field
      ?.split('.')
      .at(-1)
      ?.replace(/\[\d+\]$/, '') ?? ''
  );
}

/** What a drive moves it by; its problems say in which unit. */
const AMOUNT = 'amount';

/** “Flexing length”; a field that is not known by name is quoted as it is. */
export function fieldName({ field, unit }: Pick<Problem, 'field' | 'unit'>): string {
  const key = lastKey(field);
  if (key === AMOUNT) return unit === 'rad' ? 'Angle' : 'Travel';
  if (Object.hasOwn(NAMES, key)) return NAMES[key] ?? key;
  return field === undefined ? 'The value' : `“${field}”`;
}

/** A value of a field in the chosen unit: “12.00 mm”, “35°”, “5 000”. */
export function fieldValue(
  { field, unit: measure }: Pick<Problem, 'field' | 'unit'>,
  value: number | string | undefined,
  unit: LengthUnit,
): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'string') return `“${value}”`;
  if (!Number.isFinite(value)) return 'no number';
  const key = lastKey(field);
  if (measure === 'rad') return angle(asRad(value));
  if (LENGTHS.has(key) || key === AMOUNT) return length(value, unit, unit === 'mm' && value < 0.1 ? 3 : undefined);
  if (ANGLES.has(key)) return angle(asRad(value));
  if (SHARES.has(key)) return `${Number((value * 100).toFixed(1))}${NO_BREAK}%`;
  if (key === 'chance') return `${Number((value * 100).toFixed(1))} in 100`;
  return Number.isInteger(value) ? grouped(value) : String(Number(value.toFixed(3)));
}
