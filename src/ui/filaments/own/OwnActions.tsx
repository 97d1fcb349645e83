import { ownFrom } from '../../../core/material/ownFilament.ts';
import { MOST_OWN } from '../../../core/material/ownLimits.ts';
import { isOwn } from '../../../core/material/shelf.ts';
import type { Filament, OwnFilament } from '../../../core/material/types.ts';
import { writeFilaments } from '../../../files/filamentText.ts';
import { useSession } from '../../../store/session.ts';
import { addFilaments, removeFilament, usersOf, useShelf } from '../../../store/shelf.ts';
import { download } from '../../app/download.ts';
import { QuietButton } from '../../app/QuietButton.tsx';
import { randomKey } from '../../app/randomKey.ts';
import { filamentFileName, fullText, inUseText, OWN_ACTIONS, OWN_SAID, ownName } from '../../text/ownText.ts';
import { addressOf } from '../route.ts';
import './own.css';

function goTo(id?: string): void {
  location.hash = addressOf(id);
}

function makeOwn(from: Filament, shelf: readonly OwnFilament[]): void {
  const name = ownName(
    from.name,
    shelf.map((one) => one.name),
  );
  const own = ownFrom(
    from,
    name,
    randomKey('own', (key) => shelf.some(({ id }) => id === key)),
  );
  addFilaments([own], isOwn(from) ? OWN_SAID.copied(name, from.name) : OWN_SAID.made(name, from.name));
  goTo(own.id);
}

function RemoveOwn({ filament }: { readonly filament: OwnFilament }) {
  useSession((state) => state.part.joints);
  const users = usersOf(filament.id);
  const remove = () => {
    if (removeFilament(filament.id, OWN_SAID.removed(filament.name))) goTo();
  };
  return (
    <QuietButton cannot={users.length > 0 && inUseText(users)} onClick={remove}>
      {OWN_ACTIONS.remove}
    </QuietButton>
  );
}

/** What can be done with a filament: a row of the table can be copied, one of the user's own shared and removed too. */
export function OwnActions({ filament }: { readonly filament: Filament }) {
  const shelf = useShelf();
  const cannot = shelf.length >= MOST_OWN && fullText(MOST_OWN);
  return (
    <div className="own-actions">
      <QuietButton cannot={cannot} onClick={() => makeOwn(filament, shelf)}>
        {isOwn(filament) ? OWN_ACTIONS.copy : OWN_ACTIONS.make}
      </QuietButton>
      {filament.printable && (
        <a className="b quiet" href={`#tests/of/${encodeURIComponent(filament.id)}`}>
          {isOwn(filament) && filament.own.tests ? OWN_ACTIONS.tallies : OWN_ACTIONS.test}
        </a>
      )}
      {isOwn(filament) && (
        <>
          <QuietButton onClick={() => download(filamentFileName(filament.name), writeFilaments([filament]))}>
            {OWN_ACTIONS.share}
          </QuietButton>
          <RemoveOwn filament={filament} />
        </>
      )}
    </div>
  );
}
