/** How thick the filament is that a toolpath was made for: no command states it. */
import { laidWidth } from '../../print/bead.ts';
import type { Mm } from '../../units.ts';
import type { DiameterRead } from './checkedToolpath.ts';
import type { ToolpathFigures } from './toolpathFigures.ts';

/** The two that are sold; the thinner one is usual. Common practice, no source. */
export const DIAMETERS = [1.75, 2.85] as const satisfies readonly Mm[];

/**
 * The diameter with which what is laid is at least as wide as it is high, as printers lay it. The usual one, where both or neither are.
 *
 * @param figures - of the whole toolpath [mm], read as if the filament were 1.75 mm
 * @param told - as the user says [mm]
 * @returns diameter [mm] and how it is known
 */
export function filamentOf({ layers }: Pick<ToolpathFigures, 'layers'>, told?: Mm): DiameterRead {
  if (told !== undefined) return { diameter: told, by: 'told' };
  let [length, laid, heights] = [0, 0, 0];
  for (const layer of layers) {
    length += layer.length;
    laid += layer.laid;
    heights += layer.length * layer.height;
  }
  const [thin, thick] = DIAMETERS;
  if (!(length > 0)) return { diameter: thin, by: 'sized' };
  const height = heights / length;
  const isWide = (diameter: Mm) => laidWidth(diameter, laid / length, height) >= height;
  return { diameter: !isWide(thin) && isWide(thick) ? thick : thin, by: 'sized' };
}
