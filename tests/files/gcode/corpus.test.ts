/** Toolpaths as programs write them, against what a reader in another language measured of each. */
import { describe, expect, it } from 'vitest';
import { expectClose, type Allowance } from '../../support/close.ts';
import { ALL_GCODE, gcodeBytes, gcodeCorpus, type GcodeMeasured } from '../../support/gcodeCorpus.ts';
import { readGcode, type ReadGcode } from '../../support/readGcode.ts';

const FILES = gcodeCorpus();
if (FILES.length === 0)
  console.log(`corpus: skipped ${ALL_GCODE} toolpaths, the collection of files is not beside the project`);

/** Everything that is counted, by the names of the other reader. */
function counted({ text, figures }: ReadGcode): Partial<GcodeMeasured> {
  const [moves_G0, moves_G1, arcs_G2, arcs_G3] = text.moves;
  return {
    lines: text.lines,
    commands: text.commands,
    moves_G0,
    moves_G1,
    arcs_G2,
    arcs_G3,
    printing_moves: figures.printingMoves,
    travel_moves: figures.travelMoves,
    e_only_moves: figures.feedOnlyMoves,
    retractions: figures.retractions,
    firmware_retract_G10: text.firmwareRetractions,
    firmware_restore_G11: text.firmwareRestores,
    G92_resets: text.resets,
    G92_E_resets: text.feedResets,
    tool_changes: text.toolChanges,
    inch_mode_seen: text.isEver.inch,
    relative_axes_seen: text.isEver.relative,
    relative_e_seen: text.isEver.relativeFeed,
    absolute_e_seen: text.isEver.absoluteFeed,
    volumetric_seen: text.isEver.volumetric,
    modal_lines: text.modal,
    checksummed_lines: text.checksums,
    numbered_lines: text.numbered,
    bad_arcs: text.badLines.filter(({ why }) => why === 'bad-arc').length,
    unknown_lines: text.bad,
    layers_by_z: figures.heights,
    tools: text.tools,
  };
}

/**
 * Centres are rounded, so that the two ends of an arc are not as far from it: ours is as long as their mean tells, the other
 * reader's as the start tells. Worked out apart from either, that makes 0.0076 mm of 65 m in one file, 0.0006 of 83 m in another.
 */
function lengthOf({ arcs_G2: clockwise, arcs_G3: counter }: GcodeMeasured, printed: number): Allowance {
  if (clockwise + counter === 0) return { printedTo: 4 };
  const because = 'four printed places, and the mean radius of an arc against the one at its start';
  return { abs: 0.000_05 + 1.2e-7 * printed, because };
}

function expectLengths({ figures }: ReadGcode, measured: GcodeMeasured): void {
  expectClose(figures.printingLength, measured.printing_length_mm, lengthOf(measured, measured.printing_length_mm));
  expectClose(figures.travelLength, measured.travel_length_mm, lengthOf(measured, measured.travel_length_mm));
  const filament: Allowance = { printedTo: 5 };
  expectClose(figures.filament, measured.filament_mm, filament);
  expectClose(figures.feedForward, measured.e_forward_mm, filament);
  expectClose(figures.feedNet, measured.e_net_mm, filament);
  expectClose(figures.filamentOnMoves, measured.e_on_printing_moves_mm, filament);
  const ofTools = figures.byTool.map(({ tool, filament: used }) => [String(tool), used] as const);
  expect(ofTools.map(([tool]) => tool)).toEqual(Object.keys(measured.filament_mm_by_tool));
  for (const [tool, used] of ofTools) expectClose(used, measured.filament_mm_by_tool[tool]!, { printedTo: 4 });
}

function expectBox({ figures }: ReadGcode, measured: GcodeMeasured): void {
  const { box, layers } = figures;
  if (!box) {
    expect([measured.printing_bbox_min, measured.z_first]).toEqual([null, null]);
    return;
  }
  const hasArcs = measured.arcs_G2 + measured.arcs_G3 > 0;
  const flat: Allowance = hasArcs
    ? { abs: 0.00506, because: 'the other reader goes round the arc, ours takes chords within 5 µm; printed to 0.1 µm' }
    : { printedTo: 4 };
  for (const [place, printed] of [
    [box.min, measured.printing_bbox_min!],
    [box.max, measured.printing_bbox_max!],
  ] as const) {
    expectClose(place.x, printed[0], flat);
    expectClose(place.y, printed[1], flat);
    expectClose(place.z, printed[2], { printedTo: 4 });
  }
  expectClose(layers[0]!.z, measured.z_first!, { printedTo: 3 });
  expectClose(box.max.z, measured.z_last!, { printedTo: 3 });
}

describe(`toolpaths beside the project (${FILES.length}, ${ALL_GCODE - FILES.length} skipped)`, () => {
  it.skipIf(FILES.length === 0)('are as many as there were', () => expect(FILES.length).toBe(ALL_GCODE));

  it.each(FILES)('$file', ({ file, measured }) => {
    const read = readGcode(gcodeBytes(file));
    const mine = counted(read);
    const names = Object.keys(mine) as (keyof GcodeMeasured)[];
    expect(mine).toEqual(Object.fromEntries(names.map((name) => [name, measured[name]])));
    expectLengths(read, measured);
    expectBox(read, measured);
    expect(read.text.bytes).toBe(gcodeBytes(file).length);
  });
});

const read = (name: string) => readGcode(gcodeBytes(`gcode/${name}.gcode`));

describe.skipIf(FILES.length === 0)('traps in them', () => {
  it('one print as lines and with arcs fitted within 0.05 mm is as long, takes as much filament and has the same layers', () => {
    const [lines, arcs] = [read('boat-lines').figures, read('boat-arcs').figures];
    const fitted = 'the notes of the collection: filament equal, length within 0.01 %';
    expectClose(arcs.printingLength, lines.printingLength, { rel: 1e-4, because: fitted });
    expectClose(arcs.filament, lines.filament, { rel: 1e-9, because: 'round-off of sums of some ten thousand moves' });
    expect(arcs.layers.map(({ z }) => z)).toEqual(lines.layers.map(({ z }) => z));
    for (const [i, { laid, length }] of arcs.layers.entries()) {
      const same = lines.layers[i]!;
      expectClose(laid, same.laid, { rel: 1e-9, because: 'round-off' });
      expectClose(length, same.length, { rel: 2e-3, because: 'arcs fitted within 0.05 mm; short layers differ most' });
    }
  });

  it('a spiral has turns as high as it rises from turn to turn, not sixteen thousand layers', () => {
    const { figures, moves } = read('ripple-vase-scripted');
    expect(figures.heights).toBe(16_766);
    const climbing = moves.filter(({ z, feed }, i) => feed > 0 && i > 0 && z > moves[i - 1]!.z);
    const angles = climbing.map(({ x, y }) => Math.atan2(y - 50, x - 60));
    const turned = angles.slice(1).reduce((sum, angle, i) => {
      const step = angle - angles[i]!;
      return sum + step - 2 * Math.PI * Math.round(step / (2 * Math.PI));
    }, 0);
    const pitch = (climbing.at(-1)!.z - climbing[0]!.z) / (Math.abs(turned) / (2 * Math.PI));
    expectClose(figures.pitch!, pitch, {
      rel: 0.005,
      because: 'where it comes round is told to half a piece, of a hundred',
    });
    expect(figures.layers.length).toBe(Math.ceil((60.0444 - 0.288) / figures.pitch!));
    expect(figures.layers.every(({ height }) => height === figures.pitch)).toBe(true);
  });

  it('a circle of half an inch in four quarters without a word for how', () => {
    const { text, moves } = read('circle-inch');
    const arcs = moves.filter(({ flags }) => flags & 2);
    const round = arcs.reduce((sum, { length }) => sum + length, 0);
    expect(text.modal).toBe(5);
    expectClose(round, Math.PI * 25.4, { rel: 1e-12, because: 'round-off' });
  });

  it('a thread by radius: quarters of a circle that climb', () => {
    const { moves } = read('helical-inch-radius');
    const inches = [0.0939, 0.1179, 0.1185, 0.1191, 0.1196, 0.1202, 0.1207, 0.1213, 0.1218, 0.0975];
    // Ends as far in x as in y as the radius: a quarter, which climbs 0.0179 inches.
    const byHand = inches.reduce((sum, r) => sum + Math.hypot((Math.PI / 2) * r, 0.0179), 0) * 25.4;
    const arcs = moves.filter(({ flags }) => flags & 2);
    expectClose(
      arcs.reduce((sum, { length }) => sum + length, 0),
      byHand,
      { rel: 1e-12, because: 'round-off' },
    );
  });
});
