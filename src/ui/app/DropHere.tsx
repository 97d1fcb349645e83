import { DROP_HERE } from '../text/openText.ts';

/** Over the sheet while a file is held over it: what letting go does. The pointer goes through it. */
export default function DropHere() {
  return (
    <div className="drop-here">
      <p>
        <b>{DROP_HERE[0]}</b>
        {DROP_HERE[1]}
      </p>
    </div>
  );
}
