/** `npm run -s inspect -- part.stl`: finds the thin sections of part files and toolpaths and prints one JSON document. */
import { checkPart, mendPart } from '../core/inspect/checkPart.ts';
import type { PrintedAs } from '../core/inspect/judged.ts';
import { checkProfile } from '../core/print/checkProfile.ts';
import type { Problem } from '../core/problems.ts';
import { ok, type Result } from '../core/result.ts';
import { bytesSource } from '../files/gcode/byteSource.ts';
import { saysGcode } from '../files/gcode/notGcode.ts';
import { MAX_FILE_BYTES } from '../files/mesh/meshLimits.ts';
import { readMesh } from '../files/mesh/readMesh.ts';
import { INSPECT_USAGE, readInspectArguments, type InspectAsked } from './inspectArguments.ts';
import { inspectReport } from './inspectReport.ts';
import { printDocument } from './printDocument.ts';
import { inspectToolpath, inspectToolpathFile, isToolpath } from './inspectToolpath.ts';
import { clearProgress, showProgress } from './progress.ts';
import { readInput } from './readInput.ts';
import type { toolpathReport } from './toolpathReport.ts';

const HEADER = {
  format: 'bendbook-inspection',
  version: 1,
  units: { length: 'mm', area: 'mm²', volume: 'mm³', angle: '°' },
} as const;

function printedAs({ lineWidth, layerHeight, nozzle }: InspectAsked): PrintedAs {
  return {
    scale: 1,
    up: '+z',
    profile: {
      nozzle,
      lineWidth,
      layerHeight,
      firstLayerHeight: layerHeight,
      lying: 'flat',
      fitRule: 'nominal',
      filament: 'petg',
    },
  };
}

type Told = ReturnType<typeof inspectReport> | ReturnType<typeof toolpathReport>;

/** A toolpath of the disk never stands in memory; everything else is read whole. */
async function inspectFile(file: string, asked: InspectAsked, as: PrintedAs): Promise<Result<Told>> {
  if (file !== '-' && (await isToolpath(file))) return inspectToolpathFile(file, asked);
  const read = await readInput(file, MAX_FILE_BYTES, ok);
  if (!read.ok) return read;
  if (saysGcode(read.value)) return inspectToolpath(file, bytesSource(read.value), asked);
  const mesh = readMesh(read.value, file, (share) => showProgress(`reading ${file}, ${Math.round(100 * share)} %`));
  if (!mesh.ok) return mesh;
  showProgress(`looking through ${file}`);
  return ok(inspectReport(checkPart(mendPart(mesh.value, asked.unit), asked.thickest), as));
}

async function inspectFiles(asked: InspectAsked, as: PrintedAs) {
  const files: ({ readonly file: string } & Told)[] = [];
  const problems: (Problem & { readonly file?: string })[] = [];
  for (const file of asked.files) {
    // One after the other: standard input can be read only once, and the answers keep the order of the files.
    const told = await inspectFile(file, asked, as);
    if (told.ok) files.push({ file, ...told.value });
    else problems.push(...told.problems.map((problem) => ({ file, ...problem })));
  }
  return { files, problems };
}

async function main(given: readonly string[]): Promise<number> {
  const asked = readInspectArguments(given);
  if (!asked) {
    process.stderr.write(INSPECT_USAGE);
    return 2;
  }
  const as = printedAs(asked);
  const profile = checkProfile(as.profile);
  const { files, problems } =
    profile.problems.length > 0 ? { files: [], problems: profile.problems } : await inspectFiles(asked, as);
  clearProgress();
  const { lineWidth, layerHeight, nozzle } = as.profile;
  const print = { line_width_mm: lineWidth, layer_height_mm: layerHeight, nozzle_mm: nozzle, notes: profile.notes };
  await printDocument({ ...HEADER, print, files, problems });
  return problems.length > 0 ? 1 : 0;
}

process.exitCode = await main(process.argv.slice(2));
