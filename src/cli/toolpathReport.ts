/** What the terminal tells of a toolpath: plain numbers in mm. */
import type { LayerLaid, PathEnd, Span } from '../core/inspect/toolpath/audit.ts';
import { auditPlace } from '../core/inspect/toolpath/auditPlace.ts';
import type { CheckedToolpath, PlaceNear } from '../core/inspect/toolpath/checkedToolpath.ts';
import { judgePlace, wantedOfFile } from '../core/inspect/toolpath/judgePlace.ts';
import type { LaidFinding } from '../core/inspect/toolpath/judgedPlace.ts';
import type { ToolpathFigures } from '../core/inspect/toolpath/toolpathFigures.ts';
import type { Mm } from '../core/units.ts';
import type { GcodeText } from '../files/gcode/gcodeText.ts';

/** A micrometre is more than any printer, and than most files, can mean. */
const DECIMALS = 4;
const shown = (value: number) => Number(value.toFixed(DECIMALS));
const span = ({ least, most }: Span) => [shown(least), shown(most)];
const flat = ({ x, y }: { readonly x: Mm; readonly y: Mm }) => [shown(x), shown(y)];

function textReport(text: GcodeText) {
  const { bytes, lines, commands, moves, isEver, badLines } = text;
  return {
    bytes,
    lines,
    commands,
    moves: { g0: moves[0], g1: moves[1], g2: moves[2], g3: moves[3], without_a_word: text.modal },
    uses: {
      inches: isEver.inch,
      relative_moves: isEver.relative,
      relative_feed: isEver.relativeFeed,
      absolute_feed: isEver.absoluteFeed,
      volumetric_feed: isEver.volumetric,
      another_flow: isEver.flow,
    },
    numbered_lines: text.numbered,
    checksums: text.checksums,
    wrong_checksums: text.badChecksums,
    resets: text.resets,
    feed_resets: text.feedResets,
    firmware_retractions: text.firmwareRetractions,
    firmware_restores: text.firmwareRestores,
    tools: text.tools,
    tool_changes: text.toolChanges,
    named_commands: text.named,
    lines_not_understood: text.bad,
    the_first_of_them: badLines.map(({ line, text: says, why }) => ({ line, text: says, why })),
  };
}

function figuresReport(figures: ToolpathFigures) {
  const { box, layers, byTool, pitch } = figures;
  const heights = [...new Set(layers.map(({ height }) => shown(height)))].toSorted((a, b) => a - b);
  return {
    printing_moves: figures.printingMoves,
    travel_moves: figures.travelMoves,
    feed_only_moves: figures.feedOnlyMoves,
    retractions: figures.retractions,
    printing_length_mm: shown(figures.printingLength),
    travel_length_mm: shown(figures.travelLength),
    filament_mm: shown(figures.filament),
    filament_by_tool_mm: Object.fromEntries(byTool.map(({ tool, filament }) => [tool, shown(filament)])),
    feed_forward_mm: shown(figures.feedForward),
    feed_net_mm: shown(figures.feedNet),
    feed_on_printing_moves_mm: shown(figures.filamentOnMoves),
    heights: figures.heights,
    layers: layers.length,
    layer_heights_mm: heights.slice(0, 50),
    spiral_pitch_mm: pitch === undefined ? null : shown(pitch),
    z_first_mm: layers[0] ? shown(layers[0].z) : null,
    z_last_mm: box ? shown(box.max.z) : null,
    box_mm: box ? { min: [...flat(box.min), shown(box.min.z)], max: [...flat(box.max), shown(box.max.z)] } : null,
    is_cut_short: figures.isCut,
  };
}

const endReport = ({ point, at, off, line }: PathEnd) => ({
  at_mm: flat(point),
  along_mm: shown(at),
  off_mm: shown(off),
  text_line: line,
});

function layerReport(layer: LayerLaid) {
  const { lines, widths, open } = layer;
  return {
    layer: layer.layer,
    z_mm: shown(layer.z),
    height_mm: shown(layer.height),
    lines_across: { least: lines.least, most: lines.most, usual: lines.usual },
    widths_mm: widths ? { least: shown(widths.least), mean: shown(widths.mean), most: shown(widths.most) } : null,
    thickness_mm: shown(layer.thickness),
    open_places: open.map(({ from, to, width, kind }) => ({
      along_mm: [shown(from), shown(to)],
      width_mm: shown(width),
      kind,
    })),
    pressed: { most_mm: shown(layer.pressed.most), share: shown(layer.pressed.share) },
    starts: layer.starts.map(endReport),
    stops: layer.stops.map(endReport),
    runs_along: shown(layer.along),
    travel_crossings: layer.crossings,
    lifted_crossings: layer.lifted,
  };
}

function findingReport(finding: LaidFinding) {
  const { kind, grade, layers, count, widths, at, lines, share, places, broken, lifted, textLines } = finding;
  return {
    what: kind,
    grade,
    layers,
    layer_count: count,
    ...(places !== undefined && { places }),
    ...(widths && { widths_mm: span(widths) }),
    ...(at && { along_mm: span(at) }),
    ...(lines && { lines: span(lines) }),
    ...(share !== undefined && { share: shown(share) }),
    ...(broken && { broken_in_layers: broken }),
    ...(lifted !== undefined && { lifted }),
    ...(textLines && { text_lines: textLines }),
  };
}

function placeReport({ place, near }: PlaceNear, diameter: Mm) {
  const audit = auditPlace(place, near, diameter);
  const { wanted, grade, findings } = judgePlace(place, audit, wantedOfFile(audit, place));
  const { flexure } = place;
  return {
    number: place.number,
    kind: flexure?.kind ?? null,
    lying: place.lying,
    run_mm: [place.run[0], place.run.at(-1)].flatMap((end) => (end ? [flat(end)] : [])),
    length_mm: shown(audit.length),
    thickness_mm: shown(place.thickness),
    depth_mm: flexure ? shown(flexure.depth) : shown(place.top - place.bottom),
    bottom_mm: shown(place.bottom),
    top_mm: shown(place.top),
    most_laid: { count: wanted.count, of: wanted.countOf, each_mm: shown(wanted.each) },
    grade,
    findings: findings.map(findingReport),
    layers: audit.layers.map(layerReport),
    is_cut_short: near.isCut,
  };
}

/**
 * A toolpath as the terminal tells it.
 *
 * @param toolpath - as checked [mm]
 * @returns plain data [mm]
 */
export function toolpathReport(toolpath: CheckedToolpath<GcodeText>) {
  const { text, figures, filament, places, passedOver, looked, thickest, isCut } = toolpath;
  return {
    format: 'G-code',
    text: textReport(text),
    figures: figuresReport(figures),
    filament_diameter: { read_as_mm: filament.diameter, by: filament.by },
    thickest_mm: shown(thickest),
    layers_looked_through: looked.layers,
    flexures: places.map((place) => placeReport(place, filament.diameter)),
    passed_over: passedOver.map(({ why, thickness, at }) => ({
      why,
      thickness_mm: shown(thickness),
      at_mm: [...flat(at), shown(at.z)],
    })),
    is_cut_short: isCut,
  };
}
