/** A drawing of the page as marks that say themselves what they look like. */
import { inksOf, isUnseen, referenceOf, ROOT_LOOK, wholeLook, type Look } from './inks.ts';
import type { PictureNode } from './picture.ts';

/** What is there for a hand, or tells where a reading is: no part of the figure. */
const FOR_A_HAND =
  '.hg, .chart-cross, .chart-grip, .target, [role="slider"], foreignObject, script, style, title, desc';
/** What is never drawn where it stands. */
const KEPT = new Set(['defs', 'clipPath', 'mask', 'pattern', 'linearGradient', 'radialGradient', 'marker', 'symbol']);
const SHAPES = new Set(['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon']);

/** Attributes that say where and how large, and not how it looks. */
const PLACES = `
  d x y x1 y1 x2 y2 cx cy r rx ry fx fy dx dy width height points transform viewBox preserveAspectRatio offset rotate
  pathLength textLength lengthAdjust patternUnits patternContentUnits patternTransform gradientUnits gradientTransform
  spreadMethod clipPathUnits maskUnits maskContentUnits href`
  .trim()
  .split(/\s+/);

export interface Drawn {
  readonly isGrey: boolean;
  /** Names of faces that letters are set in; filled on the way. */
  readonly families: Set<string>;
}

const lookAt =
  (node: Element): Look =>
  (property) =>
    getComputedStyle(node).getPropertyValue(property);

function placesOf(node: Element): Record<string, string> {
  const said: Record<string, string> = {};
  for (const name of PLACES) {
    const value = node.getAttribute(name);
    // An address of anything but a mark of the same drawing would be looked for elsewhere.
    if (value !== null && (name !== 'href' || value.startsWith('#'))) said[name] = value;
  }
  // Some rounds have their size from the style sheet alone.
  if (node.tagName === 'circle' && said['r'] === undefined) said['r'] = lookAt(node)('r').replace('px', '');
  return said;
}

/** Hidden, by whatever way; what is never drawn where it stands has no say in that. */
function isHidden(look: Look): boolean {
  return look('display') === 'none' || look('visibility') !== 'visible' || look('opacity') === '0';
}

/** A node with all in it; nothing where there is nothing to see. */
export function markOf(
  node: Element,
  around: Readonly<Record<string, string>>,
  drawn: Drawn,
  isKept = false,
): PictureNode | undefined {
  const look = lookAt(node);
  // The paper itself may be what is read along.
  const isPaper = around === ROOT_LOOK;
  if ((!isPaper && node.matches(FOR_A_HAND)) || (!isKept && !KEPT.has(node.tagName) && isHidden(look)))
    return undefined;
  const whole = wholeLook(look, drawn.isGrey);
  const keeps = isKept || KEPT.has(node.tagName);
  if (!keeps && SHAPES.has(node.tagName) && isUnseen(whole)) return undefined;
  if (node.tagName === 'text') drawn.families.add(look('font-family').split(',')[0]?.replaceAll(/["']/g, '') ?? '');
  const children = [...node.childNodes].flatMap((child): readonly (PictureNode | string)[] => {
    if (child instanceof Text) return /^(?:text|tspan)$/.test(node.tagName) ? [child.data] : [];
    const mark = child instanceof Element ? markOf(child, whole, drawn, keeps) : undefined;
    return mark ? [mark] : [];
  });
  if (/^(?:g|a)$/.test(node.tagName) && children.length === 0) return undefined;
  const id = node.id === '' ? {} : { id: node.id };
  const overflow = node.tagName === 'svg' && look('overflow') === 'visible' ? { overflow: 'visible' } : {};
  const attributes = { ...id, ...placesOf(node), ...overflow, ...inksOf(node.tagName, whole, around) };
  return { tag: node.tagName === 'a' ? 'g' : node.tagName, attributes, children };
}

const referredTo = ({ attributes, children }: PictureNode): readonly string[] => [
  ...Object.entries(attributes).flatMap(([name, value]) => {
    const id = name === 'href' ? value.slice(1) : referenceOf(value);
    return id === undefined ? [] : [id];
  }),
  ...children.flatMap((child) => (typeof child === 'string' ? [] : referredTo(child))),
];

/** The same marks with the names that something refers to, and no others. */
export function withNames(marks: readonly PictureNode[]): readonly PictureNode[] {
  const kept = new Set(marks.flatMap(referredTo));
  const strip = ({ tag, attributes: { id, ...others }, children }: PictureNode): PictureNode => ({
    tag,
    attributes: id !== undefined && kept.has(id) ? { id, ...others } : others,
    children: children.map((child) => (typeof child === 'string' ? child : strip(child))),
  });
  return marks.map(strip);
}
