/** Names and values of fields as problems mention them; a field is a path such as `sizes.length` or `joints[2].name`. */
import type { Problem } from '../../core/problems.ts';
import { asRad } from '../../core/units.ts';
import { angle, grouped, length, MINUS, NO_BREAK, type LengthUnit } from './numbers.ts';

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
  least: 'Way back',
  also: 'The number of movements beside it',
  cycles: 'Number of flexes',
  held: 'Whether it is held bent',
  heldHours: 'Time held bent',
  temperatureC: 'Temperature',
  moisture: 'Damp or dry air',
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
const TRAVELS = new Set([AMOUNT, 'least', 'ways']);
/** Units that only one field has. */
const UNITS = [
  ['temperatureC', '°C'],
  ['heldHours', 'h'],
] as const;

/** A smaller movement, counted from the joint’s own. */
const SWING = /\balso\[(\d+)\]\./;

/** “Flexing length”, “Angle of movement 2”; a field that is not known by name is quoted as it is. */
export function fieldName(problem: Pick<Problem, 'field' | 'unit' | 'value'>): string {
  const { field } = problem;
  const [, swing] = SWING.exec(field ?? '') ?? [];
  const name = nameOf(problem, lastKey(field));
  if (name === undefined) return field === undefined ? 'The value' : `“${field}”`;
  return swing === undefined ? name : `${name} of movement ${Number(swing) + 2}`;
}

function nameOf({ unit, value }: Pick<Problem, 'unit' | 'value'>, key: string): string | undefined {
  if (key === AMOUNT) return unit === 'rad' ? 'Angle' : 'Travel';
  // Where both ways reach too far, it is the other end that does.
  if (key === 'ways' && typeof value === 'number') return NAMES['least'];
  return Object.hasOwn(NAMES, key) ? NAMES[key] : undefined;
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
  if (measure === 'rad') return angle(asRad(value)).replace('-', MINUS);
  const [, after] = UNITS.find(([name]) => name === key) ?? [];
  if (after !== undefined) return `${String(Number(value.toFixed(2))).replace('-', MINUS)}${NO_BREAK}${after}`;
  if (LENGTHS.has(key) || TRAVELS.has(key)) {
    return length(value, unit, unit === 'mm' && Math.abs(value) < 0.1 ? 3 : undefined).replace('-', MINUS);
  }
  if (ANGLES.has(key)) return angle(asRad(value));
  if (SHARES.has(key)) return `${Number((value * 100).toFixed(1))}${NO_BREAK}%`;
  if (key === 'chance') return `${Number((value * 100).toFixed(1))} in 100`;
  return Number.isInteger(value) ? grouped(value) : String(Number(value.toFixed(3)));
}
