/** Files of test pieces, made when they are asked for: what makes solids of them comes then. */
import { layOut } from '../../../core/coupons/layOut.ts';
import type { Piece, PlateSize } from '../../../core/coupons/piece.ts';
import type { SolidFormat } from '../../../files/mesh/pieceFiles.ts';
import { download } from '../../app/download.ts';
import { pieceFileName, PIECE_FILES, plateFileName } from '../../text/pieceSaysText.ts';
import { problemText } from '../../text/problemText.ts';
import { NOT_COME } from '../../text/shellText.ts';

const TYPES: Readonly<Record<SolidFormat, string>> = { '3mf': 'model/3mf', stl: 'model/stl' };
const late = () => import('../../../files/mesh/pieceFiles.ts').catch(() => undefined);

function save(name: string, bytes: Uint8Array, format: SolidFormat): void {
  download(name, new Uint8Array(bytes), TYPES[format]);
}

/** Saves one piece, or says why not. */
export async function savePiece(piece: Piece, format: SolidFormat, filament: string): Promise<string> {
  const files = await late();
  if (!files) return NOT_COME;
  save(pieceFileName(piece.id, filament, format), files.pieceFile(piece, format), format);
  return '';
}

/** Saves all plates that the pieces take, a file each, or says why not. */
export async function savePlates(pieces: readonly Piece[], size: PlateSize, filament: string): Promise<string> {
  const laid = layOut(pieces, size);
  if (!laid.ok) return PIECE_FILES.notMade + laid.problems.map((problem) => problemText(problem, 'mm')).join(' ');
  const files = await late();
  if (!files) return NOT_COME;
  laid.value.forEach((plate, at) =>
    save(plateFileName(at + 1, laid.value.length, filament), files.plateFile(plate, '3mf'), '3mf'),
  );
  return '';
}
