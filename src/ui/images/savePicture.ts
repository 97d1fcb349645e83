/** Saves a figure of the page as a file. */
import { download } from '../app/download.ts';
import { composed, pictureSize, type Composed } from './compose.ts';
import { facesFor } from './faces.ts';
import type { PageFigure } from './figures.ts';
import { svgOf } from './picture.ts';
import { dotsOf, dotsPerMetre, withSizeOnPaper } from './pngSize.ts';

export type PictureKind = 'SVG' | 'PNG';

const SVG_TYPE = 'image/svg+xml';

/** Paints the very file that would be saved as SVG. */
async function pngOf(svg: string, size: Composed): Promise<Uint8Array<ArrayBuffer>> {
  const url = URL.createObjectURL(new Blob([svg], { type: SVG_TYPE }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    const dots = dotsOf(size);
    [canvas.width, canvas.height] = [dots.width, dots.height];
    const paper = canvas.getContext('2d');
    if (!paper) throw new Error('no paper to paint on');
    paper.drawImage(image, 0, 0, dots.width, dots.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (!blob) throw new Error('too large to be painted');
    const png = new Uint8Array(await blob.arrayBuffer());
    return withSizeOnPaper(png, dotsPerMetre(size)) as Uint8Array<ArrayBuffer>;
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Makes the file and hands it out; rejects where it cannot be made. */
export async function savePicture(
  figure: PageFigure,
  kind: PictureKind,
  isGrey: boolean,
  fileName: string,
): Promise<void> {
  const picture = composed(figure, isGrey);
  const svg = svgOf({ ...picture, faces: await facesFor(picture.families) });
  if (kind === 'SVG') download(fileName, svg, SVG_TYPE);
  else download(fileName, await pngOf(svg, picture), 'image/png');
}

/** How many dots a figure would be saved with as it stands now. */
export function dotsNow({ papers }: PageFigure): { readonly width: number; readonly height: number } {
  return dotsOf(pictureSize(papers));
}
