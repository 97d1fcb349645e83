import { browserParts } from '../../store/browserParts.ts';
import { letGo, openSavedElsewhere, useKeeping } from '../../store/keeping.ts';
import { SAID, SAVED_ELSEWHERE_TEXT, setAsideText } from '../text/shellText.ts';
import { sentence } from '../text/said.ts';
import { download } from './download.ts';
import { QuietButton } from './QuietButton.tsx';
import { VerdictShape } from './VerdictShape.tsx';

/** What must be known about the work that is kept: parts that could not be opened, and another window that saves. */
export function KeepingBars() {
  const { setAside, savedElsewhere } = useKeeping();
  return (
    <>
      {setAside.map(({ key, text, why, of }) => (
        <output key={key} className="bar">
          <span className="says">
            <span className="caution">
              <VerdictShape grade="caution" />
            </span>
            {setAsideText(sentence(why), of)}
          </span>
          <QuietButton onClick={() => download(`bendbook-${key}.json`, text)}>Download it</QuietButton>
          <QuietButton onClick={() => void letGo(browserParts, key)}>Delete it</QuietButton>
        </output>
      ))}
      {savedElsewhere && (
        <output className="bar">
          <span className="says">
            <span className="caution">
              <VerdictShape grade="caution" />
            </span>
            {SAVED_ELSEWHERE_TEXT}
          </span>
          <QuietButton onClick={() => void openSavedElsewhere(browserParts, SAID.otherWindow)}>
            Open what it saved
          </QuietButton>
        </output>
      )}
    </>
  );
}
