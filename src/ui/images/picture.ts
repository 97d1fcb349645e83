/** A picture as a tree of marks that stands alone, and the text of it. No page is needed for either. */

export interface PictureNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (PictureNode | string)[];
}

export interface Picture {
  /** Of the whole [px]. */
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly desc: string;
  /** Colour of the paper. */
  readonly ground: string;
  /** Rules that bring the faces along. */
  readonly faces: string;
  readonly children: readonly PictureNode[];
}

const CODES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** What no XML may hold. */
// oxlint-disable-next-line no-control-regex -- these are the characters that are meant
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

const escaped = (text: string) => text.replaceAll(FORBIDDEN, '').replaceAll(/[&<>"]/g, (one) => CODES[one] ?? one);

function markupOf({ tag, attributes, children }: PictureNode): string {
  const said = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  if (children.length === 0) return `<${tag}${said}/>`;
  const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : markupOf(child))).join('');
  return `<${tag}${said}>${inside}</${tag}>`;
}

const named = (tag: string, text: string): readonly PictureNode[] =>
  text === '' ? [] : [{ tag, attributes: {}, children: [text] }];

/** What stands on a strip under a picture, so high [px], which is no part of it. */
export interface Strip {
  readonly high: number;
  readonly marks: readonly PictureNode[];
}

/** The file: a title, a description, the faces, the paper and what is on it. */
export function svgOf(picture: Picture, under: Strip = { high: 0, marks: [] }): string {
  const { width, height, title, desc, ground, faces, children } = picture;
  const high = height + under.high;
  return markupOf({
    tag: 'svg',
    attributes: {
      xmlns: 'http://www.w3.org/2000/svg',
      width: String(width),
      height: String(high),
      viewBox: `0 0 ${width} ${high}`,
      role: 'img',
      'aria-label': title,
    },
    children: [
      ...named('title', title),
      ...named('desc', desc),
      ...named('style', faces),
      { tag: 'rect', attributes: { width: String(width), height: String(height), fill: ground }, children: [] },
      ...children,
      ...under.marks,
    ],
  });
}
