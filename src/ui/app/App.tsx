import { useEffect } from 'react';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import { ErrorBoundary } from './ErrorBoundary.tsx';
import { Head } from './Head.tsx';
import { KeepingBars } from './KeepingBars.tsx';
import { MessageBar } from './MessageBar.tsx';
import { openPartFile } from './openFile.ts';
import { openAddress } from './openLink.ts';
import { Slip } from './Slip.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { useDroppedFile } from './useDroppedFile.ts';
import { usePlace } from './usePlace.ts';
import { useUndoKeys } from './useUndoKeys.ts';

const takeFile = (file: File) => void openPartFile(file);

/** What the tab of the browser says. */
function useDocumentTitle(place: string): void {
  const part = useSession((state) => state.part.name);
  const joint = useCurrentJoint()?.name ?? place;
  useEffect(() => {
    document.title = `${joint}, ${part}: Bendbook`;
  }, [joint, part]);
}

function Sheet() {
  const place = usePlace();
  const theme = useChoices((state) => state.theme);
  const dropping = useDroppedFile(takeFile);
  useUndoKeys();
  useDocumentTitle(place.name);
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  useEffect(() => {
    openAddress();
    window.addEventListener('hashchange', openAddress);
    return () => window.removeEventListener('hashchange', openAddress);
  }, []);
  return (
    <div className={dropping ? 'sheet dropping' : 'sheet'}>
      <Head place={place} />
      <MessageBar />
      <KeepingBars />
      <place.Page />
      <TitleBlock />
      <Slip />
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
