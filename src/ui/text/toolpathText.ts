/** Sentences of the place where toolpaths are checked. */
import type { Grade } from '../../core/design/assessment.ts';
import type { CheckedToolpath } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { JudgedPlace, WantedLaid } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Place, PlaceFrom } from '../../core/inspect/toolpath/place.ts';
import type { Mm } from '../../core/units.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';
import { counted, grouped, inWords, lengthFigure, setLength, unitAfter, type LengthUnit } from './numbers.ts';
import { capital, listed } from './said.ts';
import { placeWord } from './toolpathFindingText.ts';
import { gradeWord } from './verdictText.ts';

const quoted = (name: string) => `“${name}”`;

export const TOOLPATH = {
  title: 'Check a toolpath',
  none: 'Drop a G-code file here to see what will be laid across what bends.',
  noneMore:
    'Any G-code of a filament printer is read, by its moves alone: no remark of any program is relied on. Every thin section is found in the layers, and lines across, widths, gaps and start points are told. The file is read on this machine and sent nowhere.',
  sample: 'Try a sample toolpath',
  strip: 'Thin sections of this toolpath',
  invented: 'invented',
  changes: 'What to change',
  changesAside: 'then drop the new file here',
  findings: 'What was found',
  findingsAside: 'worst first; numbers stand beside Fig. 3',
  rows: 'As laid, against what is wanted',
  what: 'of what',
  wanted: 'wanted',
  laid: 'laid',
  verdict: 'verdict',
  noneToChange: 'Nothing: it is laid as wanted.',
  see: (layer: number) => `See layer ${layer}`,
  moreBad: (count: string) => `and ${count} more`,
  badLines: 'Lines that were not understood',
  passed: (count: number) => `Passed over, ${count}:`,
  nothingPassed: 'Passed over: nothing.',
} as const;

export const TOOLPATH_CHOOSER = {
  label: 'Toolpath to check',
  accept: '.gcode,.gco,.gc,.g,.nc,.ngc,.cnc,.tap',
  another: 'Drop another toolpath, or ',
  formats: 'G-code of any length',
} as const;

const DOING = {
  reading: 'Reading',
  outlining: 'Outlining the layers of',
  looking: 'Looking for thin sections in',
  gathering: 'Gathering what lies near the thin sections of',
} as const;

export function toolpathDoing(doing: keyof typeof DOING, name: string): string {
  return `${DOING[doing]} ${quoted(name)}`;
}

export const REFUSED_TOOLPATH = 'Refused: this toolpath cannot be read';

/** “2 lines of 0.42 mm”, “3 layers of 0.20 mm”. */
export function wantedSaid({ count, countOf, each }: WantedLaid, unit: LengthUnit): string {
  return `${counted(count, countOf === 'lines' ? 'equal line' : 'layer')} of ${lengthFigure(each, unit)}${unitAfter(unit)}`;
}

/** “2, 0.42” in a cell of the strip. */
export function laidShort({ audit, wanted }: JudgedPlace, unit: LengthUnit): string {
  const usual = new Map<number, number>();
  for (const { lines } of audit.layers) usual.set(lines.usual, (usual.get(lines.usual) ?? 0) + 1);
  const count = [...usual].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
  const what = counted(
    wanted.countOf === 'lines' ? count : audit.layers.length,
    wanted.countOf === 'lines' ? 'line' : 'layer',
  );
  return `${lengthFigure(meanThickness(audit.layers), unit)}, ${what}`;
}

function meanThickness(layers: JudgedPlace['audit']['layers']): Mm {
  const laid = layers.filter(({ thickness }) => thickness > 0);
  return laid.reduce((sum, { thickness }) => sum + thickness, 0) / Math.max(1, laid.length);
}

const FROM: Readonly<Record<PlaceFrom, string>> = {
  found: '',
  carried: ', carried over',
  drawn: ', your box',
};

/** “1, leaf”, “3, your box”. */
export function placeName(place: Pick<Place, 'number' | 'from' | 'flexure'>): string {
  const word = place.from === 'drawn' ? '' : `, ${placeWord(place)}`;
  return `${place.number}${word}${FROM[place.from]}`;
}

/** What the verdict's heading says after its word. */
const HEADS: Readonly<Record<Grade, Readonly<Record<WantedLaid['from'], string>>>> = {
  pass: { joint: 'laid as the joint wants', file: 'laid whole and equal' },
  caution: { joint: 'not quite as the joint wants', file: 'not quite whole and equal' },
  fail: { joint: 'not laid as the joint wants', file: 'not laid whole and equal' },
  beyond: { joint: '', file: '' },
};

export function laidHeading({ grade, wanted }: Pick<JudgedPlace, 'grade' | 'wanted'>): string {
  const head = HEADS[grade][wanted.from];
  return head === '' ? gradeWord(grade) : `${gradeWord(grade)}: ${head}`;
}

const GRADES: readonly Grade[] = ['fail', 'caution', 'beyond', 'pass'];
const TALLY: Readonly<Record<Grade, string>> = {
  fail: 'fail',
  caution: 'need caution',
  beyond: 'cannot be told',
  pass: 'pass',
};

/** “Of three sections one fails, two pass.” */
export function tallyText(judged: readonly JudgedPlace[]): string {
  const parts = GRADES.flatMap((grade) => {
    const count = judged.filter((one) => one.grade === grade).length;
    const says =
      count === 1
        ? TALLY[grade].replace(/^(fail|need|pass)/, (word) => (word === 'pass' ? 'passes' : `${word}s`))
        : TALLY[grade];
    return count === 0 ? [] : [`${inWords(count)} ${says}`];
  });
  return `Of ${inWords(judged.length)} sections ${listed(parts)}.`;
}

/** What must be known before anything else is believed. */
export function cautionsOf(
  { text, figures, isCut, looked }: CheckedToolpath<GcodeText>,
  name: string,
  isNearCut: boolean,
): readonly string[] {
  const last = text.badLines.some(({ line }) => line === text.lines && text.lines > 0);
  return [
    ...(last
      ? [`${quoted(name)} breaks off inside its last line, ${grouped(text.lines)}: what should follow is missing.`]
      : []),
    ...(figures.isCut
      ? [
          `It lays at more heights than are told apart; figures by layer are of the first ${grouped(figures.layers.length)}.`,
        ]
      : []),
    ...(looked.layers < looked.of && figures.pitch === undefined
      ? [
          `Thin sections were looked for in ${grouped(looked.layers)} of its ${grouped(looked.of)} layers, spread over its height.`,
        ]
      : []),
    ...(isCut ? ['Looking ended at its limit on work; there may be more thin sections.'] : []),
    ...(isNearCut ? ['More lies near one of the sections than is kept; its figures are of the first part.'] : []),
  ];
}

/** Of a file that moves and lays nothing, and of one in which nothing is thin. */
export function nothingText({ figures, thickest }: CheckedToolpath<GcodeText>, name: string, unit: LengthUnit) {
  if (figures.pitch !== undefined) {
    const says = `${quoted(name)} is laid as one spiral: one wall all round, thin everywhere, so that nothing in it tells what should bend. Draw a box round the place.`;
    return { head: 'A spiral: no thin section looked for', says, isLaid: true };
  }
  if (figures.box) {
    const says = `${quoted(name)} is nowhere ${setLength(thickest, unit)}${unitAfter(unit)} thick or thinner between two thicker bodies. If it should bend somewhere, say how thick to look for, or draw a box round the place.`;
    return { head: 'No thin section found', says, isLaid: true };
  }
  const moves = figures.travelMoves;
  const says =
    moves === 0
      ? `${quoted(name)} holds no moves of a printer.`
      : `${quoted(name)} moves ${grouped(moves)} times, but nothing is laid: this looks like a milling file. A printer’s file pushes filament on (E) while it moves.`;
  return { head: 'Nothing is laid', says, isLaid: false };
}

export function badLineText(why: GcodeText['badLines'][number]['why']): string {
  return {
    'no-word': 'no word of a letter and a number',
    'bad-number': 'a number that cannot be read',
    'bad-arc': 'an arc that does not go with its ends',
    'too-long': 'too long a line',
  }[why];
}

export function lookedWords(
  { looked, places, thickest, figures }: CheckedToolpath<GcodeText>,
  unit: LengthUnit,
): readonly string[] {
  const found = places.filter(({ place }) => place.from === 'found').length;
  const where =
    looked.layers === looked.of ? `all ${grouped(looked.of)}` : `${grouped(looked.layers)} of ${grouped(looked.of)}`;
  const solid = `outlines are drawn round their beads, and thin sections are looked for in the solid that ${where} make.`;
  const spiral = 'this one rises all along, and in such a wall no thin section is looked for.';
  return [
    `Layers are told by the heights at which something is laid, whatever lifts between; ${figures.pitch === undefined ? solid : spiral}`,
    `Called a thin section: at most ${setLength(thickest, unit)}${unitAfter(unit)} thick, between bodies at either end that are clearly thicker. ${found === 0 ? 'None' : capital(inWords(found))} found.`,
    'A line is as wide as its filament makes it at the height of its layer. The section is cut across every 0.25 mm along its length.',
    'Remarks in the file are not read: kinds of lines, widths and layers are taken from the moves alone.',
  ];
}

export const TOOLPATH_LABELS = {
  section: 'Thin section',
  against: 'Held against',
  diameter: 'Filament diameter',
  thickest: 'Thickest looked for',
} as const;

export const TOOLPATH_HINTS = {
  diameter: (next: string) => `1.75 or 2.85 mm mostly; next ${next}`,
  thickest: (next: string) => `the file is looked through again; next ${next}`,
} as const;

export const TOOLPATH_SAID = {
  against: (number: number, now: string, was: string) => `Number ${number} held against ${now}, was ${was}`,
  diameter: (now: string, was: string) => `Filament set to ${now}, was ${was}`,
  thickest: (now: string, was: string) => `Looked up to ${now} thick, was ${was}`,
} as const;

export const NO_JOINT = 'no joint of yours';

export const TOOLPATH_REPORT = {
  name: 'A report',
  aside: 'what is laid across each section, to keep or pass on; nothing is sent',
  open: 'Write the report',
  close: 'Close the report',
} as const;

/** How the brief goes on after what a section is held against. */
export const BRIEF_WORDS: Readonly<Record<WantedLaid['from'] | 'noStarts', string>> = {
  joint: 'which wants',
  file: 'so against what the file itself lays most:',
  noStarts: ' and no start points on it;',
};
