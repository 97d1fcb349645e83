/** The joint that stands for a thin section that was found in a part. */
import { filletLength } from '../closedForms/notchHinge.ts';
import type { Joint } from '../design/joint.ts';
import { crease } from '../flexures/crease.ts';
import type { Parameter } from '../flexures/family.ts';
import { neck } from '../flexures/neck.ts';
import { straightLeaf } from '../flexures/straightLeaf.ts';
import { nearestWhole } from '../print/nearestCount.ts';
import { plain, type Problem } from '../problems.ts';
import type { Mm } from '../units.ts';
import type { AsLaid } from './asLaid.ts';
import type { Flexure, FlexureKind } from './flexure.ts';
import type { AskedOfAll, PrintedAs } from './judged.ts';
import { exactCount } from './landing.ts';
import { leastOfRoots } from './roots.ts';

/** A joint, and what of the section it does not tell as it is. */
export interface StandsFor {
  readonly joint: Joint;
  readonly notes: readonly Problem[];
}

/** Sizes of a section at the scale of the print, to a micron: finer than anything measures, and alike ones come out alike. */
interface Measured {
  readonly count: number;
  readonly thickness: Mm;
  readonly bendingLength: Mm;
  readonly depth: Mm;
  readonly fillet: Mm;
  readonly pad: Mm;
}

interface Sized {
  readonly family: string;
  readonly sizes: Joint['sizes'];
  readonly notes: readonly Problem[];
}

/** Longer names fill a strip and a drawing title. */
const MOST_OF_NAME = 60;
const ALONE = { inRow: 1, sideBySide: 1 } as const;

/**
 * The joint that stands for a thin section: turned by a pure moment, as thick as measured, and bending as its real length with
 * its real fillets does.
 *
 * Leaves and creases of their families count the length between the fillets only and take pads as rigid. Their length is here the
 * *bending length* of the section, which counts each slice by (t_least/t)³ and so has the fillets in it already; the drawing
 * of such a joint is longer than the section by what fillets do not bend. A neck of its family has its fillets in its
 * stiffness: of the bending length its straight part is what the fillets leave.
 *
 * A curved section is a straight leaf of equal bending length. A pure moment changes the curvature of both alike, so that they
 * strain alike (but for the inside of a bend tighter than some five thicknesses); pushed they would not, and the note says so.
 *
 * Sizes past what a family knows are taken at its limit where that strains no less, with a note; else they stay, and the
 * assessment refuses them.
 *
 * @param flexure - as found [mm]
 * @param laid - how it lies and what is laid across it [mm]
 * @param as - scale [-]
 * @param asked - what is asked of every section [rad], cycles [-]
 * @param fileName - of the part [-]
 * @returns the joint with lengths as printed [mm], and notes
 *
 * Source: notch-hinge, plane-bending.
 */
export function jointOf(flexure: Flexure, laid: AsLaid, as: PrintedAs, asked: AskedOfAll, fileName: string): StandsFor {
  const measured = measuredOf(flexure, laid, as);
  const sized = sizedAs(flexure, laid, measured);
  const { turn, ...how } = asked;
  const joint: Joint = {
    id: `section-${flexure.number}`,
    name: `${Array.from(fileName).slice(0, MOST_OF_NAME).join('')} no. ${flexure.number}`,
    family: sized.family,
    sizes: sized.sizes,
    movement: { drive: 'turned', amount: turn, ...how },
    profile: laid.profile,
    measuredThickness: measured.thickness,
  };
  return { joint, notes: [...sized.notes, ...noteShape(flexure), ...noteFirstLayer(laid, as)] };
}

const MICRON: Mm = 0.001;
const micron = (value: Mm) => Number(value.toFixed(3));

function measuredOf(flexure: Flexure, laid: AsLaid, { scale }: PrintedAs): Measured {
  const { thickness, bendingLength, depth } = flexure;
  const thick = micron(scale * thickness.least);
  return {
    count: nearestWhole(exactCount(thick, laid)).count,
    thickness: thick,
    bendingLength: micron(scale * bendingLength),
    depth: micron(scale * depth),
    fillet: micron(scale * leastOfRoots(flexure, 'fillet')),
    pad: micron(scale * leastOfRoots(flexure, 'shoulder')),
  };
}

function sizedAs({ kind, isCurved }: Flexure, { lying }: AsLaid, measured: Measured): Sized {
  if (lying === 'crease') return sizedCrease(measured);
  const asNeck = kind === 'neck' && !isCurved ? sizedNeck(measured) : undefined;
  return asNeck ?? sizedLeaf(measured);
}

function sizedLeaf(measured: Measured): Sized {
  const { parameters } = straightLeaf;
  const pad = padFor(measured, parameters.pad, parameters.fillet, 2);
  const count = taken('lines', measured.count, parameters.lines);
  const length = notLonger('length', measured.bendingLength, parameters.length);
  const depth = taken('depth', measured.depth, parameters.depth);
  const sizes = { lines: count.value, length: length.value, depth: depth.value, ...pad.sizes, ...ALONE };
  const notes = [count, length, depth].flatMap((one) => one.notes);
  return { family: straightLeaf.id, sizes: { ...sizes, taper: 1, centre: 0.5 }, notes: [...notes, ...pad.notes] };
}

function sizedCrease(measured: Measured): Sized {
  const { parameters } = crease;
  const pad = padFor(measured, parameters.pad, parameters.fillet, 1);
  const count = taken('layers', measured.count, parameters.layers);
  const length = notLonger('length', measured.bendingLength, parameters.length);
  const depth = taken('depth', measured.depth, parameters.depth);
  const notes = [count, length, depth].flatMap((one) => one.notes);
  const sizes = { layers: count.value, length: length.value, depth: depth.value, ...pad.sizes, ...ALONE };
  return { family: crease.id, sizes, notes: [...notes, ...pad.notes] };
}

/** Round-off of sizes that are kept to a micron. */
const HARDLY = 1e-3;

/** With its fillets as the ends of the notch; undefined where they are no such ends, and a short leaf tells more. */
function sizedNeck({ thickness, bendingLength, fillet, pad, ...measured }: Measured): Sized | undefined {
  const { parameters } = neck;
  const straight = bendingLength - 2 * filletLength(thickness, fillet);
  const hasRoom = pad >= thickness + 2 * fillet - HARDLY;
  if (fillet < parameters.along.min || fillet > parameters.along.max || !hasRoom) return undefined;
  if (straight < -HARDLY * bendingLength || straight > parameters.straight.max) return undefined;
  const count = taken('lines', measured.count, parameters.lines);
  const depth = taken('depth', measured.depth, parameters.depth);
  const notch = { along: fillet, deep: fillet, straight: micron(Math.max(0, straight)) };
  const sizes = { lines: count.value, ...notch, depth: depth.value, ...ALONE };
  return { family: neck.id, sizes, notes: [...count.notes, ...depth.notes] };
}

interface Taken {
  readonly value: number;
  readonly notes: readonly Problem[];
}

const NAMES: Readonly<Record<string, string>> = {
  lines: 'A count of',
  layers: 'A count of',
  length: 'A bending length of',
  depth: 'A depth of',
  fillet: 'A root fillet of',
  pad: 'A pad of',
};

function standsIn(name: string, value: number, limit: number, why: string): Problem {
  const unit = name === 'lines' || name === 'layers' ? ` ${name}` : ' mm';
  const message = `${NAMES[name]} ${plain(value)}${unit} is taken as ${plain(limit)}${unit}: ${why}`;
  return { code: 'stands-in', message, field: `sizes.${name}`, value, limit };
}

/** A size within what a family knows. */
function taken(name: string, value: number, { min, max, because }: Parameter): Taken {
  const limit = Math.min(max, Math.max(min, value));
  return { value: limit, notes: limit === value ? [] : [standsIn(name, value, limit, because)] };
}

/** A length is never taken as longer than it is, because it would strain less. */
function notLonger(name: string, value: Mm, parameter: Parameter): Taken {
  return value < parameter.min ? { value, notes: [] } : taken(name, value, parameter);
}

/** Pad and fillet with room for one another; a fillet is never taken as larger than it is. */
function padFor(
  { thickness, fillet, pad }: Measured,
  padKnown: Parameter,
  filletKnown: Parameter,
  sides: 1 | 2,
): { readonly sizes: { readonly pad: Mm; readonly fillet: Mm }; readonly notes: readonly Problem[] } {
  const known = taken('pad', pad, padKnown);
  // Twice as thick is eight times as stiff, which is a pad.
  const isThin = known.value <= thickness + HARDLY;
  const stiff = isThin ? micron(2 * thickness) : known.value;
  const round = taken('fillet', fillet, filletKnown);
  const room = Math.floor((stiff - thickness) / sides / MICRON + HARDLY) * MICRON;
  const fits = Math.min(round.value, micron(room));
  return {
    sizes: { pad: stiff, fillet: fits },
    notes: [
      ...known.notes,
      ...(isThin ? [standsIn('pad', known.value, stiff, 'what it joins is no thicker than itself and bends too')] : []),
      ...round.notes,
      ...(fits < round.value ? [standsIn('fillet', round.value, fits, 'what it joins has no room for more')] : []),
    ],
  };
}

const SHAPES: Readonly<Record<FlexureKind, string>> = {
  leaf: 'curved leaf',
  neck: 'curved neck',
  crease: 'curved crease',
  arch: 'arch',
  'spiral run': 'spiral run',
};

const shapeNote = (message: string): Problem => ({ code: 'stands-in', message, field: 'family' });

/** What a straight joint that is turned by itself does not know of the section. */
function noteShape({ isCurved, kind, isInLoop, bendingLength }: Flexure): readonly Problem[] {
  const curved = `A straight leaf of equal bending length (${plain(bendingLength)} mm in the file) stands for the ${SHAPES[kind]}: turned, both strain alike; pushed, they do not`;
  const loop =
    'It is one of several ways from pad to pad, which lead one another; it is told as if it were turned alone, and may strain more';
  return [...(isCurved ? [shapeNote(curved)] : []), ...(isInLoop ? [shapeNote(loop)] : [])];
}

function noteFirstLayer({ profile }: AsLaid, as: PrintedAs): readonly Problem[] {
  const [value, limit] = [as.profile.firstLayerHeight, profile.firstLayerHeight];
  if (value === limit) return [];
  const message = `It does not lie on the plate, so that the first layer of ${plain(value)} mm is not in it; all its layers are taken as ${plain(limit)} mm`;
  return [{ code: 'stands-in', message, field: 'profile.firstLayerHeight', value, limit }];
}
