import { useState, type ReactNode } from 'react';
import { FAMILIES } from '../../core/flexures/index.ts';
import { everyFilament } from '../../core/material/shelf.ts';
import { soundness } from '../../core/material/choose.ts';
import type { Filament } from '../../core/material/types.ts';
import { LYINGS } from '../../core/print/profile.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_SHAPES } from '../app/markShapes.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { Pictogram } from '../joints/Pictogram.tsx';
import { cannotText, evidenceLabel, LYING_TICKS, tickedText, TICKS } from '../text/findText.ts';
import { FOUND_SOURCES } from '../text/foundText.ts';
import { kindText } from '../text/kindText.ts';

type Field = 'families' | 'filaments' | 'lyings';

interface TicksProps {
  readonly wanted: Wanted;
  readonly onWant: (next: Wanted) => void;
  /** What is wrong with a list, said under it. */
  readonly problems: Readonly<Partial<Record<Field, string>>>;
}

interface Box {
  readonly id: string;
  readonly name: string;
  readonly sign?: ReactNode;
  /** Stands after the box, and is no part of its label. */
  readonly after?: ReactNode;
}

interface ListProps {
  readonly field: Field;
  readonly boxes: readonly Box[];
  readonly ticked: readonly string[];
  readonly problem: string | undefined;
  readonly note?: string;
  readonly onTick: (ticked: readonly string[]) => void;
}

/** Boxes to tick, in the order in which they are offered whichever was ticked last. */
function TickList({ field, boxes, ticked, problem, note = '', onTick }: ListProps) {
  const ids = boxes.map(({ id }) => id);
  const put = (isIn: (id: string) => boolean) => onTick(ids.filter(isIn));
  return (
    <fieldset className={`ticks ${field}`}>
      <legend>{TICKS[field]}</legend>
      <span className="tick-all">
        <QuietButton onClick={() => put(() => true)}>{TICKS.all}</QuietButton>
        <QuietButton onClick={() => onTick([])}>{TICKS.none}</QuietButton>
      </span>
      <ul>
        {boxes.map(({ id, name, sign, after }) => (
          <li key={id}>
            <label>
              <input
                type="checkbox"
                checked={ticked.includes(id)}
                onChange={({ target }) => put((one) => (one === id ? target.checked : ticked.includes(one)))}
              />
              {sign}
              {name}
            </label>
            {after}
          </li>
        ))}
      </ul>
      {note !== '' && <p className="small">{note}</p>}
      {problem !== undefined && (
        <p className="refusal" role="alert">
          {problem}
        </p>
      )}
    </fieldset>
  );
}

/** Raised after a filament: how well its life is known, and the way to its record. */
function EvidenceMark({ filament: { id, name, life } }: { readonly filament: Filament }) {
  const kind = soundness(life.provenance);
  const label = evidenceLabel(name, MARK_SHAPES[kind].says);
  return (
    <a className="pv" href={`${FOUND_SOURCES.recordsAt}/${encodeURIComponent(id)}`} title={label} aria-label={label}>
      <MarkShape kind={kind} />
    </a>
  );
}

const isMovedSo =
  ({ measure }: Wanted) =>
  (family: (typeof FAMILIES)[number]) =>
    family.drives.some((drive) => drive.measure === measure);

/** Kinds, filaments and lyings that may be tried, behind one line that tells them. */
export function Ticks({ wanted, onWant, problems }: TicksProps) {
  const [open, setOpen] = useState(false);
  const moved = FAMILIES.filter(isMovedSo(wanted));
  const others = FAMILIES.filter((family) => !moved.includes(family));
  const printable = everyFilament().filter((filament) => filament.printable);
  const ticked = { ...wanted, families: moved.map(({ id }) => id).filter((id) => wanted.families.includes(id)) };
  const isBroken = Object.keys(problems).length > 0;
  return (
    <details className="may-try" open={open || isBroken} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <b>{TICKS.head}</b> {tickedText(ticked, { families: moved.length, filaments: printable.length })}
      </summary>
      <div>
        <TickList
          field="families"
          boxes={moved.map(({ id }) => ({ id, name: kindText(id).name, sign: <Pictogram family={id} /> }))}
          ticked={wanted.families}
          problem={problems.families}
          note={cannotText(
            others.map(({ id }) => kindText(id).name),
            wanted.measure,
          )}
          onTick={(families) => onWant({ ...wanted, families })}
        />
        <TickList
          field="filaments"
          boxes={printable.map((filament) => ({
            id: filament.id,
            name: filament.name,
            after: <EvidenceMark filament={filament} />,
          }))}
          ticked={wanted.filaments}
          problem={problems.filaments}
          onTick={(filaments) => onWant({ ...wanted, filaments })}
        />
        <TickList
          field="lyings"
          boxes={LYINGS.map((id) => ({ id, name: LYING_TICKS[id] }))}
          ticked={wanted.lyings}
          problem={problems.lyings}
          onTick={(lyings) => onWant({ ...wanted, lyings: LYINGS.filter((one) => lyings.includes(one)) })}
        />
      </div>
    </details>
  );
}
