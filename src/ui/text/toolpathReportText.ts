/** The report on a toolpath: its figures, and of each thin section what is laid, what is wanted and what to change. */
import type { CheckedToolpath } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { JudgedPlace } from '../../core/inspect/toolpath/judgedPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';
import { bytesText } from './checkText.ts';
import type { LetterSaid } from './letterText.ts';
import { grouped, inWords, lengthFigure, MINUS, unitAfter, type LengthUnit } from './numbers.ts';
import { capital, plainly } from './said.ts';
import { changeSaid, laidText, rowName, wantedText } from './toolpathChangeText.ts';
import { figureRows, textRows } from './toolpathFactsText.ts';
import { findingSaid } from './toolpathFindingText.ts';
import { laidHeading, placeName, wantedSaid } from './toolpathText.ts';

interface Reported {
  readonly toolpath: CheckedToolpath<GcodeText>;
  readonly name: string;
  readonly bytes: number;
  readonly judged: readonly JudgedPlace[];
  readonly unit: LengthUnit;
}

function whereText({ run, bottom, top }: Place, unit: LengthUnit): string {
  const say = (value: number) => lengthFigure(value, unit, unit === 'mm' ? 1 : 3).replace('-', MINUS);
  const [first, last] = [run[0], run.at(-1)];
  const [x, y] = [((first?.x ?? 0) + (last?.x ?? 0)) / 2, ((first?.y ?? 0) + (last?.y ?? 0)) / 2];
  return `x ${say(x)}, y ${say(y)}, z ${say(bottom)} to ${say(top)}${unitAfter(unit)}`;
}

function heldText({ wanted, asLaid }: JudgedPlace, unit: LengthUnit): string {
  const against =
    wanted.from === 'joint' ? `the joint ${asLaid?.joint.name ?? ''}, which wants` : 'what the file itself lays most:';
  return `Held against ${against} ${wantedSaid(wanted, unit)} and no start points on it.`;
}

function itemOf(judged: JudgedPlace, unit: LengthUnit): LetterSaid['items'][number] {
  const findings = judged.findings.map((finding) => {
    const { said, more } = findingSaid(finding, judged, unit);
    return `${plainly(said)} ${more}`.trim();
  });
  const rows = judged.rows.map(
    (row) =>
      `${rowName(row, judged, unit)}: wanted ${wantedText(row, judged, unit)}, laid ${laidText(row, judged, unit)}.`,
  );
  const changes = judged.changes.map((change) => {
    const { head, does, costs } = changeSaid(change, judged, unit);
    return `${head}. ${does} ${costs}`;
  });
  return {
    title: `${placeName(judged.place)}, at ${whereText(judged.place, unit)}: ${laidHeading(judged)}`,
    is: [heldText(judged, unit), ...findings, ...rows],
    please: changes,
  };
}

/** The report in sentences, by its parts. */
export function toolpathReport({ toolpath, name, bytes, judged, unit }: Reported): LetterSaid {
  const rows = [...figureRows(toolpath, unit), ...textRows(toolpath)];
  const bad = toolpath.text.badLines.map(({ line, text }) => `Not understood, line ${grouped(line)}: ${text}`);
  return {
    heading: `What ${name} lays`,
    opening: [
      `${capital(inWords(judged.length))} thin ${judged.length === 1 ? 'section is' : 'sections are'} looked at; the file holds ${bytesText(bytes)}.`,
      ...rows.map(([of, value]) => `${of}: ${value}.`),
      ...bad,
    ],
    items: judged.map((one) => itemOf(one, unit)),
    closing: ['Widths are computed from the filament that is pushed on, not measured; a test print tells more.'],
  };
}
