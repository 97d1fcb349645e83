/** How figures of exercise pages are said: in answers, and as units beside the room for them. */
import type { Figure, FigureKind, Question } from '../../core/lesson/exercises/question.ts';
import { asRad, degrees } from '../../core/units.ts';
import { cycles, effortFigure, inWords, NO_BREAK, THIN } from './numbers.ts';

/** After a figure, with its space; nothing where it has no unit. */
const UNITS: Readonly<Record<FigureKind, string>> = {
  length: `${NO_BREAK}mm`,
  width: `${NO_BREAK}mm`,
  angle: '°',
  arc: '',
  strain: `${NO_BREAK}%`,
  share: `${NO_BREAK}%`,
  torque: `${NO_BREAK}N·mm`,
  force: `${NO_BREAK}N`,
  times: '',
  count: '',
  cycles: '',
  hundred: `${NO_BREAK}in${NO_BREAK}100`,
};

/** With no more decimals than it needs: 12 → “12”, 8.5 → “8.5”. */
export function bare(value: number, places = 2): string {
  return String(Number(value.toFixed(places)));
}

/** “8.5 mm”. */
export function mm(value: number, places = 2): string {
  return `${bare(value, places)}${NO_BREAK}mm`;
}

const FIGURES: Readonly<Record<FigureKind, (value: number) => string>> = {
  length: (value) => bare(value, 1),
  width: (value) => value.toFixed(2),
  angle: (value) => bare(degrees(asRad(value)), 1),
  arc: (value) => value.toFixed(3),
  strain: (value) => (100 * value).toFixed(2),
  share: (value) => (100 * value).toFixed(0),
  torque: (value) => effortFigure(value),
  force: (value) => effortFigure(value),
  times: (value) => value.toFixed(2),
  count: (value) => String(value),
  cycles,
  hundred: (value) => String(Math.round(100 * value)),
};

/** Tolerances to two figures at most, never to nothing. */
const OFF: Readonly<Record<FigureKind, (within: number) => string>> = {
  ...FIGURES,
  length: (within) => bare(Math.max(within, 0.1), 1),
  width: (within) => Math.max(within, 0.01).toFixed(2),
  angle: (within) => bare(Math.max(1, degrees(asRad(within))), 0),
  torque: (within) => bare(within, within < 1 ? 1 : 0),
  force: (within) => bare(within, within < 1 ? 1 : 0),
};

/** The unit that stands after the room for a figure. */
export function unitOf(kind: FigureKind): string {
  return UNITS[kind];
}

/** “P 4.28”, without its unit. */
function lettered({ of, kind, value }: Figure, label = of): string {
  const before = label.length > 1 ? `${label}:` : label;
  return `${before}${label === '' ? '' : NO_BREAK}${FIGURES[kind](value)}`;
}

/** Figures that share a unit are said with it once: “P 6, Q 18, R 36 mm”; each whole part keeps together. */
export function figuresText(figures: readonly Figure[], labels: readonly string[] = []): string {
  return figures
    .map((figure, at) => {
      const next = figures[at + 1];
      const unit = next?.kind === figure.kind ? '' : UNITS[figure.kind];
      return `${lettered(figure, labels[at])}${unit}`;
    })
    .join(', ');
}

/** “within 0.5 mm” where something was measured: once where figures may be off alike, else each in its turn. */
export function withinText(figures: readonly Figure[]): string | undefined {
  const read = figures.filter(({ isRead }) => isRead);
  const kinds = [...new Set(read.map(({ kind }) => kind))];
  const said = kinds.map((kind) => {
    const off = read.filter((figure) => figure.kind === kind).map(({ within }) => OFF[kind](within));
    return `${(new Set(off).size === 1 ? off.slice(0, 1) : off).join(', ')}${UNITS[kind]}`;
  });
  return said.length > 0 ? `within${NO_BREAK}${said.join(' and ')}` : undefined;
}

const CHOICES: Readonly<Record<string, string>> = {
  row: 'the row',
  one: 'the thick leaf',
  flexed: 'being flexed again and again',
  held: 'being held bent',
};

function choiceWord(letter: string): string {
  return CHOICES[letter] ?? letter;
}

/** “Q and R”, “none”. */
export function choiceText({ right }: NonNullable<Question['choice']>): string {
  const words = right.map(choiceWord);
  if (words.length === 0) return 'none';
  const last = words.at(-1) ?? '';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

const timed = (value: number, one: string) => `${bare(value, 0)}${NO_BREAK}${one}${Math.round(value) === 1 ? '' : 's'}`;

/** A time as a class says it: “15 minutes”, “6 hours”, “2 days”. */
export function timeText(hours: number): string {
  if (hours < 1) return timed(hours * 60, 'minute');
  return hours < 48 ? timed(hours, 'hour') : timed(hours / 24, 'day');
}

/** “two lines of 0.42 mm, 0.84 mm thick”. */
export function linesText({
  lines,
  lineWidth,
  thickness,
}: {
  lines: number;
  lineWidth: number;
  thickness: number;
}): string {
  return `${inWords(lines)} lines of ${lineWidth.toFixed(2)}${NO_BREAK}mm, ${thickness.toFixed(2)}${NO_BREAK}mm thick`;
}

/** “1 900 N/mm²”. */
export function modulusText(modulus: number): string {
  return `${String(modulus).replaceAll(/\B(?=(\d{3})+$)/g, THIN)}${NO_BREAK}N/mm²`;
}

/** “3.5 %”. */
export function limitText(strain: number): string {
  return `${bare(100 * strain, 2)}${NO_BREAK}%`;
}

/** “35°”. */
export function degreesText(angle: number): string {
  return `${bare(degrees(asRad(angle)), 0)}°`;
}
