import type { Problem } from '../problems.ts';

/** Said of kinds whose ends push outwards on the way: walls and base are taken to stay where they are. */
export const FRAME_NOTE: Problem = {
  code: 'frame-must-be-stiff',
  message:
    'The frame is taken as rigid; one that gives when the ends push outwards weakens the snap and may take the second rest away, so make it much thicker than what bends',
};
