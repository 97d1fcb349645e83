import { replyFor } from '../../core/inspect/reply.ts';
import { LetterBox } from '../check/Letter.tsx';
import { REPLY } from '../text/meshText.ts';
import { replySaid } from '../text/replyText.ts';
import { useChecked } from './checked.ts';

/** A letter to whoever drew the part: what to thicken or lengthen. */
export function Reply() {
  const { part, name, values, unit } = useChecked();
  const write = () => {
    const { facts, findings, unit: read } = part;
    const file = { fileName: name, box: facts.box, unit: read, flexures: findings.flexures };
    return replySaid(replyFor(file, values.as, values.asked), unit);
  };
  return <LetterBox words={REPLY} write={write} />;
}
