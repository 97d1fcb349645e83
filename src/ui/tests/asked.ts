/** Tests can be asked for by filament: `#tests/of/petg`. */
import { useEffect } from 'react';
import { everyFilament, findFilament } from '../../core/material/shelf.ts';
import { useTests, type TestValues } from '../../store/tests.ts';
import { isSpool } from './trial.ts';

const START = '#tests/of/';

/** A filament to test, or the spool of one with where it was tested. */
export function asFilament(id: string): Partial<TestValues> {
  const chosen = findFilament(id);
  if (!isSpool(chosen)) return { filament: id, like: id };
  const { like, printer, spool } = chosen.own.tests;
  return { filament: id, like, printer, spool };
}

function take(): void {
  if (!location.hash.startsWith(START)) return;
  // Compared as written: an address that stands for nothing need not be one that can be decoded.
  const id = everyFilament().find((row) => row.printable && location.hash === START + encodeURIComponent(row.id))?.id;
  if (id !== undefined) useTests.getState().set({ ...asFilament(id), counting: undefined });
  // Asked once: going back leads to where the question was put.
  history.replaceState(null, '', '#tests');
}

/** Puts the filament that the address asks for into the sentence. */
export function useFilamentAsked(): void {
  useEffect(() => {
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, []);
}
