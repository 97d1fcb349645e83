/** Toolpaths checked as the page does it: text in, sections found and judged. */
import { auditPlace } from '../../src/core/inspect/toolpath/auditPlace.ts';
import type { CheckedToolpath } from '../../src/core/inspect/toolpath/checkedToolpath.ts';
import { judgePlace, wantedOfFile } from '../../src/core/inspect/toolpath/judgePlace.ts';
import type { JudgedPlace } from '../../src/core/inspect/toolpath/judgedPlace.ts';
import { bytesSource } from '../../src/files/gcode/byteSource.ts';
import { checkGcode, type ToolpathAsked } from '../../src/files/gcode/checkGcode.ts';
import type { GcodeText } from '../../src/files/gcode/gcodeText.ts';

const UNHEARD = { alive: () => undefined, say: () => undefined };

export async function checkText(
  text: string | Uint8Array,
  asked: Partial<ToolpathAsked> = {},
): Promise<CheckedToolpath<GcodeText>> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  const checked = await checkGcode(bytesSource(bytes), { thickest: 2.6, ...asked }, UNHEARD);
  if (!checked.ok) throw new Error(`refused: ${checked.problems[0].message}`);
  return checked.value;
}

/** Each section held against what its file lays most. */
export function judgeFound({ places, filament }: CheckedToolpath<GcodeText>): readonly JudgedPlace[] {
  return places.map(({ place, near }) => {
    const audit = auditPlace(place, near, filament.diameter);
    return judgePlace(place, audit, wantedOfFile(audit, place));
  });
}
