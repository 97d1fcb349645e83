import { parseArgs } from 'node:util';
import { LENGTH_UNITS, type LengthUnit } from '../core/inspect/lengthUnit.ts';

export const INSPECT_USAGE = `Finds the thin sections of part files and of toolpaths and prints one JSON document.

  npm run -s inspect -- part.stl [more.3mf ...] [--line-width mm] [--layer-height mm] [--nozzle mm] [--unit name] [--thickest mm]
  npm run -s inspect -- part.gcode [--filament mm] [--thickest mm]

  -                  in place of a file: reads standard input
  --line-width mm    set width of one line, 0.42 when left out
  --layer-height mm  0.2 when left out; the first layer is as high
  --nozzle mm        0.4 when left out
  --unit name        what the file is drawn in: ${LENGTH_UNITS.join(', ')}; guessed by its size when left out, unless it says so
  --filament mm      thickness of the filament of a toolpath; 1.75 or 2.85, as its lines tell, when left out
  --thickest mm      thicker sections are not told, 6 lines when left out

Exit code: 0 everything was answered, 1 there are problems (they are in the document), 2 wrong use.
`;

/** How thick a section may be and still be called thin, in lines. */
const THIN_LINES = 6;

export interface InspectAsked {
  readonly files: readonly string[];
  readonly lineWidth: number;
  readonly layerHeight: number;
  readonly nozzle: number;
  readonly unit: LengthUnit | undefined;
  readonly thickest: number;
  /** Of a toolpath; undefined where its lines shall tell [mm]. */
  readonly filament: number | undefined;
}

const OPTIONS = {
  'line-width': { type: 'string', multiple: true },
  'layer-height': { type: 'string', multiple: true },
  nozzle: { type: 'string', multiple: true },
  unit: { type: 'string', multiple: true },
  thickest: { type: 'string', multiple: true },
  filament: { type: 'string', multiple: true },
} as const;

/** Thrown where the call cannot be understood. */
class WrongUse extends Error {}

/** Of an option given twice nobody knows which was meant. */
function once(given: readonly string[] | undefined): string | undefined {
  if (given !== undefined && given.length > 1) throw new WrongUse();
  return given?.[0];
}

/** A length as plain digits with a point: neither 1e2 nor 0x10, which someone may not mean. */
function length(all: readonly string[] | undefined, otherwise: number): number {
  const given = once(all);
  if (given === undefined) return otherwise;
  const value = /^\d{1,3}(?:\.\d{1,6})?$/.test(given) ? Number(given) : 0;
  if (!(value > 0)) throw new WrongUse();
  return value;
}

function unitNamed(all: readonly string[] | undefined): LengthUnit | undefined {
  const given = once(all);
  if (given === undefined) return undefined;
  const unit = LENGTH_UNITS.find((name) => name === given);
  if (unit === undefined) throw new WrongUse();
  return unit;
}

/**
 * What a call asks for, or undefined where it cannot be understood.
 *
 * @param given - arguments as typed
 */
export function readInspectArguments(given: readonly string[]): InspectAsked | undefined {
  try {
    const { values, positionals: files } = parseArgs({ args: [...given], options: OPTIONS, allowPositionals: true });
    if (files.length === 0 || files.includes('')) return undefined;
    const lineWidth = length(values['line-width'], 0.42);
    return {
      files,
      lineWidth,
      layerHeight: length(values['layer-height'], 0.2),
      nozzle: length(values.nozzle, 0.4),
      unit: unitNamed(values.unit),
      thickest: length(values.thickest, THIN_LINES * lineWidth),
      filament: values.filament === undefined ? undefined : length(values.filament, 0),
    };
  } catch (error) {
    // Unknown options and options without their value come from the reader of arguments as TypeErrors.
    if (error instanceof WrongUse || error instanceof TypeError) return undefined;
    throw error;
  }
}
