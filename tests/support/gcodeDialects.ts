/** One print in many ways of writing it: what it does stays the same. */

/** Where to, in tenths of a micron; filament pushed on, in hundredths of a micron. Tools by number. */
export interface Step {
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
  readonly e?: number;
  readonly isRapid?: boolean;
  readonly tool?: number;
}

export interface Dialect {
  readonly inch?: boolean;
  /** Axes by how far they go (G91): filament is, too. */
  readonly relative?: boolean;
  readonly relativeFeed?: boolean;
  /** Filament in mm³, of this diameter [mm]. */
  readonly volumetric?: number;
  /** Without G words where they are as before. */
  readonly modal?: boolean;
  readonly tight?: boolean;
  readonly lower?: boolean;
  readonly numbered?: boolean;
  readonly commented?: boolean;
  /** Plus signs, leading zeros, no zero before the point, G01 for G1. */
  readonly ornate?: boolean;
  /** Places called anew every so many moves. */
  readonly resets?: number;
  /** Each move in so many. */
  readonly split?: number;
  readonly lineEnd?: string;
}

const PER_MM = 1e4;
const FEED_PER_MM = 1e5;
const AXES = ['x', 'y', 'z'] as const;
type Axis = (typeof AXES)[number];

/** Digits enough that rounding does not show; none that are not needed. */
function shown(value: number, { ornate = false }: Dialect): string {
  const plain = value.toFixed(12).replace(/\.?0+$/, '');
  if (!ornate) return plain;
  const bare = plain.replace('-', '').replace(/^0\./, '.');
  return `${value < 0 ? '-' : '+'}${bare.startsWith('.') ? bare : `00${bare}`}`;
}

class Writer {
  readonly lines: string[] = [];
  readonly #dialect: Dialect;
  readonly #at = { x: 0, y: 0, z: 0 };
  /** What is called 0 now. */
  readonly #off = { x: 0, y: 0, z: 0 };
  #pushed = 0;
  #motion = '';
  #moves = 0;

  constructor(dialect: Dialect) {
    this.#dialect = dialect;
    this.put(dialect.inch ? 'G20' : 'G21');
    this.put(dialect.relative ? 'G91' : 'G90');
    if (!dialect.relative) this.put(dialect.relativeFeed ? 'M83' : 'M82');
    if (dialect.volumetric) this.put(`M200 D${dialect.volumetric}`);
  }

  put(line: string): void {
    const { commented, tight, lower, numbered } = this.#dialect;
    let text = commented ? line.replaceAll(' ', ' (x1 g2) ') : line;
    if (tight) text = text.replaceAll(' ', '');
    if (lower) text = text.toLowerCase();
    if (numbered) text = withChecksum(`N${this.lines.length + 1} ${text}`);
    this.lines.push(commented ? `\t${text} ; G1 X99 E9` : text);
    if (commented) this.lines.push('', '; G1 X1', '%', '/G1 X5', '(G0 Z9)', ' ');
  }

  step(step: Step): void {
    if (step.tool !== undefined) this.put(`T${step.tool}`);
    const parts = this.#dialect.split ?? 1;
    const from = { ...this.#at };
    for (let i = 1; i <= parts; i += 1) {
      const part = (axis: Axis) => from[axis] + ((step[axis]! - from[axis]) * i) / parts;
      const to = AXES.filter((axis) => step[axis] !== undefined).map((axis) => [axis, part(axis)] as const);
      this.#move(Object.fromEntries(to), step.e === undefined ? undefined : step.e / parts, step.isRapid ?? false);
    }
  }

  #move(to: Partial<Record<Axis, number>>, feed: number | undefined, isRapid: boolean): void {
    const { relative, relativeFeed, inch, modal, ornate, resets } = this.#dialect;
    const scale = 1 / (inch ? 25.4 : 1);
    const words: string[] = [];
    for (const axis of AXES) {
      const place = to[axis];
      if (place === undefined) continue;
      const told = relative ? place - this.#at[axis] : place - this.#off[axis];
      words.push(`${axis.toUpperCase()}${shown((told / PER_MM) * scale, this.#dialect)}`);
      this.#at[axis] = place;
    }
    if (feed !== undefined) {
      this.#pushed += feed;
      words.push(`E${this.#filament(relative || relativeFeed ? feed : this.#pushed)}`);
    }
    if (words.length === 0) return;
    const motion = `${ornate ? 'G0' : 'G'}${isRapid ? 0 : 1}`;
    this.put([...(modal && motion === this.#motion ? [] : [motion]), ...words].join(' '));
    this.#motion = motion;
    this.#moves += 1;
    if (resets && this.#moves % resets === 0) this.#callAnew();
  }

  #filament(amount: number): string {
    const { volumetric, inch } = this.#dialect;
    const mm = amount / FEED_PER_MM;
    if (volumetric) return shown(mm * Math.PI * (volumetric / 2) ** 2, this.#dialect);
    return shown(inch ? mm / 25.4 : mm, this.#dialect);
  }

  #callAnew(): void {
    this.put('G92 X0 Y0 Z0 E0');
    Object.assign(this.#off, this.#at);
    this.#pushed = 0;
  }
}

/** The line with what printers check it by: exclusive or of all that is before the star. */
export function withChecksum(line: string): string {
  const sum = [...new TextEncoder().encode(line)].reduce((all, byte) => all ^ byte, 0);
  return `${line}*${sum}`;
}

export function written(steps: readonly Step[], dialect: Dialect = {}): string {
  const writer = new Writer(dialect);
  for (const step of steps) writer.step(step);
  return `${writer.lines.join(dialect.lineEnd ?? '\n')}${dialect.lineEnd ?? '\n'}`;
}

/** The steps of a text in plain words, read as simply as can be: G1, G90 and G91, G92 of filament, absolute filament. */
export function stepsOf(text: string): readonly Step[] {
  const steps: Step[] = [];
  const at = { x: 0, y: 0, z: 0 };
  let [pushed, isRelative] = [0, false];
  for (const line of text.split('\n')) {
    const words = Object.fromEntries(
      [...line.replace(/;.*/, '').matchAll(/([A-Z])(-?[\d.]+)/g)].map(([, letter, number]) => [letter, Number(number)]),
    );
    if (words['G'] === 90 || words['G'] === 91) isRelative = words['G'] === 91;
    if (words['G'] === 92) pushed = Math.round((words['E'] ?? 0) * FEED_PER_MM);
    if (words['G'] !== 1) continue;
    for (const axis of AXES) {
      const told = words[axis.toUpperCase()];
      if (told !== undefined) at[axis] = Math.round(told * PER_MM) + (isRelative ? at[axis] : 0);
    }
    const told = words['E'] === undefined ? undefined : Math.round(words['E'] * FEED_PER_MM);
    const e = told === undefined ? undefined : told - (isRelative ? 0 : pushed);
    if (told !== undefined) pushed = isRelative ? pushed + told : told;
    const places = AXES.filter((axis) => words[axis.toUpperCase()] !== undefined).map((axis) => [axis, at[axis]]);
    if (e !== undefined || places.length > 0) {
      steps.push({ ...Object.fromEntries(places), ...(e !== undefined && { e }) });
    }
  }
  return steps;
}

/** Two bytes a character, with the mark at the head. */
export function wide(text: string, isLowFirst: boolean): Uint8Array {
  const bytes = new Uint8Array(2 * text.length + 2);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0xfeff, isLowFirst);
  for (let i = 0; i < text.length; i += 1) view.setUint16(2 * i + 2, text.charCodeAt(i), isLowFirst);
  return bytes;
}
