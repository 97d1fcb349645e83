import { useRef, type ChangeEvent } from 'react';
import { openFile } from '../app/openFile.ts';
import { MESH } from '../text/meshText.ts';

/** What the chooser offers. */
const MESH_ENDINGS = '.stl,.3mf,.obj';

function onChange(event: ChangeEvent<HTMLInputElement>): void {
  const file = event.target.files?.[0];
  if (file !== undefined) void openFile(file);
  // So that choosing the same file again is noticed.
  event.target.value = '';
}

/** Opens the chooser of the browser; what is chosen goes the way of what is dropped. */
function useChooser() {
  const input = useRef<HTMLInputElement>(null);
  const chooser = (
    <input
      ref={input}
      className="vh"
      type="file"
      accept={MESH_ENDINGS}
      aria-label={MESH.chooser}
      tabIndex={-1}
      onChange={onChange}
    />
  );
  return { chooser, open: () => input.current?.click() };
}

/** The last cell of the strip: another file is dropped here, or anywhere else. */
export function DropCell() {
  const { chooser, open } = useChooser();
  return (
    <div className="drop-cell">
      <button type="button" onClick={open}>
        <span>
          {MESH.another}
          <u>{MESH.chooseOne}</u>
        </span>
        <small>{MESH.formats}</small>
      </button>
      {chooser}
    </div>
  );
}

export function ChooseButton({ children }: { readonly children: string }) {
  const { chooser, open } = useChooser();
  return (
    <>
      <button className="b" type="button" onClick={open}>
        {children}
      </button>
      {chooser}
    </>
  );
}
