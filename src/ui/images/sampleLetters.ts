/** Letters under a picture by which it is seen that the faces in it have come: until then a browser paints none at all. */
import type { Strip } from './picture.ts';

/** One letter a face, each in a square of this size [px]. */
const SQUARE = 20;
/** How often it is looked, and how long is waited in between [ms]. */
const LOOKS = 80;
const PAUSE_MS = 50;

export function sampleLetters(families: readonly string[], height: number): Strip {
  const marks = families.map((family, at) => ({
    tag: 'text',
    attributes: {
      x: String(SQUARE * at + 2),
      y: String(height + SQUARE - 5),
      'font-family': `'${family}', sans-serif`,
      'font-size': '14',
    },
    children: ['M'],
  }));
  return { high: SQUARE, marks };
}

/** Whether every square of the strip has ink in it. */
function hasInk(image: HTMLImageElement, count: number, height: number): boolean {
  if (count === 0) return true;
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [SQUARE * count, SQUARE];
  const paper = canvas.getContext('2d');
  if (!paper) return true;
  paper.drawImage(image, 0, -height);
  return Array.from({ length: count }, (_, at) => paper.getImageData(SQUARE * at, 0, SQUARE, SQUARE).data).every(
    (dots) => dots.some((value, i) => i % 4 === 3 && value > 0),
  );
}

/** Waits until the faces of a picture have come; what does not come is stood in for after a while, by the browser itself. */
export async function facesCome(image: HTMLImageElement, count: number, height: number): Promise<void> {
  for (let look = 0; look < LOOKS && !hasInk(image, count, height); look += 1) {
    // oxlint-disable-next-line no-await-in-loop -- each look comes after a pause
    await new Promise((resolve) => {
      setTimeout(resolve, PAUSE_MS);
    });
  }
}
