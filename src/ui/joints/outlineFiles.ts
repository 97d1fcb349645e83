/** The outline of a joint as files. What makes them is loaded only when one is asked for. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Layer } from '../../files/outlineSegments.ts';
import { layeredSvg, outlineSvg } from '../../files/svg.ts';
import { download } from '../app/download.ts';
import { nameOfFile } from '../text/shellText.ts';
import { planeName } from '../text/toDrawText.ts';
import { outlineOf } from './outlineOf.ts';

/** One layer a plane; a kind that draws its own outline needs no polygon library. */
async function layersOf(a: Assessment): Promise<readonly Layer[]> {
  const own = outlineOf(a);
  if (own.length > 0) return [{ name: planeName(0), paths: own }];
  const { printedOutlines } = await import('../../core/design/printedOutlines.ts');
  return printedOutlines(a).map(({ plane, paths }) => ({ name: planeName(plane), paths }));
}

export async function saveSvg(a: Assessment): Promise<void> {
  const layers = await layersOf(a);
  const { name } = a.joint;
  const [only, second] = layers;
  const text = only && !second ? outlineSvg(only.paths, name) : layeredSvg(layers, name);
  download(nameOfFile(name, 'joint', '.svg'), text, 'image/svg+xml');
}

export async function saveDxf(a: Assessment): Promise<void> {
  const [{ layeredDxf, outlineDxf }, layers] = await Promise.all([import('../../files/dxf.ts'), layersOf(a)]);
  const [only, second] = layers;
  const text = only && !second ? outlineDxf(only.paths) : layeredDxf(layers);
  download(nameOfFile(a.joint.name, 'joint', '.dxf'), text, 'image/vnd.dxf');
}
