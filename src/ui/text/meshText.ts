/** Sentences of the place where part files are checked. */
import type { Damage } from '../../core/geometry/mesh/damage.ts';
import type { CheckedPart, UnitRead } from '../../core/inspect/checkedPart.ts';
import type { Cure } from '../../core/inspect/cure.ts';
import type { LengthUnit as FileUnit } from '../../core/inspect/lengthUnit.ts';
import type { AskedOfAll, Judged, PrintedAs } from '../../core/inspect/judged.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { asRad, type Mm } from '../../core/units.ts';
import { cornersText, damageText, flexureKindText, lyingText, PART_UNITS, PLATE_UP_TEXT } from './inspectText.ts';
import {
  angle,
  angleWithin,
  counted,
  grouped,
  inWords,
  lengthFigure,
  NO_BREAK,
  setLength,
  unitAfter,
  type LengthUnit,
} from './numbers.ts';
import { scaleFigure } from './meshFigureText.ts';
import { capital, listed } from './said.ts';

const quoted = (name: string) => `“${name}”`;

export const MESH = {
  place: 'Mesh',
  title: 'Check a part file',
  none: 'Drop a part file here to find what bends in it.',
  noneMore:
    'STL, OBJ and 3MF are read, up to 200 MB. Every thin section between thicker ones is numbered, set against your lines, and judged. The file is read on this machine and sent nowhere.',
  sample: 'Try a sample part',
  sampleFailed: 'The sample part did not come; load the page again.',
  strip: 'Thin sections of this part',
  joint: 'Make it a joint',
  found: 'Thin sections found',
  cures: 'Cures for the whole part',
  curesAside: 'before and after',
  use: 'Use it',
  nonePassed: 'Passed over: nothing. A wall that is free at one end or held along its side would be told here.',
  passed: (count: number) => `Passed over, ${count}; press one to see in Fig. 1 where it is:`,
} as const;

export const MESH_CHOOSER = {
  label: 'Part file to check',
  accept: '.stl,.3mf,.obj',
  another: 'Drop another part file, or ',
  formats: 'STL, 3MF or OBJ; up to 200 MB',
} as const;

const FORMATS = ['stl', '3mf', 'obj'] as const;

/** A short word for what the ending of a name says. */
function formatOf(name: string): string {
  const ending = name.toLowerCase().split('.').at(-1) ?? '';
  return (FORMATS as readonly string[]).includes(ending) ? ending.toUpperCase() : 'file';
}

/** “flat, R 0.60 fillets”; under the word of its kind, which is not said twice. */
export function lyingWords(judged: Judged, scale: number, unit: LengthUnit): string {
  const lying = lyingText(judged);
  const isSaid = lying === flexureKindText(judged.flexure);
  return `${isSaid ? '' : `${lying}, `}${cornersText(judged.flexure, scale, unit)}`;
}

export const DOING = {
  reading: 'Reading',
  mending: 'Looking over the surface of',
  looking: 'Looking for thin sections in',
} as const;

export function doingText(doing: keyof typeof DOING, name: string): string {
  return `${DOING[doing]} ${quoted(name)}`;
}

export function refusedHead(name: string): string {
  const format = formatOf(name);
  return `Refused: this ${format} cannot be read`;
}

export function keepUnitText(unit: FileUnit): string {
  return `Keep it in ${PART_UNITS[unit]}`;
}

export function readInText(unit: FileUnit): string {
  return `Read it in ${PART_UNITS[unit]}`;
}

export function lookedText(thickest: Mm, count: number, kinds: number, unit: LengthUnit): readonly string[] {
  const found =
    count === 0
      ? 'Nothing of the kind was found.'
      : `${capital(inWords(count))} found, ${kinds === 1 ? 'all of one kind' : `in ${inWords(kinds)} kinds`}; alike ones share a row.`;
  return [
    `Called a thin section: at most ${setLength(thickest, unit)}${unitAfter(unit)} thick, between bodies at either end that are clearly thicker.`,
    found,
    'Thickness is the least of each section. The bending length is that of an even section which bends as far: fillets count for as much as they bend.',
    'It cannot know which way you bend it: bending is taken across the thin way, one body turned against the other.',
  ];
}

export function cutText(): string {
  return 'Looking ended at its limit on work before the whole part had been seen; there may be more thin sections.';
}

/** Before a verdict there is nothing to judge. */
export function nothingThin(name: string, thickest: Mm, unit: LengthUnit): string {
  return `${quoted(name)} is nowhere ${setLength(thickest, unit)}${unitAfter(unit)} thick or thinner between two thicker bodies. If it should bend somewhere, say how thick to look for.`;
}

export const NOTED = {
  of: (number: number) => `Noted of number ${number}`,
  more: (count: number, isAlone: boolean) =>
    isAlone ? `${capital(inWords(count))} ${count === 1 ? 'note' : 'notes'}` : `${capital(inWords(count))} more`,
  mark: (count: number) => counted(count, 'note'),
  see: (count: number, numbers: string) => `See ${counted(count, 'note')} of ${numbers}`,
} as const;

export const JOINT_SAID = (name: string, file: string) => `${quoted(name)} added from ${quoted(file)}`;

type BriefName =
  | 'scale'
  | 'nozzle'
  | 'lineWidth'
  | 'layerHeight'
  | 'turn'
  | 'cycles'
  | 'thickest'
  | 'filament'
  | 'up'
  | 'ways'
  | 'held'
  | 'chance';

export const BRIEF_LABELS: Readonly<Record<BriefName, string>> = {
  scale: 'Scale of the part',
  nozzle: 'Nozzle',
  lineWidth: 'Line width',
  layerHeight: 'Layer height',
  turn: 'Angle of each bend',
  cycles: 'Number of flexes',
  thickest: 'Thickest looked for',
  filament: 'Filament',
  up: 'How it lies on the plate',
  ways: 'Ways',
  held: 'What happens after a flex',
  chance: 'How many of a hundred should reach it',
};

const steps = (next: string) => `up and down keys step; next ${next}`;

export const BRIEF_HINTS = {
  scale: (next: string) => `type 4/3 or 133 % too; next ${next}`,
  nozzle: steps,
  lineWidth: steps,
  layerHeight: steps,
  turn: steps,
  cycles: steps,
  thickest: (next: string) => `the file is looked through again; next ${next}`,
} as const;

/** What is said of a change, in the past tense with the old value. */
export const BRIEF_SAID: Readonly<Record<BriefName, (now: string, was: string) => string>> = {
  scale: (now, was) => `Part scaled ${now}, was ${was}`,
  nozzle: (now, was) => `Nozzle set to ${now}, was ${was}`,
  lineWidth: (now, was) => `Lines set to ${now}, were ${was}`,
  layerHeight: (now, was) => `Layers set to ${now}, were ${was}`,
  turn: (now, was) => `Each bend set to ${now}, was ${was}`,
  cycles: (now, was) => `Flexes set to ${now}, were ${was}`,
  thickest: (now, was) => `Looked up to ${now} thick, was ${was}`,
  filament: (now, was) => `Filament set to ${now}, was ${was}`,
  up: (now, was) => `Part ${now}, was ${was}`,
  ways: (now, was) => `Bent ${now}, was ${was}`,
  held: (now, was) => `Now ${now}, was ${was}`,
  chance: (now, was) => `Wanted for ${now}, was ${was}`,
};

export const TABLE = {
  number: 'No.',
  kind: 'Kind',
  thick: 'Thick',
  lines: 'Lines across',
  layers: 'Layers through',
  both: 'Lines or layers',
  bending: 'Bending length',
  depth: 'Depth',
  strain: 'Strain',
  verdict: 'Verdict',
  act: 'What to do with it',
  reach: (cycles: string) => `Reach ${cycles}`,
  alike: (count: number) => `, ${inWords(count)} alike`,
  choose: (numbers: string) => `Look at ${numbers}`,
  layer: ({ layer, layers: [first, last] }: Judged) =>
    first === last ? `in layer ${layer}` : `layers ${first} to ${last}, best seen in ${layer}`,
  makeIt: (number: number) => `Make it a joint: ${number}`,
} as const;

export function foundNote({ as, asked }: { as: PrintedAs; asked: AskedOfAll }, turn: string, unit: LengthUnit): string {
  const filament = filamentName(as.profile.filament);
  return `${filament}, ${lengthFigure(as.profile.lineWidth, unit)}${unitAfter(unit)} lines, bent ${turn} ${asked.ways}`;
}

export const CURED = {
  looking: 'Looking for what would help all of them …',
  none: 'Where single sections fail, ask for a thicker or a longer one: the reply below says which.',
  lines: (pairs: readonly (readonly string[])[]) =>
    `Lines across, before and after: ${listed(pairs.map(([was, now]) => `${was} to ${now}`))}`,
  strains: (pairs: readonly (readonly string[])[]) =>
    `Strain in per cent, before and after: ${listed(pairs.map(([was, now]) => `${was} to ${now}`))}`,
} as const;

const filamentName = (id: string) => findFilament(id)?.name ?? id;

/** What the slip says once a cure is in force. */
export function usedText({ change, as }: Cure, was: { as: PrintedAs; asked: AskedOfAll }, unit: LengthUnit): string {
  const width = (value: number) => `${setLength(value, unit)}${unitAfter(unit)}`;
  switch (change.kind) {
    case 'scale': {
      const { lineWidth } = as.profile;
      const isSame = lineWidth === was.as.profile.lineWidth;
      const lines = isSame
        ? ''
        : `; lines set to ${width(lineWidth)}, were ${setLength(was.as.profile.lineWidth, unit)}`;
      return `Part scaled ${scaleFigure(change.scale)}×, was ${scaleFigure(was.as.scale)}${lines}`;
    }
    case 'line-width':
      return BRIEF_SAID.lineWidth(width(change.lineWidth), setLength(was.as.profile.lineWidth, unit));
    case 'filament':
      return BRIEF_SAID.filament(filamentName(change.filament), filamentName(was.as.profile.filament));
    case 'turn':
      return BRIEF_SAID.turn(angleWithin(asRad(change.turn)), angle(was.asked.turn));
    case 'lying':
      return BRIEF_SAID.up(PLATE_UP_TEXT[change.up], PLATE_UP_TEXT[was.as.up]);
  }
}

/** The file in figures. */
export function factsRows(
  { format, solids, facts }: CheckedPart,
  size: string,
  printed: string,
  scale: number,
): readonly (readonly [string, string])[] {
  const named = solids.filter((name) => name !== '');
  return [
    ['Kind', format],
    ...(named.length > 0 ? ([['Named in it', listed(named.slice(0, 3))]] as const) : []),
    ['Size', size],
    ...(scale === 1 ? [] : ([['As it is scaled', printed]] as const)),
    ['Triangles', grouped(facts.triangles)],
    ['Bodies', grouped(facts.bodies)],
    ['Volume', `${grouped(facts.volume)}${NO_BREAK}mm³`],
    ['Surface', `${grouped(facts.area)}${NO_BREAK}mm²`],
  ];
}

export const SCALING_SAYS = (turn: string, strains: readonly string[]) =>
  `Scaling leaves strain as it is: bent ${turn}, ${strains.length === 1 ? 'the strain stays' : 'the strains stay'} ${listed(strains)} at every scale, because thickness and length grow alike. Scale for whole lines; for life bend less, change the filament, or ask for a longer flexure.`;

export function unitHead({ unit }: UnitRead): string {
  return `Is it in ${PART_UNITS[unit]}?`;
}

export function damagedText(name: string, damage: readonly Damage[]): string {
  return `The surface of ${quoted(name)} is damaged: ${listed(damage.map((one) => damageText(one).replace(/; [^;]*$/, '')))}. Thickness near such a place is not to be trusted.`;
}

export const REPLY = {
  name: 'A reply',
  aside: 'what to ask of whoever drew it; nothing is sent',
  open: 'Write a reply to whoever drew it',
  close: 'Close the reply',
} as const;
