import { describe, expect, it } from 'vitest';
import { cautionsOf, lookedWords, nothingText } from '../../../src/ui/text/toolpathText.ts';
import { TOOLPATH } from '../../support/toldToolpath.ts';

describe('what is said of a spiral', () => {
  const spiral = { ...TOOLPATH, figures: { ...TOOLPATH.figures, pitch: 0.3 }, looked: { layers: 0, of: 90 } };

  it('is that nothing in it tells what should bend', () => {
    const { head, says } = nothingText(spiral, 'pot.gcode', 'mm');
    expect(head).toBe('A spiral: no thin section looked for');
    expect(says).toContain('one wall all round');
    expect(lookedWords(spiral, 'mm')[0]).toContain('rises all along');
    expect(cautionsOf(spiral, 'pot.gcode', false).join(' ')).not.toContain('0 of');
  });
});
