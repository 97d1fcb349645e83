/** Tells the figures of a toolpath file and of its thin sections. */
import { fail, ok, type Result } from '../core/result.ts';
import type { ByteSource } from '../files/gcode/byteSource.ts';
import { checkGcode, type ToolpathDoing } from '../files/gcode/checkGcode.ts';
import { saysGcode } from '../files/gcode/notGcode.ts';
import { fileSource } from './fileSource.ts';
import type { InspectAsked } from './inspectArguments.ts';
import { showProgress } from './progress.ts';
import { toolpathReport } from './toolpathReport.ts';

/** Text enough to tell by: some files begin with a picture in comments [bytes]. */
const HEAD = 65_536;
const DOING: Readonly<Record<ToolpathDoing, string>> = {
  reading: 'reading',
  outlining: 'drawing the layers of',
  looking: 'looking through',
  gathering: 'gathering what lies at thin sections of',
};

/** Whether a file of the disk is a toolpath; standard input, which can be read only once, is told by whoever reads it. */
export async function isToolpath(path: string): Promise<boolean> {
  try {
    const source = fileSource(path);
    const head = await source.read(0, Math.min(HEAD, source.size));
    source.close();
    return saysGcode(head);
  } catch {
    return false;
  }
}

/** Checks a toolpath that is read piece by piece. */
export async function inspectToolpath(
  name: string,
  source: ByteSource,
  { thickest, filament }: Pick<InspectAsked, 'thickest' | 'filament'>,
): Promise<Result<ReturnType<typeof toolpathReport>>> {
  let says = DOING.reading;
  const asked = { thickest, ...(filament !== undefined && { diameter: filament }) };
  const checked = await checkGcode(source, asked, {
    alive: (share) => showProgress(`${says} ${name}, ${Math.round(100 * share)} %`),
    say: (doing) => {
      says = DOING[doing];
    },
  });
  return checked.ok ? ok(toolpathReport(checked.value)) : checked;
}

/** The same of a file of the disk. */
export async function inspectToolpathFile(
  path: string,
  asked: InspectAsked,
): Promise<Result<ReturnType<typeof toolpathReport>>> {
  let source;
  try {
    source = fileSource(path);
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unknown reason';
    return fail({ code: 'unreadable', message: `The file cannot be opened: ${reason}` });
  }
  try {
    return await inspectToolpath(path, source, asked);
  } finally {
    source.close();
  }
}
