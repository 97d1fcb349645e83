import { Fragment, useState, type ReactNode } from 'react';
import './drawing.css';
import type { SheetHandling } from './SheetFrame.tsx';
import { TrueScale } from './TrueScale.tsx';
import type { Drawing, DrawingProps } from './useDrawing.ts';

interface Props extends Pick<DrawingProps, 'onSize'> {
  readonly drawing: Drawing<unknown>;
  readonly className: string;
  /** From where it is seen. */
  readonly view: string;
  /** What else there is to say of the drawing. */
  readonly notes: readonly ReactNode[];
  /** What ink and pencil stand for. */
  readonly inks: string;
  /** What the sheet is called with the joint as it stands, and with the joint as far as wanted. */
  readonly called: { readonly now: string; readonly full: string };
  /** The sheet with the joint moved by a share of the wanted amount. */
  readonly renderSheet: (share: number, label: string, handling: SheetHandling) => ReactNode;
  readonly scrubber: ReactNode;
  /** A drawing so tall that its scrubber stands above it, where the first screen ends. */
  readonly isTall?: boolean;
  /** What stands under a single sheet. */
  readonly children?: ReactNode;
}

/** Fig. 1: caption, the sheet or two of them side by side, and the scale that moves the joint. */
export function DrawingFrame(props: Props) {
  const { drawing, className, onSize, called, renderSheet, scrubber, isTall = false, children } = props;
  const { frame, width, pxPerMm, setPxPerMm, share, isPair, onHold } = drawing;
  const [isChecking, setChecking] = useState(false);
  return (
    <figure className={isTall ? `${className} tall` : className} ref={frame}>
      {isTall && scrubber}
      <DrawingCaption {...props} isChecking={isChecking} onCheck={() => setChecking(!isChecking)} />
      {isChecking && (
        <TrueScale pxPerMm={pxPerMm} width={width} onUse={setPxPerMm} onClose={() => setChecking(false)} />
      )}
      {isPair ? (
        <div className="pair">
          {renderSheet(0, 'Fig. 1, the joint at rest', { onSize, onHold })}
          {renderSheet(1, called.full, {})}
        </div>
      ) : (
        renderSheet(share, called.now, { onSize, onHold })
      )}
      {!isTall && scrubber}
      {!isPair && children}
    </figure>
  );
}

interface CaptionProps extends Pick<Props, 'drawing' | 'view' | 'notes' | 'inks'> {
  readonly isChecking: boolean;
  readonly onCheck: () => void;
}

function DrawingCaption({ drawing, view, notes, inks, isChecking, onCheck }: CaptionProps) {
  return (
    <figcaption className="cap">
      <span>
        <b>Fig. 1</b> {view}, scale <b className="nw">{drawing.scale}</b>; grid 1 mm
        {notes.map((note, i) => (
          // oxlint-disable-next-line react/no-array-index-key -- a drawing has the same few notes in the same order
          <Fragment key={i}>; {note}</Fragment>
        ))}
      </span>
      <span>
        {inks}{' '}
        <button type="button" className="b quiet check-scale" aria-expanded={isChecking} onClick={onCheck}>
          true scale?
        </button>
      </span>
    </figcaption>
  );
}
