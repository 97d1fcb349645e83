/** Colours as a browser computes them, as any program that reads SVG takes them: six digits and an opacity beside them. */

export interface PlainColour {
  /** “#16222b”. */
  readonly colour: string;
  readonly opacity: number;
}

const LEGACY = /^rgba?\(\s*([\d.]+)[,\s]+([\d.]+)[,\s]+([\d.]+)(?:[,/\s]+([\d.]+%?))?\s*\)$/;
const MIXED = /^color\(srgb(-linear)?\s+([-\d.e]+)\s+([-\d.e]+)\s+([-\d.e]+)(?:\s*\/\s*([\d.]+%?))?\s*\)$/;

const hexOf = (parts: readonly number[]) =>
  `#${parts
    .map((part) =>
      Math.round(Math.min(255, Math.max(0, part)))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

const opacityOf = (text: string | undefined) =>
  text === undefined ? 1 : text.endsWith('%') ? Number.parseFloat(text) / 100 : Number(text);

/** The transfer curve of sRGB (IEC 61966-2-1, from memory), which `color-mix` in linear light leaves undone. */
const coded = (light: number) => (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
const lit = (code: number) => (code <= 0.04045 ? code / 12.92 : ((code + 0.055) / 1.055) ** 2.4);

/** A colour in plain; nothing where it is no colour, as `none` and the address of a pattern are not. */
export function plainColour(text: string): PlainColour | undefined {
  if (text === 'transparent') return { colour: '#000000', opacity: 0 };
  if (/^#[0-9a-f]{6}$/i.test(text)) return { colour: text.toLowerCase(), opacity: 1 };
  if (/^#[0-9a-f]{3}$/i.test(text)) {
    return { colour: text.toLowerCase().replaceAll(/[0-9a-f]/g, (digit) => digit + digit), opacity: 1 };
  }
  const legacy = LEGACY.exec(text);
  if (legacy) {
    const [, red, green, blue, opacity] = legacy;
    return { colour: hexOf([red, green, blue].map(Number)), opacity: opacityOf(opacity) };
  }
  const mixed = MIXED.exec(text);
  if (!mixed) return undefined;
  const [, linear, red, green, blue, opacity] = mixed;
  const parts = [red, green, blue].map((part) => 255 * (linear ? coded(Number(part)) : Number(part)));
  return { colour: hexOf(parts), opacity: opacityOf(opacity) };
}

/** The grey as light as a colour (WCAG 2 luminance), as a copier makes it. */
export function greyOf(colour: string): string {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    lit(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  const grey = 255 * coded(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  return hexOf([grey, grey, grey]);
}
