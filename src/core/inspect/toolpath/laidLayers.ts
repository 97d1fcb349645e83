/** Which of what lies near a thin section is one layer, and how high each layer is there. */
import { laidWidth } from '../../print/bead.ts';
import type { Mm } from '../../units.ts';
import type { Near, NearPath } from './near.ts';
import type { Place } from './place.ts';

/** Paths whose heights differ by no more than this share of a layer are one layer [-]. */
const SAME_LAYER = 0.25;
/** A step of more layers than this over what lies below leaves something out [-]: a layer that is half as high again is still one. */
const SKIPS = 1.9;
/** No more layers than this are added in which nothing is laid: what lies near is then not of one body. */
const MOST_SKIPPED = 2000;

/** What is laid at one height near a section. */
export interface NearLayer {
  /** From 1 at the bottom. */
  readonly layer: number;
  readonly z: Mm;
  readonly height: Mm;
  readonly paths: readonly NearPath[];
}

interface Level {
  readonly z: Mm;
  readonly height: Mm;
  readonly paths: readonly NearPath[];
}

/** Stretches of one path are at one height; those of a turn of a spiral rise, and count as its middle. */
function levelsOfPaths(paths: readonly NearPath[]): Level[] {
  const byPath = new Map<number, NearPath[]>();
  for (const path of paths) {
    const known = byPath.get(path.path);
    if (known) known.push(path);
    else byPath.set(path.path, [path]);
  }
  return [...byPath.values()].map((stretches) => {
    let [low, high, height] = [Infinity, -Infinity, Infinity];
    for (const one of stretches) {
      low = Math.min(low, one.z);
      high = Math.max(high, one.z);
      height = Math.min(height, one.height);
    }
    return { z: (low + high) / 2, height, paths: stretches };
  });
}

function merged(levels: readonly Level[]): Level[] {
  const groups: Level[][] = [];
  for (const level of levels.toSorted((a, b) => a.z - b.z)) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    if (group && last && level.z - last.z <= SAME_LAYER * Math.min(level.height, last.height)) group.push(level);
    else groups.push([level]);
  }
  return groups.map((group) => ({
    z: group.at(-1)!.z,
    height: Math.min(...group.map(({ height }) => height)),
    paths: group.flatMap(({ paths }) => paths),
  }));
}

/** Heights between two layers in which nothing is laid. */
function skipped(below: Mm, { z, height }: Level): readonly Level[] {
  const count = Math.round((z - below) / height) - 1;
  if (!(count > 0) || count > MOST_SKIPPED) return [];
  const room = z - height - below;
  return Array.from({ length: count }, (_, i) => ({
    z: below + ((i + 1) * room) / count,
    height: room / count,
    paths: [],
  }));
}

/**
 * The layers of a section, from the bottom up.
 *
 * A layer is as high as it stands over the layer below it here. Where that is more than nearly two of its own, something in
 * between was not laid: it is then as high as over what was laid before it anywhere, and layers without anything are put in.
 *
 * @param place - bottom and top [mm]
 * @param near - what lies near it [mm]
 * @returns layers [mm]
 */
export function nearLayers({ bottom, top }: Place, near: Near): readonly NearLayer[] {
  const isWithin = ({ z, height }: Level) => z - height / 2 > bottom && z - height / 2 < top;
  const levels = merged(levelsOfPaths(near.paths).filter(isWithin));
  const all = levels.flatMap((level, i): readonly Level[] => {
    const below = levels[i - 1]?.z;
    const step = below === undefined ? level.height : level.z - below;
    if (below === undefined || step > SKIPS * level.height) {
      return [...(below === undefined ? [] : skipped(below, level)), level];
    }
    return [{ ...level, height: step }];
  });
  return all.map((level, i) => ({ layer: i + 1, ...level }));
}

/**
 * What lies near a section in one of its layers.
 *
 * @param place - the section [mm]
 * @param near - what lies near it [mm]
 * @param layer - its number [-], from 1 at the bottom
 * @returns paths in the order laid
 */
export function pathsIn(place: Place, near: Near, layer: number): readonly NearPath[] {
  return nearLayers(place, near)[layer - 1]?.paths ?? [];
}

/**
 * Widths of the pieces of a path.
 *
 * @param path - what is laid [-]
 * @param height - of its layer at the section [mm], > 0
 * @param diameter - of the filament [mm], > 0
 * @returns widths [mm], one a piece
 *
 * Source: bead-section.
 */
export function pieceWidths({ feeds }: Pick<NearPath, 'feeds'>, height: Mm, diameter: Mm): Float64Array {
  return feeds.map((feed) => laidWidth(diameter, feed, height));
}
