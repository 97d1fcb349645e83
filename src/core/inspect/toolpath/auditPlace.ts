/** Tells what is laid across a thin section. */
import type { Mm } from '../../units.ts';
import type { LayerLaid, PlaceAudit } from './audit.ts';
import { cutLayer, type Crossing, type LayerCut } from './cutLayer.ts';
import { nearLayers, type NearLayer } from './laidLayers.ts';
import type { Near } from './near.ts';
import { openPlaces, type Looked } from './openPlaces.ts';
import { pathEnds } from './pathEnds.ts';
import type { Place } from './place.ts';
import { pressedIn } from './pressed.ts';
import { runFrame, type RunFrame } from './runFrame.ts';
import { addWidths, isOnSection, sectionCuts, widthAcross } from './sectionCuts.ts';
import { spanOf } from './span.ts';
import { tracksOf } from './tracks.ts';
import { travelCrossings, type Crossed } from './travelCrossings.ts';

/** Taken for a line where nothing is laid that could tell [mm]. Common practice, no source. */
const USUAL_LINE: Mm = 0.42;
/** Half a usual line: middles of lines that lie so far outside what was drawn tell of it still [mm]. */
const HALF_LINE: Mm = 0.2;
/** Fillets are left out of where lines are counted, but never more than this share of the run at either end [-]. */
const MOST_OF_FILLET = 1 / 3;

/** So many layers, spread over the height, tell how wide lines usually are [-]. */
const LAYERS_ASKED = 24;

/** How wide lines of the section usually are: the middle of all widths at all cuts of some layers. */
function usualLine(layers: readonly NearLayer[], cut: (layer: NearLayer) => LayerCut, reach: Mm): Mm {
  const laid = layers.filter(({ paths }) => paths.length > 0);
  const every = Math.max(1, laid.length / LAYERS_ASKED);
  const widths: number[] = [];
  for (let i = 0; i < laid.length; i += every) {
    for (const { crossings } of cut(laid[Math.floor(i)]!).walks) {
      for (const { off, width } of crossings) if (Math.abs(off) <= reach / 2 + HALF_LINE) widths.push(width);
    }
  }
  const sorted = Float64Array.from(widths).toSorted();
  return sorted[sorted.length >> 1] ?? USUAL_LINE;
}

/** Stations at which whole lines are asked for: not in the fillets of a flat one, nor where the lines of an upright one turn back. */
function looked({ lying, flexure, reach }: Place, { length, step, stations }: RunFrame, line: Mm): Looked {
  const most = MOST_OF_FILLET * length;
  const fillets = flexure && lying === 'flat' ? flexure.roots.map(({ fillet }) => fillet) : [];
  const margin = lying === 'upright' ? line : Math.max(0, ...fillets);
  const skipped = Math.min(Math.ceil(Math.min(most, margin) / step - 1e-9), (stations.length - 1) >> 1);
  return { first: skipped, end: stations.length - skipped, reach };
}

interface Section {
  readonly frame: RunFrame;
  readonly looked: Looked;
  readonly line: Mm;
  readonly diameter: Mm;
}

/** The value that most have; of equals the greatest. */
function usual(counts: readonly number[]): number {
  const often = new Map<number, number>();
  for (const count of counts) often.set(count, (often.get(count) ?? 0) + 1);
  return [...often].toSorted((a, b) => b[1] - a[1] || b[0] - a[0])[0]?.[0] ?? 0;
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function layerOf(layer: NearLayer, cut: LayerCut, crossed: Crossed, section: Section): LayerLaid {
  const { frame, looked: where, line, diameter } = section;
  const { reach, first, end } = where;
  const cuts = sectionCuts(cut, reach, line);
  const asked = cuts.slice(first, end);
  const counts = asked.map(({ count }) => count);
  const widths: number[] = [];
  for (const one of asked) addWidths(one, widths);
  const spread = spanOf(widths);
  const across = asked.filter(({ count }) => count > 0).map(widthAcross);
  const isOn = ({ off, station }: Crossing) => station >= first && station < end && isOnSection(off, reach, line);
  return {
    layer: layer.layer,
    z: layer.z,
    height: layer.height,
    // However much is left out for fillets, there is a cut at least.
    lines: { ...spanOf(counts)!, usual: usual(counts) },
    ...(spread && { widths: { ...spread, mean: mean(widths) } }),
    thickness: across.length > 0 ? mean(across) : 0,
    tracks: tracksOf(cut.walks, isOn, frame),
    open: openPlaces(cuts, frame, where),
    pressed: pressedIn(asked, layer.height),
    ...pathEnds(frame, layer, { reach, line, diameter, margin: first * frame.step }),
    along: cut.length > 0 ? cut.along / cut.length : 0,
    ...crossed,
  };
}

/**
 * What is laid across a thin section, layer by layer.
 *
 * Its run is cut square to it at stations at most 0.25 mm apart and never fewer than twelve. A line lies there where its middle
 * meets the cut, within half a line of what was drawn, and runs along the section to within 46°; its width is what its filament
 * makes it at the height of its layer here. Where no line runs along, beads that cover the cut are counted instead: those
 * that hang together once. Two beads touch as far as they cover the cut together, seen from above. In fillets, where lines
 * part as they should, nothing is counted; nor within a line of the free ends of an upright section.
 *
 * Of a crease the run goes from root to root as well, and lines lie beside one another over its depth.
 *
 * @param place - where to look [mm]
 * @param near - what lies near it [mm]
 * @param diameter - of the filament [mm], > 0
 * @returns layers from the bottom up [mm]; none where the run has no length or nothing lies near
 *
 * Source: bead-section, common-practice.
 */
export function auditPlace(place: Place, near: Near, diameter: Mm): PlaceAudit {
  const frame = runFrame(place.run);
  if (!frame) return { length: 0, layers: [] };
  const layers = nearLayers(place, near);
  const cut = (layer: NearLayer) => cutLayer(frame, place.reach, layer, diameter);
  const line = usualLine(layers, cut, place.reach);
  const crossed = travelCrossings(frame, { reach: place.reach, line }, layers, near.travels);
  const section: Section = { frame, looked: looked(place, frame, line), line, diameter };
  return {
    length: frame.length,
    layers: layers.map((layer, i) => layerOf(layer, cut(layer), crossed[i]!, section)),
  };
}
