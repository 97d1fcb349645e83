/** Tables that are chosen or dropped. What reads them comes when there is one: most who count never bring any. */
import { useMessages } from '../../store/messages.ts';
import { CSV } from '../text/testsText.ts';

type Reader = typeof import('./takeTable.ts');

async function read(file: File, take: (reader: Reader) => Promise<void>): Promise<void> {
  const reader = await import('./takeTable.ts').catch(() => undefined);
  if (reader) await take(reader);
  else useMessages.getState().say({ grade: 'fail', text: CSV.refused(file.name, CSV.noReader) });
}

/** A table of tallies, or of the forces of one bar where bars are pulled. */
export async function takeCsv(file: File): Promise<void> {
  await read(file, ({ takeTable }) => takeTable(file));
}

/** A table of the forces of one bar. */
export async function takeForces(file: File): Promise<void> {
  await read(file, ({ takeForces: take }) => take(file));
}
