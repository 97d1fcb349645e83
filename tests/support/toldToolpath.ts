/** A toolpath as it is told, for what is said of one. */
import type { CheckedToolpath } from '../../src/core/inspect/toolpath/checkedToolpath.ts';
import type { LayerFigures } from '../../src/core/inspect/toolpath/toolpathFigures.ts';
import type { GcodeText } from '../../src/files/gcode/gcodeText.ts';

export const TEXT: GcodeText = {
  bytes: 188_995,
  lines: 7102,
  commands: 7000,
  moves: [400, 6500, 0, 0],
  modal: 0,
  isEver: {
    inch: false,
    relative: false,
    relativeFeed: true,
    absoluteFeed: false,
    volumetric: false,
    flow: false,
  },
  numbered: 0,
  checksums: 0,
  badChecksums: 0,
  resets: 1,
  feedResets: 1,
  firmwareRetractions: 0,
  firmwareRestores: 0,
  toolChanges: 0,
  tools: [],
  named: 0,
  bad: 0,
  badLines: [],
};

const layerFigures = (z: number, height: number): LayerFigures => ({
  z,
  height,
  length: 70,
  laid: 2,
  pieces: 40,
  least: { x: 0, y: 0 },
  greatest: { x: 20, y: 7 },
});

export const TOOLPATH: CheckedToolpath<GcodeText> = {
  text: TEXT,
  figures: {
    printingMoves: 6000,
    travelMoves: 400,
    feedOnlyMoves: 500,
    retractions: 250,
    printingLength: 2100,
    travelLength: 812,
    filament: 60.5,
    byTool: [{ tool: 0, filament: 60.5 }],
    filamentOnMoves: 60,
    feedForward: 260,
    feedNet: 60,
    box: { min: { x: 0, y: 0, z: 0.2 }, max: { x: 22, y: 7, z: 6 } },
    heights: 30,
    layers: Array.from({ length: 30 }, (_, i) => layerFigures(0.2 * (i + 1), i === 0 ? 0.24 : 0.2)),
    isCut: false,
  },
  filament: { diameter: 1.75, by: 'sized' },
  places: [],
  passedOver: [],
  plans: [],
  looked: { layers: 30, of: 30 },
  thickest: 2.6,
  isCut: false,
};
