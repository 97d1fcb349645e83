/** What a style sheet says of a mark, as attributes of the mark itself. */
import { greyOf, plainColour } from './colours.ts';

/** What a mark looks like: a property by its name, as the browser computes it. */
export type Look = (property: string) => string;

/** Properties that marks inherit, with what holds where nothing says otherwise (SVG 2, appendix on properties, from memory). */
const INHERITED: Readonly<Record<string, string>> = {
  fill: '#000000',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-miterlimit': '4',
  'stroke-opacity': '1',
  'paint-order': 'normal',
  'clip-rule': 'nonzero',
};

const LETTERED: Readonly<Record<string, string>> = {
  'font-family': '',
  'font-size': '',
  'font-weight': '400',
  'font-style': 'normal',
  'letter-spacing': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
};

/** Of a mark for itself. */
const OWN: Readonly<Record<string, string>> = {
  opacity: '1',
  'clip-path': 'none',
  mask: 'none',
  'vector-effect': 'none',
};

const STOPS: Readonly<Record<string, string>> = { 'stop-color': '#000000', 'stop-opacity': '1' };

const PAINTS = ['fill', 'stroke', 'stop-color'];
const OPACITIES: Readonly<Record<string, string>> = {
  fill: 'fill-opacity',
  stroke: 'stroke-opacity',
  'stop-color': 'stop-opacity',
};

/** A reference to something in the same page, whatever address the browser puts before it. */
const REFERENCE = /^url\(\s*["']?[^"')]*#([^"')]+)["']?\s*\)/;

/** The name that something in the page is referred to by. */
export function referenceOf(value: string): string | undefined {
  return REFERENCE.exec(value)?.[1];
}

const plainLength = (value: string) => value.replaceAll(/([\d.])px\b/g, '$1');

/** Without the faces that only stand in until others have come: they are defined by the page alone. */
function plainFamily(value: string): string {
  const families = value.split(',').map((one) => one.trim().replaceAll('"', "'"));
  return families.filter((one) => !/fallback'?$/.test(one)).join(', ');
}

function plain(property: string, value: string): string {
  if (property === 'font-family') return plainFamily(value);
  const reference = referenceOf(value);
  return reference === undefined ? plainLength(value) : `url(#${reference})`;
}

type Said = Record<string, string>;

/** Colour and opacity of a paint; what cannot be seen is none. */
function paint(property: string, look: Look, isGrey: boolean): Said {
  const beside = OPACITIES[property] ?? '';
  const value = look(property);
  const colour = plainColour(value);
  if (!colour) return { [property]: plain(property, value) };
  const opacity = colour.opacity * Number(look(beside) || 1);
  if (opacity === 0 && property !== 'stop-color') return { [property]: 'none' };
  return {
    [property]: isGrey ? greyOf(colour.colour) : colour.colour,
    [beside]: String(Number(opacity.toFixed(3))),
  };
}

/** All that a mark looks like, whether it says so itself or inherits it. */
export function wholeLook(look: Look, isGrey: boolean): Readonly<Said> {
  const said: Said = {};
  for (const property of Object.keys({ ...INHERITED, ...LETTERED, ...OWN, ...STOPS })) {
    if (!PAINTS.includes(property) && said[property] === undefined) said[property] = plain(property, look(property));
  }
  for (const property of PAINTS) Object.assign(said, paint(property, look, isGrey));
  return said;
}

/** What holds at the root of a file. */
export const ROOT_LOOK: Readonly<Said> = { ...INHERITED, ...LETTERED };

/** Attributes that a mark needs so that it looks as it does: those in which it differs from what it is in. */
export function inksOf(tag: string, look: Readonly<Said>, around: Readonly<Said>): Said {
  const said: Said = {};
  for (const property of Object.keys({ ...INHERITED, ...LETTERED })) {
    const value = look[property] ?? '';
    if (value !== '' && value !== around[property]) said[property] = value;
  }
  const own = tag === 'stop' ? { ...OWN, ...STOPS } : OWN;
  for (const [property, usual] of Object.entries(own)) {
    const value = look[property] ?? '';
    if (value !== '' && value !== usual) said[property] = value;
  }
  return said;
}

/** Whether a mark shows nothing: places where a hand may take hold are such. */
export function isUnseen(look: Readonly<Said>): boolean {
  return look['fill'] === 'none' && look['stroke'] === 'none';
}
