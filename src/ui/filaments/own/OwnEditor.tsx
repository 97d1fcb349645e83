import { FILAMENTS } from '../../../core/material/filaments.ts';
import { ownFrom, withWords } from '../../../core/material/ownFilament.ts';
import { PROPERTY_NAMES } from '../../../core/material/ownLimits.ts';
import type { OwnFilament } from '../../../core/material/types.ts';
import { useShelf } from '../../../store/shelf.ts';
import { NameField } from '../../app/NameField.tsx';
import { EDITOR, OWN_SAID } from '../../text/ownText.ts';
import { CurveLines } from './CurveLines.tsx';
import './own.css';
import { put } from './put.ts';
import { ValueLine } from './ValueLine.tsx';
import { WordsField } from './WordsField.tsx';

/** Every value of a filament of the user's own, to be changed in place; each change can be undone as any other. */
export function OwnEditor({ filament: given }: { readonly filament: OwnFilament }) {
  const filament = useShelf().find(({ id }) => id === given.id) ?? given;
  const { name, own } = filament;
  const table = FILAMENTS.find(({ id }) => id === own.from);
  // As it would be if it had just been copied, so that what is the same is the same.
  const base = table && ownFrom(table, table.name, table.id);
  return (
    <section className="own-editor" aria-label={name}>
      <p className="own-names">
        <NameField
          label={EDITOR.name}
          name={name}
          onRename={(next) => void put(withWords(filament, { name: next }), OWN_SAID.renamed(next, name))}
        />
        <WordsField
          label={EDITOR.remark}
          words={own.remark}
          asks={EDITOR.remarkAsks}
          onChange={(remark) => void put(withWords(filament, { remark }), OWN_SAID.remarked(name))}
        />
      </p>
      <CurveLines {...{ filament, base }} />
      <h3 className="h">{EDITOR.values}</h3>
      <ul className="own-values">
        {PROPERTY_NAMES.map((property) => {
          const quantity = filament.properties[property];
          return quantity && <ValueLine key={property} name={property} {...{ filament, base, quantity }} />;
        })}
      </ul>
    </section>
  );
}
