/** Pages to print have addresses of their own, so that the browser's way back leaves them. */
import { useSyncExternalStore } from 'react';
import { PIECE_IDS, type PieceId } from '../../../core/coupons/piece.ts';

const START = '#tests/page/';

export function pageAddress(id: PieceId): string {
  return `${START}${id}`;
}

/** The piece whose page stands in an address; nothing where it is another place, or no piece. */
export function pieceOfAddress(hash: string): PieceId | undefined {
  return PIECE_IDS.find((id) => hash === pageAddress(id));
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** The piece whose page is asked for. */
export function usePageAsked(): PieceId | undefined {
  return pieceOfAddress(useSyncExternalStore(subscribe, () => location.hash));
}
