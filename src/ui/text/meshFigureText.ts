/** Words of the figures in the place where part files are checked. */
import type { Judged, Landing, PrintedAs } from '../../core/inspect/judged.ts';
import { isWhole } from '../../core/inspect/verdicts.ts';
import { flexureKindText, landingText, sectionName } from './inspectText.ts';
import { counted, lengthFigure, unitAfter, type LengthUnit } from './numbers.ts';
import { capital, listed } from './said.ts';

export const MESH_FIGURES = {
  picture: 'The part, dimetric',
  section: 'Section through the thin sections',
  sectionAid: 'cut plastic hatched',
  landing: 'How these lines would land',
  landingAid: 'ink outline: the part; beads: the line width set',
  someShown: (shown: number, all: number) => `${shown} of ${all} kinds; choose another to see it`,
  scale: (counts: string) => `${capital(counts)} against scale`,
  scaleAid: 'filled: whole and even; ring: whole, odd',
  widths: 'Line widths that come out whole',
  widthsAid: 'file as it is scaled now',
} as const;

export function windowLabel(numbers: string, landing: Landing, unit: LengthUnit): string {
  return `Thin section ${numbers}, ten times as large: ${landingText(landing, unit)}`;
}

export const SCALE_CHART = {
  handle: 'Scale of the part',
  across: 'lines across',
  through: 'layers through',
  both: 'lines or layers',
  along: 'scale of the whole part',
  now: (scale: number) => `now ${scaleFigure(scale)}`,
} as const;

export function scaleValueText(scale: number, counts: readonly number[], of: string): string {
  return `${Number(scale.toFixed(3))} times: ${listed(counts.map((count) => count.toFixed(2)))} ${of}`;
}

export function wholePlaceText({ at, counts }: { readonly at: number; readonly counts: readonly number[] }): string {
  return `At ${Number(at.toFixed(3))} times all are whole: ${listed(counts.map(String))}.`;
}

export const COMB = {
  span: (nozzle: string) => `shaded: what a ${nozzle} nozzle lays well`,
  someShown: (shown: number, all: number) => `${shown} of ${all} thicknesses; choose another to see it`,
  row: (numbers: string, widths: readonly string[]) =>
    `${numbers}: ${widths.length === 0 ? 'no width that this nozzle lays well' : `whole lines, ${listed(widths)}`}`,
  axis: 'line width, mm',
  all: (width: string) => `${width}: all whole`,
  set: (width: string) => `set ${width}`,
} as const;

/** “Section 1 of 2 through the thin sections”. */
export function sectionTitle(at: number, count: number): string {
  const letter = sectionName(at);
  const name = `Section ${letter}–${letter} through the thin sections`;
  return count > 1 ? `${name}, ${at + 1} of ${count}` : name;
}

/** Where Fig. 1 is cut. */
export function cutWhere(at: number): string {
  const letter = sectionName(at);
  return `${letter}–${letter}: where it is cut in Fig. 2`;
}

/** Beside the one window that stands for all. */
export function windowSays(
  numbers: string,
  isMany: boolean,
  { landing, flexure }: Judged,
  as: PrintedAs,
  unit: LengthUnit,
): string {
  const alike = isMany ? `${numbers} are alike, so one window stands for all. ` : '';
  const thick = lengthFigure(as.scale * flexure.thickness.least, unit);
  const size = (value: number) => `${lengthFigure(value, unit)}${unitAfter(unit)}`;
  const one = landing.countOf === 'lines' ? 'line' : 'layer';
  if (isWhole(landing)) return `${alike}${capital(one)}s fill the ${thick} with nothing left over.`;
  if (landing.state === 'not-laid')
    return `${alike}Hatched: ${thick} is less than one ${one}, and most printers lay nothing there.`;
  if (landing.countOf === 'layers')
    return `${alike}Layers are never squeezed: ${thick} comes out as ${counted(landing.nearest, 'layer')}.`;
  if (landing.exact < 2) {
    const doubled = 2 * as.profile.lineWidth - as.scale * flexure.thickness.least;
    return `${alike}Hatched: where two lines would lie over each other, ${size(doubled)} of ${thick}. The printer drops one line or squeezes both, and the section is weaker than it is drawn.`;
  }
  return `${alike}Hatched: ${size(landing.left)} beside whole lines, left open or filled by a line thinner than set.`;
}

/** One thin section of a drawing in words. */
export function sectionItem({ flexure, landing }: Judged, scale: number, unit: LengthUnit): string {
  const size = (value: number) => lengthFigure(scale * value, unit);
  return `Number ${flexure.number}: ${flexureKindText(flexure)}, ${size(flexure.thickness.least)} thick, ${size(flexure.length)} long, ${size(flexure.depth)} deep; ${landingText(landing, unit)}`;
}

export function scaleFigure(scale: number): string {
  return scale.toFixed(3).replace(/0$/, '');
}

export function pictureLabel(count: number): string {
  return `Ink drawing of the part, with ${counted(count, 'numbered thin section')}`;
}

/** “2 : 1”, “1 : 5”. */
export function pictureScale(scale: number): string {
  return scale >= 1 ? `${Number(scale.toPrecision(2))} : 1` : `1 : ${Number((1 / scale).toPrecision(2))}`;
}
