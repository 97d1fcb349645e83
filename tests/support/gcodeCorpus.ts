/** Toolpath files that lie beside the project, and what a reader in another language measured of each. */
import { existsSync, readFileSync } from 'node:fs';

const CORPUS = new URL('../../../shared/corpus/', import.meta.url);

type Three = readonly [number, number, number];

/** Lengths in mm, printed with four decimals, filament with five. */
export interface GcodeMeasured {
  readonly lines: number;
  readonly commands: number;
  readonly moves_G0: number;
  readonly moves_G1: number;
  readonly arcs_G2: number;
  readonly arcs_G3: number;
  readonly printing_moves: number;
  readonly travel_moves: number;
  readonly e_only_moves: number;
  readonly retractions: number;
  readonly firmware_retract_G10: number;
  readonly firmware_restore_G11: number;
  readonly G92_resets: number;
  readonly G92_E_resets: number;
  readonly tool_changes: number;
  readonly inch_mode_seen: boolean;
  readonly relative_axes_seen: boolean;
  readonly relative_e_seen: boolean;
  readonly absolute_e_seen: boolean;
  readonly volumetric_seen: boolean;
  readonly modal_lines: number;
  readonly checksummed_lines: number;
  readonly numbered_lines: number;
  readonly bad_arcs: number;
  readonly unknown_lines: number;
  readonly printing_length_mm: number;
  readonly travel_length_mm: number;
  readonly filament_mm: number;
  readonly e_forward_mm: number;
  readonly e_net_mm: number;
  readonly e_on_printing_moves_mm: number;
  readonly layers_by_z: number;
  readonly z_first: number | null;
  readonly z_last: number | null;
  readonly tools: readonly number[];
  readonly filament_mm_by_tool: Readonly<Record<string, number>>;
  readonly printing_bbox_min: Three | null;
  readonly printing_bbox_max: Three | null;
}

export interface GcodeFile {
  readonly file: string;
  readonly measured: GcodeMeasured;
}

/** How many there are where the collection is beside the project. */
export const ALL_GCODE = 14;

/** None where it is not. */
export function gcodeCorpus(): readonly GcodeFile[] {
  const manifest = new URL('MANIFEST.json', CORPUS);
  if (!existsSync(manifest)) return [];
  const { files } = JSON.parse(readFileSync(manifest, 'utf8')) as { readonly files: readonly GcodeFile[] };
  return files.filter(({ file }) => file.startsWith('gcode/'));
}

export const gcodeBytes = (file: string): Uint8Array => new Uint8Array(readFileSync(new URL(file, CORPUS)));
