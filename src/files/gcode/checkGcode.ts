/** Everything that is told of a toolpath file: the page's worker and the terminal do it alike. */
import type { Found } from '../../core/inspect/findFlexures.ts';
import type { CheckedToolpath, LayerPlan, PlaceNear } from '../../core/inspect/toolpath/checkedToolpath.ts';
import { FiguresSink } from '../../core/inspect/toolpath/figuresSink.ts';
import { filamentOf } from '../../core/inspect/toolpath/filamentOf.ts';
import { findPlaces } from '../../core/inspect/toolpath/findPlaces.ts';
import { bandsOf, LayerPlans, usualHeight } from '../../core/inspect/toolpath/layerPlans.ts';
import { NearPaths } from '../../core/inspect/toolpath/nearPaths.ts';
import { Paths, type PathHandler } from '../../core/inspect/toolpath/paths.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { stack, type Slab } from '../../core/inspect/toolpath/slabs.ts';
import type { ToolpathFigures } from '../../core/inspect/toolpath/toolpathFigures.ts';
import { ok, type Result } from '../../core/result.ts';
import type { Mm } from '../../core/units.ts';
import type { ByteSource } from './byteSource.ts';
import type { GcodeText } from './gcodeText.ts';
import { scanGcode } from './scanGcode.ts';

export interface ToolpathAsked {
  /** Of the filament, as the user says [mm]. */
  readonly diameter?: Mm;
  /** The thickest that is looked for [mm], > 0. */
  readonly thickest: Mm;
  /** Drawn by the user, or carried over: gathered along with what is found, after it. */
  readonly boxes?: readonly Place[];
}

export type ToolpathDoing = 'reading' | 'outlining' | 'looking' | 'gathering';

export interface ToolpathHeard {
  /** Called every few milliseconds with the share that is done; may throw to give up. */
  readonly alive: (share: number) => void;
  /** Called at the beginning of each step, and whenever more thin sections have been found. */
  readonly say: (doing: ToolpathDoing, found: number) => void;
}

/** How far the whole work is at the end of each step; chosen by how long each takes for a part of a hundred layers. */
const READ = 0.25;
const OUTLINED = 0.55;
const LOOKED = 0.85;

/** Reads a toolpath with this filament, and puts its paths together. */
async function pass(
  source: ByteSource,
  diameter: Mm,
  handler: PathHandler,
  pitch: Mm | undefined,
  alive: (share: number) => void,
): Promise<Result<GcodeText>> {
  const paths = new Paths(handler, diameter, pitch);
  const text = await scanGcode(source, { filamentDiameter: diameter }, paths, alive);
  paths.end();
  return text;
}

interface Read {
  readonly text: GcodeText;
  readonly figures: ToolpathFigures;
  readonly diameter: CheckedToolpath<GcodeText>['filament'];
}

async function read(source: ByteSource, told: Mm | undefined, alive: (share: number) => void): Promise<Result<Read>> {
  const sink = new FiguresSink();
  const text = await scanGcode(source, { filamentDiameter: told ?? filamentOf({ layers: [] }).diameter }, sink, alive);
  if (!text.ok) return text;
  const figures = sink.end();
  return ok({ text: text.value, figures, diameter: filamentOf(figures, told) });
}

const planOf = ({ bottom, top, outlines }: Slab): LayerPlan => ({ z: top, bottom, outlines });

/**
 * Reads a toolpath and finds what lies across its thin sections. It is read three times, so that it never stands in memory.
 *
 * @param source - the file, read piece by piece
 * @param asked - filament [mm], what counts as thin [mm], and other places to look at
 * @param heard - hears how far it is, and what is being done
 * @returns text, figures and thin sections with what lies near each [mm]; or why it is no toolpath
 */
export async function checkGcode(
  source: ByteSource,
  asked: ToolpathAsked,
  { alive, say }: ToolpathHeard,
): Promise<Result<CheckedToolpath<GcodeText>>> {
  let done = 0;
  const within = (from: number, to: number) => (share: number) => {
    done = Math.max(done, from + (to - from) * share);
    alive(done);
  };
  say('reading', 0);
  const first = await read(source, asked.diameter, within(0, READ));
  if (!first.ok) return first;
  const { text, figures, diameter: filament } = first.value;
  const { diameter } = filament;
  const { pitch, layers } = figures;
  say('outlining', 0);
  const bands = bandsOf(layers, pitch);
  const outlined = new LayerPlans(bands, diameter, () => alive(done));
  const again = await pass(source, diameter, outlined, pitch, within(READ, OUTLINED));
  if (!again.ok) return again;
  const slabs = stack(outlined.end(), () => alive(done));
  say('looking', 0);
  const found: Found = (count) => say('looking', count);
  // A spiral is one wall all round, all of it thin: where something bends in it only the user can tell.
  const solid = pitch === undefined ? slabs : [];
  const thin = findPlaces(solid, asked.thickest, usualHeight(layers), within(OUTLINED, LOOKED), found);
  const places = [...thin.places, ...(asked.boxes ?? [])];
  say('gathering', thin.places.length);
  const near = await nearPlaces(source, diameter, places, pitch, within(LOOKED, 1));
  if (!near.ok) return near;
  return ok({
    text,
    figures,
    filament,
    places: near.value,
    passedOver: thin.passedOver,
    plans: slabs.map(planOf),
    looked: { layers: pitch === undefined ? bands.length : 0, of: layers.length },
    thickest: asked.thickest,
    isCut: thin.isCut,
  });
}

/**
 * What lies near places of a toolpath.
 *
 * @param source - the file, read piece by piece
 * @param diameter - of the filament [mm]
 * @param places - where to look [mm]
 * @param pitch - of a spiral, how much it rises a turn [mm]
 * @param alive - called every few milliseconds with the share that is done; may throw to give up
 * @returns the places with what lies near them, in their order; or why the file can no longer be read
 */
export async function nearPlaces(
  source: ByteSource,
  diameter: Mm,
  places: readonly Place[],
  pitch: Mm | undefined,
  alive: (share: number) => void,
): Promise<Result<readonly PlaceNear[]>> {
  if (places.length === 0) return ok([]);
  const near = new NearPaths(places);
  const again = await pass(source, diameter, near, pitch, alive);
  return again.ok ? ok(near.end()) : again;
}
