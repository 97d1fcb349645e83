/** What the bench of toolpaths bundles, as the page does. */
export { FiguresSink } from '../../src/core/inspect/toolpath/figuresSink.ts';
export { GcodeReader } from '../../src/files/gcode/gcodeReader.ts';
export { scanGcode } from '../../src/files/gcode/scanGcode.ts';
