/** Words of the pictures of a page: how they are offered, what they are called, and what is said of saving one. */
import { grouped } from './numbers.ts';
import { nameOfFile } from './shellText.ts';

export const IMAGES = {
  open: 'Pictures of this page',
  list: 'Pictures of this page',
  intro:
    'Each drawing and curve as it stands above, without handles. An SVG brings its lettering along and stands alone.',
  print: 'On white, in black and grey, for print',
  none: 'There is no drawing or curve on this page.',
  svg: 'SVG',
  png: 'PNG',
  unnamed: 'Figure',
} as const;

export function foundText(count: number): string {
  if (count === 0) return IMAGES.none;
  return count === 1 ? 'One picture found.' : `${count} pictures found.`;
}

/** A figure by its name, told from others of the same name. */
export function numberedName(name: string, number: number): string {
  return number > 1 ? `${name} (${number})` : name;
}

/** What a button says by ear: “SVG of Fig. 2 Strain against life”. */
export function saveLabel(kind: string, name: string): string {
  return `${kind} of ${name}`;
}

/** “1 594 × 1 040 px”. */
export function pixelsText(width: number, height: number): string {
  return `${grouped(width)} × ${grouped(height)} px`;
}

export function savedText(file: string): string {
  return `${file} saved.`;
}

export function notSaved(name: string, kind: string): string {
  return `${name} could not be made a ${kind}. Your part is as it was; the page may be too full, or a file of lettering did not come. Try again, or save it as ${kind === 'PNG' ? 'SVG' : 'PNG'}.`;
}

/** What a caption says is cut where it goes on to say how the figure is drawn. */
export function figureName(caption: string): string {
  const text = caption.replaceAll(/\s+/g, ' ').trim();
  const [name = ''] = text.split(/(?<=\S)[;:](?=\s)|, (?=scale )/, 1);
  return (name === '' ? text : name).replace(/[,.]$/, '');
}

/** Longest name that any system takes with room for a number and an ending. */
const LONGEST = 120;

/** File name of a picture: what the page is of, then the figure; a number where two are called the same. */
export function pictureFileName(of: readonly string[], figure: string, ending: string, number = 1): string {
  const words = [...of, figure].filter((word) => word.trim() !== '').join(' ');
  const stem = nameOfFile(words, 'picture', '').slice(0, LONGEST).replace(/-+$/, '');
  return `${stem}${number > 1 ? `-${number}` : ''}${ending}`;
}

/** What a page is of, by what it calls itself to the browser: “Rain-flap hinge, Weather station: Bendbook”. */
export function subjectOf(title: string): readonly string[] {
  const name = title.replace(/: Bendbook$/, '');
  return name === 'Bendbook' ? [] : name.split(', ').toReversed();
}
