/** `npm run -s inspect -- part.stl`: finds the thin sections of part files and toolpaths and prints one JSON document. */
import { checkPart, mendPart } from '../core/inspect/checkPart.ts';
import type { PrintedAs } from '../core/inspect/judged.ts';
import { checkProfile } from '../core/print/checkProfile.ts';
import type { Problem } from '../core/problems.ts';
import { MAX_FILE_BYTES } from '../files/mesh/meshLimits.ts';
import { readMesh } from '../files/mesh/readMesh.ts';
import { INSPECT_USAGE, readInspectArguments, type InspectAsked } from './inspectArguments.ts';
import { inspectReport } from './inspectReport.ts';
import { printDocument } from './printDocument.ts';
import { inspectToolpathFile, isToolpath } from './inspectToolpath.ts';
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

async function inspectFiles(asked: InspectAsked, as: PrintedAs) {
  const files: ({ readonly file: string } & (ReturnType<typeof inspectReport> | ReturnType<typeof toolpathReport>))[] =
    [];
  const problems: (Problem & { readonly file?: string })[] = [];
  for (const file of asked.files) {
    if (file !== '-' && (await isToolpath(file))) {
      const told = await inspectToolpathFile(file, asked);
      if (told.ok) files.push({ file, ...told.value });
      else problems.push(...told.problems.map((problem) => ({ file, ...problem })));
      continue;
    }
    // One after the other: standard input can be read only once, and the answers keep the order of the files.
    const read = await readInput(file, MAX_FILE_BYTES, (bytes) =>
      readMesh(bytes, file, (share) => showProgress(`reading ${file}, ${Math.round(100 * share)} %`)),
    );
    if (!read.ok) {
      problems.push(...read.problems.map((problem) => ({ file, ...problem })));
      continue;
    }
    showProgress(`looking through ${file}`);
    const part = checkPart(mendPart(read.value, asked.unit), asked.thickest);
    files.push({ file, ...inspectReport(part, as) });
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
