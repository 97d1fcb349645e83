/** What can be added to a part that has nothing yet: every kind of flexure, and a measured one. */
import type { Joint } from '../../core/design/joint.ts';
import { FAMILIES } from '../../core/flexures/index.ts';
import { newJoint } from '../../store/newJoint.ts';
import { kindText } from '../text/kindText.ts';
import './everyKind.ts';
import { MEASURED, type Addition } from './newJoints.ts';

export const ADDITIONS: readonly Addition[] = [
  ...FAMILIES.map((family) => {
    const { name } = kindText(family.id);
    return {
      id: family.id,
      family: family.id,
      words: name,
      name,
      make: (given: string, like: Joint | undefined) => newJoint(family, given, like),
    };
  }),
  MEASURED,
];
