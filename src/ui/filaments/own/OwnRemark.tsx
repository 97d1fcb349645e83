import { withWords } from '../../../core/material/ownFilament.ts';
import type { OwnFilament } from '../../../core/material/types.ts';
import { EDITOR, OWN_SAID } from '../../text/ownText.ts';
import './own.css';
import { put } from './put.ts';
import { WordsField } from './WordsField.tsx';

/** What the user says of a filament of their own. */
export function OwnRemark({ filament }: { readonly filament: OwnFilament }) {
  return (
    <p className="own-remark">
      <WordsField
        label={EDITOR.remark}
        words={filament.own.remark}
        asks={EDITOR.remarkAsks}
        onChange={(remark) => void put(withWords(filament, { remark }), OWN_SAID.remarked(filament.name))}
      />
    </p>
  );
}
