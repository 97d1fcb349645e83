/** What to set and check when printing this joint. */
import type { Assessment } from '../../core/design/assessment.ts';
import { nearestLayers } from '../../core/print/wholeLayers.ts';
import { kindText, lyingText } from './kindText.ts';
import { amountWithin } from './amountText.ts';
import { counted, inWords, setLength, unitAfter, type LengthUnit } from './numbers.ts';

type Note = (a: Assessment, unit: LengthUnit) => string | undefined;
type Several = (a: Assessment, unit: LengthUnit) => readonly string[];

const figure = (value: number, unit: LengthUnit, least?: number) =>
  `${setLength(value, unit, least)}${unitAfter(unit)}`;
const capital = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** “one contour”, “two contours and a line along the middle”, “one line along the middle and no contour”. */
function contoursText({ fit }: Assessment): string {
  if (fit.contours === 0) return 'one line along the middle and no contour';
  const contours = `${inWords(fit.contours)} contour${fit.contours === 1 ? '' : 's'}`;
  return fit.middleLine ? `${contours} and one line along the middle` : contours;
}

const lines: Note = (a, unit) => {
  const { fit, section, joint } = a;
  if (section.countOf !== 'lines' || fit.outcome !== 'whole') return undefined;
  const set = `Line width ${figure(joint.profile.lineWidth, unit)} from a ${figure(joint.profile.nozzle, unit, 1)} nozzle, ${contoursText(a)}`;
  const equal = fit.nearest === 1 ? 'one full line runs' : `exactly ${fit.nearest} equal lines run`;
  return `${set}; check before printing that ${equal} along ${kindText(joint.family).thin}.`;
};

const layers: Note = ({ fit, section, joint }, unit) => {
  if (section.countOf !== 'layers' || fit.outcome !== 'whole') return undefined;
  const { firstLayerHeight, layerHeight } = joint.profile;
  const heights =
    fit.nearest === 1
      ? `one layer, the first, ${figure(firstLayerHeight, unit)}`
      : `${counted(fit.nearest, 'layer')}, the first ${figure(firstLayerHeight, unit)} and the rest ${figure(layerHeight, unit)}`;
  return `${kindText(joint.family).thin} is ${heights}; check before printing that it gets no layer more.`;
};

const squish: Note = ({ section, fit, joint }) => {
  if (section.countOf !== 'layers') return undefined;
  const { thin } = kindText(joint.family);
  const much = fit.nearest === 1 ? 'all' : `one of ${inWords(fit.nearest)}`;
  return `Set the height of the first layer with care: it is ${much} of ${thin}, and pressed too flat ${thin} comes out thinner and weaker than drawn.`;
};

const notWhole: Note = (a) =>
  a.fit.outcome === 'whole'
    ? undefined
    : `As it is, the thin section is ${a.fit.exact.toFixed(2)} ${a.fit.countOf}. Scale the part, set another ${a.section.countOf === 'lines' ? 'line width' : 'layer height'}, or redraw it: see the ways out.`;

const starts: Note = ({ joint }) => kindText(joint.family).starts;

const lying: Note = ({ joint, section }, unit) => {
  // What is thin in the build direction lies flush on the plate, and its kind says how.
  if (joint.profile.lying === 'crease') return undefined;
  const { piece, thin, deep, sizes } = kindText(joint.family);
  if (joint.profile.lying === 'upright') {
    return `It stands: layers stack along the ${piece}, and bending pulls them apart. Turn the part if it can be turned.`;
  }
  const { count } = nearestLayers(section.width, joint.profile);
  const stack = `${counted(count, 'layer')} of ${figure(joint.profile.layerHeight, unit)}`;
  const over = deep === 'deep' ? 'its depth' : `the ${(sizes['depth'] ?? 'width').toLowerCase()}`;
  return `Print it ${lyingText(joint.family, joint.profile.lying)}, so that lines run along ${thin} and ${stack} stack over ${over}.`;
};

const even: Note = ({ section, joint }) =>
  section.countOf === 'lines'
    ? `Let nothing widen or narrow lines to fill gaps in ${kindText(joint.family).thin}.`
    : undefined;

const LIKES: Readonly<Record<string, string>> = {
  pla: 'PLA whitens and breaks within few flexes when bent hard, and softens in a warm car.',
  petg: 'Keep moves across open air short: PETG strings, and strings stiffen a joint.',
  abs: 'Print it in an enclosure and let the fumes out: ABS warps and gives off fumes.',
  asa: 'Print it in an enclosure and let the fumes out: ASA warps and gives off fumes.',
  pa6: 'Dry the spool for hours and print from a dry box: damp nylon comes out weak. It softens as it takes up water.',
  pa12: 'Dry the spool for hours before printing: damp nylon comes out weak.',
  pp: 'PP sticks to little but PP: cover the plate, and expect warping.',
  tpu95a: 'Dry the spool and print slowly; TPU sags under a load that stays on.',
  pc: 'Dry the spool, and print hot in an enclosure.',
};

const filament: Note = ({ filament: { id } }) => LIKES[id];
const cool: Note = () => 'Let it cool on the plate before the first bend, or it takes a set.';

const stop: Note = ({ overBend: { hardStop }, filament: { name }, joint, drive }, unit) => {
  if (hardStop > drive.max) return undefined;
  const stops = `Add a hard stop at ${amountWithin(hardStop, drive.measure, unit)}: it saves more joints than any filament.`;
  return hardStop > joint.movement.amount ? stops : `${stops} ${name} has no room past what is wanted here.`;
};

const eyes: Note = ({ joint }) =>
  kindText(joint.family).eyes ?? 'Eye protection when you first flex it; printed parts vary, so test yours.';

/** Notes of the kind itself. */
const own: Several = (a, unit) => kindText(a.joint.family).notes(a, unit);

const NOTES: readonly (Note | Several)[] = [
  notWhole,
  lines,
  layers,
  squish,
  starts,
  lying,
  even,
  own,
  filament,
  cool,
  stop,
  eyes,
];

/** How far to trust them. */
export const PRINT_NOTES_AID = 'common practice, no source';

/** The notes that this joint calls for, in the order in which they matter. */
export function printNotes(a: Assessment, unit: LengthUnit): readonly string[] {
  return NOTES.flatMap((note) => note(a, unit) ?? []).map(capital);
}
