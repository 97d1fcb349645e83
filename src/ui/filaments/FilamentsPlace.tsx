import { useEffect, useMemo } from 'react';
import { shelfChanges } from '../../core/material/shelf.ts';
import { useSession } from '../../store/session.ts';
import { rowName } from '../text/filamentsText.ts';
import { AllFilaments } from './AllFilaments.tsx';
import './filaments.css';
import { OneFilament } from './OneFilament.tsx';
import { useFilamentId } from './route.ts';
import { everyRow } from './rows.ts';
import { useYourJoint } from './useYourJoint.ts';

/** What the tab of the browser says. */
function useTitle(name: string): void {
  const part = useSession((state) => state.part.name);
  useEffect(() => {
    document.title = `${name}, ${part}: Bendbook`;
  }, [name, part]);
}

/** The place where filaments are compared, and each is looked at alone. */
export default function FilamentsPlace() {
  const id = useFilamentId();
  const yours = useYourJoint();
  const changes = shelfChanges();
  // oxlint-disable-next-line react/exhaustive-deps -- the shelf tells of its changes by their count
  const rows = useMemo(everyRow, [changes]);
  const row = rows.find((one) => one.id === id);
  useTitle(row ? rowName(row) : 'Filaments');
  return row ? <OneFilament key={row.id} {...{ row, rows, yours }} /> : <AllFilaments {...{ rows, yours }} />;
}
