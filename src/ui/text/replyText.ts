/** The reply to the person who drew a part, in sentences: to be read on screen, printed or copied as plain text. */
import type { Drawn } from '../../core/inspect/redraw.ts';
import type { Reply, ReplyItem } from '../../core/inspect/reply.ts';
import { isWhole } from '../../core/inspect/verdicts.ts';
import type { Lying } from '../../core/print/profile.ts';
import { findFilament } from '../../core/material/shelf.ts';
import {
  bendingFault,
  chanceCell,
  cornersText,
  flexureKindText,
  landingCount,
  landingText,
  lyingText,
  LYING_SAYS,
  numbersSaid,
  PART_UNITS,
  placeText,
  sectionName,
  unitDoubt,
  unitReadText,
} from './inspectText.ts';
import {
  angle,
  counted,
  grouped,
  inHundred,
  inWords,
  length,
  percent,
  setLength,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import type { LetterSaid } from './letterText.ts';
import { capital } from './said.ts';

/** The reply in sentences, by its parts. */
export function replySaid(reply: Reply, unit: LengthUnit): LetterSaid {
  return {
    heading: `About ${reply.fileName}`,
    opening: [...unitSaid(reply, unit), printedSaid(reply, unit), ...foundSaid(reply)],
    items: reply.items.map((item) => itemSaid(item, reply, unit)),
    closing: closingSaid(reply),
  };
}

/** A length of the drawing, with no idle decimals past the usual. */
const drawnLength = (value: number, unit: LengthUnit) => `${setLength(value, unit)}${unitAfter(unit)}`;

function unitSaid({ size, unit: read }: Reply, unit: LengthUnit): readonly string[] {
  const { x, y, z } = size;
  const large = `It measures ${[x, y, z].map((value) => setLength(value, unit)).join(' × ')}${unitAfter(unit)}.`;
  const doubt = unitDoubt(read);
  const ask = read.by === 'sized' ? [`Please tell me if you did not draw it in ${PART_UNITS[read.unit]}.`] : [];
  return [unitReadText(read), large, ...(doubt === '' ? [] : [doubt]), ...ask];
}

function printedSaid({ as, asked }: Reply, unit: LengthUnit): string {
  const { nozzle, lineWidth, layerHeight, filament } = as.profile;
  const mm = (value: number) => drawnLength(value, unit);
  const scaled = as.scale === 1 ? '' : `, scaled ${Number(as.scale.toFixed(3))} times`;
  const times = counted(asked.cycles, 'time').replace(String(asked.cycles), grouped(asked.cycles));
  const how = `${angle(asked.turn)} ${asked.ways}, ${times}${asked.held ? ', and is kept bent for hours' : ''}`;
  return `I mean to print it in ${findFilament(filament)?.name ?? filament} with a ${mm(nozzle)} nozzle, in lines of ${mm(lineWidth)} and layers of ${mm(layerHeight)}${scaled}. Each thin section bends ${how}, and ${inHundred(asked.chance)} in 100 should last.`;
}

function foundSaid({ items }: Reply): readonly string[] {
  const all = items.reduce((sum, { numbers }) => sum + numbers.length, 0);
  if (all === 0) return ['I found no thin sections in it, so there is nothing to ask for.'];
  const found = all === 1 ? 'I found one thin section in it.' : `I found ${inWords(all)} thin sections in it.`;
  const changing = items.filter(({ advice }) => advice.kind !== 'fine').length;
  if (changing === 0) return [found, all === 1 ? 'It is fine as drawn.' : 'All are fine as drawn.'];
  return [found, 'Sizes below are those of the file.'];
}

function itemSaid(item: ReplyItem, { asked }: Reply, unit: LengthUnit): LetterSaid['items'][number] {
  const { numbers, judged, centre, section } = item;
  const kind = flexureKindText(judged.flexure);
  const what = numbers.length === 1 ? kind : `${inWords(numbers.length)} alike, each a ${kind}`;
  const first = numbers.length === 1 ? 'at' : 'the first at';
  return {
    title: `${numbersSaid(numbers)}: ${what}, ${first} ${placeText(centre, unit)}, seen in section ${sectionName(section)}`,
    is: [measuredSaid(item, unit), becomesSaid(item, asked.cycles, unit)],
    please: pleaseSaid(item, asked.cycles, unit),
  };
}

function measuredSaid({ drawn, judged }: ReplyItem, unit: LengthUnit): string {
  const { depth } = judged.flexure;
  const roots = judged.flexure.roots.map(({ fillet }) => fillet);
  const isAlike = Math.max(...roots) - Math.min(...roots) < 0.05;
  const alike = drawn.fillet > 0 ? `fillets of ${length(drawn.fillet, unit)}` : 'sharp corners';
  const fillet = isAlike ? alike : cornersText(judged.flexure, 1, unit);
  return `It is ${length(drawn.thickness, unit)} thick, ${length(drawn.length, unit)} from pad to pad and ${length(depth, unit)} deep, with ${fillet} at its roots.`;
}

const PRINTED: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };

function becomesSaid({ judged }: ReplyItem, cycles: number, unit: LengthUnit): string {
  const { assessed, lying, landing } = judged;
  const printed = lyingText(judged).replace(lying, PRINTED[lying]);
  const lands = `Printed ${printed} (${LYING_SAYS[lying]}) it is ${landingText(landing, unit)}`;
  if (!assessed.ok) return `${lands}. Its bending ${bendingFault(judged)}.`;
  return `${lands}. Bent so far it strains ${percent(assessed.value.strain.peak)}; ${reachSaid(judged, cycles)}.`;
}

/** “95 in 100 reach 5 000”, or why there is no such count. */
function reachSaid(judged: ReplyItem['judged'], cycles: number): string {
  const cell = chanceCell(judged);
  return cell.endsWith('in 100') ? `${cell} reach ${grouped(cycles)}` : cell;
}

const CHANGED: Readonly<Record<keyof Drawn, (value: string) => string>> = {
  thickness: (value) => `${value} thick`,
  length: (value) => `${value} long from pad to pad`,
  fillet: (value) => `with fillets of ${value}`,
};

function pleaseSaid({ advice, judged, numbers }: ReplyItem, cycles: number, unit: LengthUnit): readonly string[] {
  const them = numbers.length === 1 ? 'it' : 'each';
  if (advice.kind === 'fine') return [];
  if (advice.kind === 'none') {
    const why = bendingFault(advice.judged);
    return [
      `No length lets ${them} last in whole ${judged.landing.countOf}: ${why}. I shall bend it less, or take another filament.`,
    ];
  }
  const { drawn, changes, judged: then } = advice.make;
  const asked = changes.map((size) => CHANGED[size](drawnLength(drawn[size], unit)));
  const result = `It is then ${landingCount(then.landing)}${isWhole(judged.landing) ? ' as before' : ''}, and ${reachSaid(then, cycles)}.`;
  return [`Please make ${them} ${asked.join(', ')}.`, capital(result)];
}

function closingSaid({ items }: Reply): readonly string[] {
  const estimates = 'All this is estimated from nominal data of the filament, not tested; a test print tells more.';
  if (items.length === 0) return [];
  const isAsking = items.some(({ advice }) => advice.kind === 'make');
  return [estimates, isAsking ? 'Thank you for the part, and for any of these changes.' : 'Thank you for the part.'];
}
