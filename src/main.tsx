import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { browserParts } from './store/browserParts.ts';
import { startKeeping } from './store/keeping.ts';
import { App } from './ui/app/App.tsx';
import './ui/app/tokens.css';
import './ui/app/base.css';
import './ui/app/sheet.css';

const root = document.getElementById('root');
if (root === null) throw new Error('index.html has no element with the id root');
const page = createRoot(root);

// The kept part is read first: showing the demo part for a moment would look as if the work were gone.
void startKeeping(browserParts).then(() =>
  page.render(
    <StrictMode>
      <App />
    </StrictMode>,
  ),
);
