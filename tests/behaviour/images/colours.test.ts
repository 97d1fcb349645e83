/** Colours as browsers compute them, in plain, and in grey. */
import { describe, expect, it } from 'vitest';
import { greyOf, plainColour } from '../../../src/ui/images/colours.ts';

describe('colours in plain', () => {
  it.each([
    ['rgb(22, 34, 43)', '#16222b', 1],
    ['rgba(22, 34, 43, 0.5)', '#16222b', 0.5],
    ['rgb(22 34 43 / 25%)', '#16222b', 0.25],
    ['#F2f5ea', '#f2f5ea', 1],
    ['#fff', '#ffffff', 1],
    ['transparent', '#000000', 0],
    ['color(srgb 1 0.5 0)', '#ff8000', 1],
    ['color(srgb 0.2 0.4 0.6 / 0.3)', '#336699', 0.3],
  ])('%s', (text, colour, opacity) => {
    expect(plainColour(text)).toEqual({ colour, opacity });
  });

  it('codes what was mixed in linear light: half of it is 188 of 255', () => {
    // Of the standard's curve, as tables of it have it (from memory).
    expect(plainColour('color(srgb-linear 0.5 1 0)')).toEqual({ colour: '#bcff00', opacity: 1 });
  });

  it.each(['none', 'url("#hatch")', 'currentcolor', ''])('takes %s for no colour', (text) => {
    expect(plainColour(text)).toBeUndefined();
  });
});

describe('greys', () => {
  it('keeps black, white and every grey', () => {
    for (const grey of ['#000000', '#ffffff', '#7f7f7f', '#333333']) expect(greyOf(grey)).toBe(grey);
  });

  it('makes pure colours as light as WCAG has them: green lightest, blue darkest', () => {
    // 0.2126, 0.7152 and 0.0722 of full light, coded by the curve of the standard: 127, 220 and 76 of 255.
    expect([greyOf('#ff0000'), greyOf('#00ff00'), greyOf('#0000ff')]).toEqual(['#7f7f7f', '#dcdcdc', '#4c4c4c']);
  });
});
