/** Words and figures on the drawing of a joint that the solver has answered, and on the scale that moves it. */
import type { Assessment } from '../../core/design/assessment.ts';
import { isAsked } from '../../core/flexures/drives.ts';
import { familyOf } from '../../core/flexures/known.ts';
import type { Dimension } from '../../core/flexures/network.ts';
import { isTouching } from '../../core/geometry/touching.ts';
import { asRad, type Mm } from '../../core/units.ts';
import { amountText, effortText, EFFORT_UNIT, setAmount, type Measure } from './amountText.ts';
import { thicknessFigure, VIEWS } from './drawingText.ts';
import { fieldName } from './fieldText.ts';
import { kindText } from './kindText.ts';
import {
  angle,
  counted,
  effortFigure,
  length,
  lengthFigure,
  NO_BREAK,
  percent,
  share,
  type LengthUnit,
} from './numbers.ts';

/** A size as it stands on its dimension line; `drawn` is the distance drawn [mm], for sizes that are a share of something. */
export function dimensionFigure(a: Assessment, dimension: Dimension, drawn: Mm, unit: LengthUnit): string {
  const family = familyOf(a.joint);
  const { parameter } = dimension;
  const value = a.sizes[parameter] ?? Number.NaN;
  if (parameter === family.roles.count) return thicknessFigure(a, unit);
  const before = { diameter: '∅', radius: `R${NO_BREAK}` }[dimension.kind as string] ?? '';
  switch (family.parameters[parameter]?.kind) {
    case 'count': {
      const { lineWidth } = a.joint.profile;
      return `${lengthFigure(value * lineWidth, unit)} = ${value} × ${lengthFigure(lineWidth, unit)}`;
    }
    case 'angle':
      return angle(asRad(value));
    case 'ratio':
      return `${lengthFigure(drawn, unit)} = ${share(value)}`;
    case 'length':
    case undefined:
      return `${before}${lengthFigure(value, unit)}`;
  }
}

/** What a size is called where there is room for words. */
export function sizeName({ joint }: Pick<Assessment, 'joint'>, parameter: string): string {
  return kindText(joint.family).sizes[parameter] ?? fieldName({ field: parameter });
}

/** A size where its figure alone would not say which it is: “Leaf length 16.00”. */
export function namedFigure(a: Assessment, parameter: string, figure: string): string {
  return `${sizeName(a, parameter)} ${figure}`;
}

/** “turned”, “moved”: what the scrubber reads out first. */
export const MOVED: Readonly<Record<Measure, string>> = { turn: 'turned', travel: 'moved' };

export const SCRUBBER_LABEL: Readonly<Record<Measure, string>> = { turn: 'Turned by, degrees', travel: 'Moved by' };

/** Whether it pulls itself on, by more than is told. */
export function pulls(effort: number): boolean {
  return effort < -0.005;
}

/** The head over the effort: what it does is said, so that no sign need be. */
export function effortHead(isPulling: boolean): string {
  return isPulling ? 'it pulls' : 'effort';
}

/** Signed where it goes both ways: “−21.4°”, “2.20 mm”. */
export function signedAmount(amount: number, measure: Measure, unit: LengthUnit): string {
  const size = amountText(Math.abs(amount), measure, unit);
  const decimal = measure === 'turn' && !size.includes('.') ? `${size.slice(0, -1)}.0°` : size;
  return amount < 0 && Number.parseFloat(size) !== 0 ? `−${decimal}` : decimal;
}

/** Words of the marked states: on the scale, in the row of three, and what holds there. */
export const MARKED = {
  snap: { short: 'snaps', title: 'Just before it snaps' },
  balanced: { short: 'balanced', title: 'Balanced, for an instant' },
  return: { short: 'snaps back', title: 'Just before it snaps back' },
  rest: { short: 'rests', title: 'Second rest' },
} as const;

/** What it takes in a marked state; `back` is the load that brings it back from its second rest. */
export function markedEffort(
  kind: keyof typeof MARKED,
  effort: number,
  back: number | undefined,
  measure: Measure,
): string {
  const figure = (value: number) => `${effortFigure(Math.abs(value))}${NO_BREAK}${EFFORT_UNIT[measure]}`;
  if (kind === 'snap') return `${figure(effort)} to push it on`;
  if (kind === 'balanced') return 'no effort; falls either way';
  if (kind === 'return') return `${figure(effort)} to bring it back`;
  return back === undefined ? 'stays' : `stays; ${figure(back)} to bring it back`;
}

/** “Second rest, 5.64 mm”. */
export function markedTitle(kind: keyof typeof MARKED, amount: number, measure: Measure, unit: LengthUnit): string {
  return `${MARKED[kind].title}, ${amountText(amount, measure, unit)}`;
}

/** What the scrubber says of where it stands: amount, strain, effort, and the marked state it stands on. */
export function stateText(
  at: {
    readonly amount: number;
    readonly strain: number;
    readonly effort: number;
    readonly mark?: keyof typeof MARKED;
  },
  wanted: number,
  measure: Measure,
  unit: LengthUnit,
): string {
  const isPulling = pulls(at.effort);
  const effort = `${effortHead(isPulling)} ${effortText(Math.abs(at.effort), measure)}`;
  const mark = at.mark ? `, ${MARKED[at.mark].title.toLowerCase()}` : '';
  return `${signedAmount(at.amount, measure, unit)} of ${setAmount(wanted, measure, unit)}, strain ${percent(at.strain)}, ${effort}${mark}`;
}

/** How near two parts come in a state, how near they may, and in how many places they come too near. */
export function nearText(gap: Mm, keep: Mm, places: number, unit: LengthUnit): readonly string[] {
  return [
    isTouching(gap) ? 'they touch' : `${length(gap, unit)} apart`,
    `keep ${length(keep, unit)} or more`,
    ...(places > 1 ? [`${counted(places, 'place')} too near`] : []),
  ];
}

export const CENTRE_PATH = 'path of the centre';
export const FROM_THE_SIDE = 'from the side';
export const OUT_OF_SIGHT = 'strips twist out of sight';
export const WANTED = 'wanted';

/** “2 planes, 3.00 each”, “0.40 between”. */
export function planesText(widths: readonly Mm[], between: Mm, unit: LengthUnit): readonly [string, string] {
  const [first = 0] = widths;
  const each = widths.every((width) => Math.abs(width - first) < 1e-9) ? `, ${lengthFigure(first, unit)} each` : '';
  return [`${widths.length} planes${each}`, `${lengthFigure(between, unit)} between`];
}

/** “one of 3 side by side”, or nothing. */
export function besideFigure(alike: number): string {
  return alike > 1 ? `one of ${alike} side by side` : '';
}

/** The sizes of a joint that its drive asks for, in words. */
function sizesText(a: Assessment, unit: LengthUnit): string {
  const family = familyOf(a.joint);
  const kinds = {
    length: (value: number) => length(value, unit),
    angle: (value: number) => angle(asRad(value)),
    count: String,
    ratio: (value: number) => String(Number(value.toFixed(3))),
  };
  const chosen = (name: string) =>
    kindText(a.joint.family).choices?.[name]?.[a.sizes[name] ?? Number.NaN]?.replace(/,$/, '');
  return Object.entries(family.parameters)
    .filter(([, parameter]) => isAsked(parameter, a.drive.id))
    .map(
      ([name, { kind }]) =>
        `${sizeName(a, name).toLowerCase()} ${chosen(name) ?? kinds[kind](a.sizes[name] ?? Number.NaN)}`,
    )
    .join(', ');
}

export interface Described {
  readonly view: keyof typeof VIEWS;
  readonly scale: string;
  readonly unit: LengthUnit;
  /** Marked states in the order in which they are met, with strain and effort. */
  readonly marks: readonly { readonly kind: keyof typeof MARKED; readonly amount: number; readonly effort: number }[];
  /** Least gap up to the wanted amount and where [mm], where anything can touch. */
  readonly nearest?: { readonly gap: Mm; readonly amount: number; readonly places: number };
  readonly keep: Mm;
  /** How far the centre of a turn drifts [mm]. */
  readonly drift?: Mm;
}

/** The whole figure in words, for those who cannot see it. */
export function describeSolved(a: Assessment, { view, scale, unit, marks, nearest, keep, drift }: Described): string {
  const { drive, joint, strain, section } = a;
  const { measure } = drive;
  const both = joint.movement.ways === 'both ways' ? ', and as far the other way' : '';
  const many = counted(section.count, section.countOf.slice(0, -1));
  const near =
    nearest && nearest.gap < keep
      ? `Parts ${isTouching(nearest.gap) ? 'touch' : `come within ${length(nearest.gap, unit)} of each other`} at ${signedAmount(nearest.amount, measure, unit)}${nearest.places > 1 ? `, too near in ${nearest.places} places` : ''}.`
      : '';
  return [
    `${VIEWS[view]}, ${scale}.`,
    `Thin section ${length(section.thickness, unit)}, ${many}; ${sizesText(a, unit)}.`,
    `${measure === 'turn' ? 'Turned' : 'Moved'} ${setAmount(joint.movement.amount, measure, unit)}${both}.`,
    `The skin strains ${percent(strain.peak)} at most, ${strain.where === 'root' ? 'at a root' : 'between the roots'}.`,
    ...marks.map(({ kind, amount }) => `${markedTitle(kind, amount, measure, unit)}.`),
    near,
    drift === undefined ? '' : `Its centre moves ${length(drift, unit, unit === 'mm' ? 3 : 4)}.`,
    besideFigure(a.solved?.network.alike ?? 1),
  ]
    .filter((part) => part !== '')
    .join(' ');
}
