import { soundness } from '../../../core/material/choose.ts';
import { isOwn } from '../../../core/material/shelf.ts';
import type { OwnFilament, Quantity, WholeFilament } from '../../../core/material/types.ts';
import { MarkShape } from '../../app/MarkShape.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Refusal, useRefusals } from '../../controls/Refusal.tsx';
import { SentenceContext } from '../../controls/sentenceContext.ts';
import { ValueField } from '../../controls/ValueField.tsx';
import { kindWords, type Property } from '../../text/filamentValueText.ts';
import { EDITOR, TOLD_ASKS } from '../../text/ownText.ts';
import { NumbersTable, Source, type CellsProps } from '../NumbersTable.tsx';
import { ROLE } from '../tableRoles.ts';
import './own.css';
import { useValue } from './useValue.ts';
import { WordsField } from './WordsField.tsx';

interface OwnCellsProps {
  readonly filament: OwnFilament;
  readonly property: Property;
  readonly quantity: Quantity;
}

/** The figures of one value and where they come from, each to be changed in its cell. */
function OwnCells({ filament, property, quantity }: OwnCellsProps) {
  const { place, message } = useRefusals();
  const { label, now, field, origin, words, setWords } = useValue(filament, property, quantity);
  const kind = soundness(quantity.provenance);
  return (
    <SentenceContext value={place}>
      <td {...ROLE.cell} className="r">
        <ValueField spec={field('typical')} />
      </td>
      <td {...ROLE.cell} className="now">
        <ValueField spec={field('low')} /> to <ValueField spec={field('high')} />
      </td>
      <td {...ROLE.cell} className="number-kind">
        <MarkShape kind={kind} />
        <span className="vh">{kindWords(kind)}</span>
        <ChoiceField spec={origin} />
      </td>
      <td {...ROLE.cell} className="source">
        {now === 'as made' ? (
          <Source quantity={quantity} />
        ) : (
          <WordsField label={EDITOR.words(label)} words={words} asks={TOLD_ASKS[now]} onChange={setWords} />
        )}
        <Refusal id={place.refusalId} message={message} />
      </td>
    </SentenceContext>
  );
}

function Cells({ row, property, quantity }: CellsProps) {
  return isOwn(row) && <OwnCells filament={row} {...{ property, quantity }} />;
}

/** The table of every number of a filament of the user's own; each change can be undone as any other. */
export function OwnNumbers({ row, rows }: { readonly row: WholeFilament; readonly rows: readonly WholeFilament[] }) {
  return <NumbersTable {...{ row, rows }} cells={Cells} />;
}
