import { withWords } from '../../../core/material/ownFilament.ts';
import type { OwnFilament } from '../../../core/material/types.ts';
import { NameField } from '../../app/NameField.tsx';
import { EDITOR, OWN_SAID } from '../../text/ownText.ts';
import './own.css';
import { put } from './put.ts';

/** What the user calls a filament of their own, at the head of its sentence. */
export function OwnName({ filament }: { readonly filament: OwnFilament }) {
  const { name } = filament;
  return (
    <span className="own-name">
      <NameField
        label={EDITOR.name}
        name={name}
        onRename={(next) => void put(withWords(filament, { name: next }), OWN_SAID.renamed(next, name))}
      />
    </span>
  );
}
