import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { browserParts } from './store/browserParts.ts';
import { startKeeping } from './store/keeping.ts';
import { useSession } from './store/session.ts';
import { openJointOf } from './store/state.ts';
import { App } from './ui/app/App.tsx';
import { fetchKinds } from './ui/joints/fetchKinds.ts';
import { hasKindCome } from './ui/joints/kindsCome.ts';
import './ui/app/tokens.css';
import './ui/app/base.css';
import './ui/app/sheet.css';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id root');
const page = createRoot(root);

/** Longer than the faces take on any line that is worth waiting for. */
const FACES_MS = 500;

/** The two faces, fetched since the head of the page; text set before they come would break its lines anew. */
function facesCome(): Promise<unknown> {
  const faces = ['400 1em Said', '600 1em Said', '400 1em Measured', '600 1em Measured'];
  const late = new Promise((resolve) => {
    setTimeout(resolve, FACES_MS);
  });
  return Promise.race([Promise.allSettled(faces.map((face) => document.fonts.load(face))), late]);
}

/** The joint that was open last time may be of a kind that is not here yet: it should stand at once, as any other does. */
async function openKindCome(): Promise<void> {
  const open = openJointOf(useSession.getState());
  if (open !== undefined && !hasKindCome(open.family)) await fetchKinds();
}

// The kept part is read first: showing the demo part for a moment would look as if the work were gone.
void Promise.all([startKeeping(browserParts).then(openKindCome), facesCome()]).then(() =>
  page.render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);
