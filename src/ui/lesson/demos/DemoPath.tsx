import { DEMO_IDS, type DemoId } from '../../../core/lesson/demos/ids.ts';
import { DEMO } from '../../text/lessonDemoText.ts';
import { DEMO_WORDS } from '../../text/lessonDemoWords.ts';
import { lessonAddress } from '../route.ts';
import { DEMO_SIGNS } from './demoSigns.ts';

function Sign({ id }: { readonly id: DemoId }) {
  const { heavy, thin, dashed } = DEMO_SIGNS[id];
  return (
    <svg viewBox="0 0 56 24" width={56} height={24} aria-hidden="true" fill="none" stroke="currentColor">
      {thin !== undefined && <path d={thin} strokeWidth="1.2" />}
      {dashed !== undefined && <path d={dashed} strokeWidth="1.4" strokeDasharray="3 2.4" />}
      <path d={heavy} strokeWidth="2" strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  );
}

/** The whole address: a link within the page that has scrolled out of sight is taken for one that skips to the content. */
function whole(address: string): string {
  return new URL(address, location.href).href;
}

/** Brings the cell that is open into the middle of its strip; only the strip scrolls, where it is wider than the page. */
function bringIn(cell: HTMLElement | null): void {
  const strip = cell?.closest('nav');
  if (!cell || !strip) return;
  strip.scrollLeft = Math.max(0, cell.offsetLeft - (strip.clientWidth - cell.offsetWidth) / 2);
}

/** All demonstrations as one strip: number, little drawing and name. */
export function DemoPath({ current }: { readonly current: DemoId }) {
  return (
    <nav className="demo-path" aria-label={DEMO.path}>
      <ol>
        {DEMO_IDS.map((id, i) => (
          <li key={id}>
            <a
              href={whole(lessonAddress('demo', id))}
              aria-current={id === current ? 'page' : undefined}
              ref={id === current ? bringIn : undefined}
            >
              <span className="demo-top">
                <span className="demo-number">{i + 1}</span>
                <Sign id={id} />
              </span>
              <span className="demo-name">{DEMO_WORDS[id].name}</span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}
