import { lazy, useEffect } from 'react';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { firstScreenStands } from '../joints/firstScreen.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Head } from './Head.tsx';
import { KeepingBars } from './KeepingBars.tsx';
import { Late } from './Late.tsx';
import { MessageBar } from './MessageBar.tsx';
import { openFile } from './openFile.ts';
import { openAddress } from './openLink.ts';
import type { Place } from './places.ts';
import { Slip } from './Slip.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { useDroppedFile } from './useDroppedFile.ts';
import { usePlace } from './usePlace.ts';
import { useUndoKeys } from './useUndoKeys.ts';

// Its room is kept at the foot, so that nothing moves when it comes.
const Pictures = lazy(() => firstScreenStands().then(() => import('../images/Pictures.tsx')));
// Nobody holds a file over a page that is not there yet.
const DropHere = lazy(() => import('./DropHere.tsx'));

const takeFile = (file: File) => void openFile(file);

/** What the tab of the browser says, where the place does not say it itself. */
function useDocumentTitle({ name, own }: Place): void {
  const part = useSession((state) => state.part.name);
  const joint = useCurrentJoint()?.name ?? name;
  useEffect(() => {
    if (!own) document.title = `${joint}, ${part}: Bendbook`;
  }, [joint, part, own]);
}

function Sheet() {
  const place = usePlace();
  const theme = useChoices((state) => state.theme);
  const dropping = useDroppedFile(takeFile);
  useUndoKeys();
  useDocumentTitle(place);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  useEffect(() => {
    openAddress();
    window.addEventListener('hashchange', openAddress);
    return () => window.removeEventListener('hashchange', openAddress);
  }, []);
  return (
    <div className="sheet">
      <Head place={place} />
      <MessageBar />
      <KeepingBars />
      <Late key={place.id}>
        <place.Page />
      </Late>
      {!place.own && <TitleBlock />}
      <div className="under-title">
        <Late>
          <Pictures />
        </Late>
      </div>
      <Slip />
      {dropping && (
        <Late>
          <DropHere />
        </Late>
      )}
    </div>
  );
}

/** The whole page. */
export function App() {
  return (
    <ErrorBoundary>
      <Sheet />
    </ErrorBoundary>
  );
}
