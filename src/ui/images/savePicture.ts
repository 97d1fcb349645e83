/** Saves a figure of the page as a file. */
import { download } from '../app/download.ts';
import { composed, pictureSize, type Composed } from './compose.ts';
import { facesFor } from './faces.ts';
import type { PageFigure } from './figures.ts';
import { svgOf } from './picture.ts';
import { dotsOf, dotsPerMetre, withSizeOnPaper } from './pngSize.ts';
import { facesCome, sampleLetters } from './sampleLetters.ts';

export type PictureKind = 'SVG' | 'PNG';

const SVG_TYPE = 'image/svg+xml';

/** Paints what would be saved as SVG, on a page that ends above the letters under it. */
async function pngOf(picture: Composed, faces: string): Promise<Uint8Array<ArrayBuffer>> {
  const { families, height } = picture;
  const svg = svgOf({ ...picture, faces }, sampleLetters(families, height));
  const url = URL.createObjectURL(new Blob([svg], { type: SVG_TYPE }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    await facesCome(image, families.length, height);
    const canvas = document.createElement('canvas');
    const dots = dotsOf(picture);
    [canvas.width, canvas.height] = [dots.width, dots.height];
    const paper = canvas.getContext('2d');
    if (!paper) throw new Error('no paper to paint on');
    paper.drawImage(image, 0, 0, dots.width, (dots.height * image.naturalHeight) / height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (!blob) throw new Error('too large to be painted');
    const png = new Uint8Array(await blob.arrayBuffer());
    return withSizeOnPaper(png, dotsPerMetre(picture)) as Uint8Array<ArrayBuffer>;
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
  const faces = await facesFor(picture.families);
  if (kind === 'SVG') download(fileName, svgOf({ ...picture, faces }), SVG_TYPE);
  else download(fileName, await pngOf(picture, faces), 'image/png');
}

/** How many dots a figure would be saved with as it stands now. */
export function dotsNow({ papers }: PageFigure): { readonly width: number; readonly height: number } {
  return dotsOf(pictureSize(papers));
}
