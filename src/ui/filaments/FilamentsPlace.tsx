import { useEffect, useMemo } from 'react';
import { FILAMENTS } from '../../core/material/filaments.ts';
import { wholeRow } from '../../core/material/wholeRow.ts';
import { useSession } from '../../store/session.ts';
import { useShelf } from '../../store/shelf.ts';
import { rowName } from '../text/filamentsText.ts';
import { AllFilaments } from './AllFilaments.tsx';
import './filaments.css';
import { OneFilament } from './OneFilament.tsx';
import { useFilamentId } from './route.ts';
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
  const shelf = useShelf();
  const rows = useMemo(() => [...FILAMENTS, ...shelf].map(wholeRow), [shelf]);
  const row = rows.find((one) => one.id === id);
  useTitle(row ? rowName(row) : 'Filaments');
  return row ? (
    <OneFilament key={row.id} {...{ row, rows, yours }} />
  ) : (
    <AllFilaments {...{ rows, yours }} isLost={id !== undefined} />
  );
}
