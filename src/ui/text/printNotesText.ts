/** What to set and check when printing this joint. */
import type { Assessment } from '../../core/design/assessment.ts';
import { nearestLayers } from '../../core/print/wholeLayers.ts';
import { kindText } from './kindText.ts';
import { amountWithin } from './amountText.ts';
import { counted, inWords, setLength, unitAfter, type LengthUnit } from './numbers.ts';

type Note = (a: Assessment, unit: LengthUnit) => string | undefined;

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
  return `${set}; check before printing that ${equal} along the ${kindText(joint.family).piece}.`;
};

const layers: Note = ({ fit, section, joint }, unit) => {
  if (section.countOf !== 'layers' || fit.outcome !== 'whole') return undefined;
  const { firstLayerHeight, layerHeight } = joint.profile;
  const heights =
    fit.nearest === 1
      ? `one layer, the first, ${figure(firstLayerHeight, unit)}`
      : `${counted(fit.nearest, 'layer')}, the first ${figure(firstLayerHeight, unit)} and the rest ${figure(layerHeight, unit)}`;
  return `The crease is ${heights}; check before printing that no layer more bridges it.`;
};

const squish: Note = ({ section, fit }) =>
  section.countOf === 'layers'
    ? `Set the height of the first layer with care: it is ${fit.nearest === 1 ? 'all' : `one of ${inWords(fit.nearest)}`} of the crease, and pressed too flat the crease comes out thinner and weaker than drawn.`
    : undefined;

const across: Note = ({ section }) =>
  section.countOf === 'layers'
    ? 'Lay the lines of the crease from plate to plate, across the fold, so that bending does not pull them apart.'
    : undefined;

const notWhole: Note = (a) =>
  a.fit.outcome === 'whole'
    ? undefined
    : `As it is, the thin section is ${a.fit.exact.toFixed(2)} ${a.fit.countOf}. Scale the part, set another ${a.section.countOf === 'lines' ? 'line width' : 'layer height'}, or redraw it: see the ways out.`;

const starts: Note = ({ section, joint }) =>
  section.countOf === 'lines'
    ? 'Start points on the far face of a pad, never along the heavy chain line.'
    : `Start points on the ${kindText(joint.family).padName.toLowerCase()}s, never in the crease or its fillets.`;

const lying: Note = ({ joint, section }, unit) => {
  if (joint.profile.lying === 'crease') return 'Lay it with the crease on the plate, where it needs no support.';
  if (joint.profile.lying === 'upright') {
    return 'It stands: layers stack along the leaf, and bending pulls them apart. Turn the part if it can be turned.';
  }
  const { count } = nearestLayers(section.width, joint.profile);
  const stack = `${counted(count, 'layer')} of ${figure(joint.profile.layerHeight, unit)}`;
  return `Lay it flat, so that lines run along the leaf and ${stack} stack over its depth.`;
};

const even: Note = ({ section }) =>
  section.countOf === 'lines' ? 'Let nothing widen or narrow lines to fill gaps in the leaf.' : undefined;

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
  const stops = `Add a hard stop at ${amountWithin(hardStop, drive.measure, unit)}: it saves more hinges than any filament.`;
  return hardStop > joint.movement.amount ? stops : `${stops} ${name} has no room past what is wanted here.`;
};

const eyes: Note = () => 'Eye protection when you first flex it; printed parts vary, so test yours.';

const NOTES: readonly Note[] = [
  notWhole,
  lines,
  layers,
  squish,
  across,
  starts,
  lying,
  even,
  filament,
  cool,
  stop,
  eyes,
];

/** The notes that this joint calls for, in the order in which they matter. */
export function printNotes(a: Assessment, unit: LengthUnit): readonly string[] {
  return NOTES.flatMap((note) => note(a, unit) ?? []).map(capital);
}
