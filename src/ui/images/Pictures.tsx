import { lazy, useId, useRef, useState } from 'react';
import { Late } from '../app/Late.tsx';
import { IMAGES } from '../text/imagesText.ts';
import './images.css';

const PictureList = lazy(async () => ({ default: (await import('./PictureList.tsx')).PictureList }));

/** At the foot of every page: what opens the list of its pictures, whose code comes only then. */
export default function Pictures() {
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const list = useId();
  const close = () => {
    setOpen(false);
    opener.current?.focus();
  };
  return (
    <section className="pictures" aria-label={IMAGES.list}>
      <button
        ref={opener}
        type="button"
        className="b quiet"
        aria-expanded={isOpen}
        aria-controls={list}
        onClick={() => setOpen(!isOpen)}
      >
        {IMAGES.open}
      </button>
      <div id={list}>
        {isOpen && (
          <Late>
            <PictureList onClose={close} />
          </Late>
        )}
      </div>
    </section>
  );
}
