/** What is wanted beside what is laid, what that does to the joint, and what to change. */
import type { JudgedPlace, LaidChange, LaidRow } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Span } from '../../core/inspect/toolpath/audit.ts';
import { effortText, setAmount } from './amountText.ts';
import {
  counted,
  effortFigure,
  grouped,
  inHundred,
  lengthFigure,
  NO_BREAK,
  percent,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import { figure, type Said } from './said.ts';

/** What the joint comes to as it is laid, as it goes on after its thickness; nothing where that is not known. */
export function asLaidSaid({ asLaid }: JudgedPlace, unit: LengthUnit): Said {
  if (!asLaid?.before.ok || !asLaid.after.ok) return [];
  const [before, after] = [asLaid.before.value, asLaid.after.value];
  const times = after.effort.effort / before.effort.effort;
  const moved = setAmount(asLaid.joint.movement.amount, after.drive.measure, unit);
  return [
    `, so at ${moved} it strains `,
    figure(percent(after.strain.peak), after.provenance.strain, 'strain'),
    `, not ${percent(before.strain.peak)}, and pushes back `,
    figure(`${effortFigure(times)} times`, 'computed', 'effort'),
    ' as hard',
  ];
}

export function asLaidMore({ asLaid }: JudgedPlace): string {
  if (!asLaid?.before.ok || !asLaid.after.ok) return '';
  const [before, after] = [asLaid.before.value.life, asLaid.after.value.life];
  const wanted = grouped(asLaid.joint.movement.cycles);
  if (after.breaksOnFirstFlex) return 'Taken as one solid piece the first flex would break it.';
  return `Taken as one solid piece: ${inHundred(after.chance)} in 100 would reach ${wanted}, where the joint promised ${inHundred(before.chance)}.`;
}

const ROW_NAMES: Readonly<Record<LaidRow['what'], string>> = {
  lines: 'Lines across',
  thickness: 'Thickness',
  'line-width': 'Line width',
  spread: 'Width, least to most',
  starts: 'Starts on it',
  stops: 'Stops inside it',
  open: 'Open places',
  depth: 'Depth',
  strain: 'Strain',
  effort: 'Effort',
};

/** The name of a row, of the section that it is about. */
export function rowName({ what }: LaidRow, { wanted, asLaid }: JudgedPlace, unit: LengthUnit): string {
  if (what === 'lines' && wanted.countOf === 'layers') return 'Layers through';
  if (what === 'line-width' && wanted.countOf === 'layers') return 'Layer height';
  if (what === 'strain' && asLaid?.after.ok) {
    return `Strain at ${setAmount(asLaid.joint.movement.amount, asLaid.after.value.drive.measure, unit)}`;
  }
  return ROW_NAMES[what];
}

type Say = (value: number, unit: LengthUnit, judged: JudgedPlace) => string;

const lengths: Say = (value, unit) => lengthFigure(value, unit);
const counts: Say = (value) => (Number.isInteger(value) ? String(value) : value.toFixed(1));

const SAY: Readonly<Record<LaidRow['what'], Say>> = {
  lines: counts,
  thickness: lengths,
  'line-width': lengths,
  spread: lengths,
  starts: counts,
  stops: counts,
  open: counts,
  depth: lengths,
  strain: (value) => percent(value),
  effort: (value, _, { asLaid }) =>
    asLaid?.after.ok ? effortText(value, asLaid.after.value.drive.measure) : effortFigure(value),
};

/** The share that widths may be off, as the look has it. */
const isShare = (value: number) => value > 0 && value < 0.2;

export function wantedText({ what, wanted }: LaidRow, judged: JudgedPlace, unit: LengthUnit): string {
  if (wanted === undefined) return '–';
  if (wanted === 'none') return 'none';
  if (what === 'spread' && isShare(wanted)) return `within ±${Math.round(100 * wanted)}${NO_BREAK}%`;
  return SAY[what](wanted, unit, judged);
}

const isSpan = (laid: LaidRow['laid']): laid is Span => typeof laid === 'object';

export function laidText({ what, laid, layers }: LaidRow, judged: JudgedPlace, unit: LengthUnit): string {
  if (laid === 'none') return 'none';
  const say = (value: number) => SAY[what](value, unit, judged);
  const said = isSpan(laid)
    ? say(laid.least) === say(laid.most)
      ? say(laid.most)
      : `${say(laid.least)} to ${say(laid.most)}`
    : say(laid);
  return layers === undefined ? said : `${said} on ${counted(layers, 'layer')}`;
}

interface ChangeSaid {
  readonly head: string;
  readonly does: string;
  readonly costs: string;
}

const sized = (value: number, unit: LengthUnit) => `${lengthFigure(value, unit)}${unitAfter(unit)}`;

function layCosts({ strain, effort }: LaidChange & { kind: 'lay' }): string {
  const parts = [
    ...(strain === undefined ? [] : [`strain ${percent(strain)}`]),
    ...(effort === undefined ? [] : [`${effortFigure(effort)} times the effort`]),
  ];
  return parts.length === 0 ? 'Costs another line width on the whole part.' : `Costs ${parts.join(', ')}.`;
}

/** Something to do about it: what, what it brings, and what it costs. */
export function changeSaid(change: LaidChange, { place, wanted }: JudgedPlace, unit: LengthUnit): ChangeSaid {
  switch (change.kind) {
    case 'draw':
      return {
        head: `Draw it ${sized(change.thickness, unit)} thick`,
        does: `${counted(change.count, change.of === 'lines' ? 'whole line' : 'whole layer')} and nothing between.`,
        costs:
          wanted.from === 'joint' ? 'Costs nothing: it is what the joint wants.' : 'Costs a change in the drawing.',
      };
    case 'lay':
      return {
        head: `Or lay ${sized(change.lineWidth, unit)} lines`,
        does: `${counted(change.count, 'line')} ${change.count === 1 ? 'fills' : 'fill'} the ${sized(place.thickness, unit)} that is there.`,
        costs: layCosts(change),
      };
    case 'start-elsewhere':
      return {
        head: 'Start contours on the far face of the pad',
        does: `Clears ${counted(change.layers, 'layer')}.`,
        costs: 'Costs a row of start points to be seen there.',
      };
    case 'leave-gaps':
      return {
        head: 'Leave gaps under one line alone',
        does: 'No thin line is pressed in.',
        costs: 'Costs a slit between the lines until it is drawn whole.',
      };
    case 'travel-round':
      return {
        head: 'Lead travel round it',
        does: `Clears ${counted(change.crossings, 'crossing')}.`,
        costs: 'Costs a longer way.',
      };
    case 'contours':
      return {
        head: `Lay ${counted(change.count, 'contour')}`,
        does: 'Contours run along it from end to end.',
        costs: 'Costs time, and stiffens other thin walls too.',
      };
    case 'turn':
      return {
        head: 'Turn the part on the plate',
        does: 'Lines then run along it.',
        costs: 'Costs another side on the plate, and supports perhaps.',
      };
  }
}
