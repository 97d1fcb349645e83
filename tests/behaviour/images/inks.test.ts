/** Style sheets turned into attributes, on marks that are no part of any page. */
import { describe, expect, it } from 'vitest';
import { inksOf, isUnseen, referenceOf, ROOT_LOOK, wholeLook } from '../../../src/ui/images/inks.ts';

const USUAL: Readonly<Record<string, string>> = {
  fill: 'rgb(0, 0, 0)',
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  stroke: 'none',
  'stroke-width': '1px',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0px',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-miterlimit': '4',
  'stroke-opacity': '1',
  'paint-order': 'normal',
  'clip-rule': 'nonzero',
  opacity: '1',
  'clip-path': 'none',
  mask: 'none',
  'vector-effect': 'none',
  'stop-color': 'rgb(0, 0, 0)',
  'stop-opacity': '1',
};

const look = (own: Readonly<Record<string, string>>) => (property: string) => own[property] ?? USUAL[property] ?? '';
const whole = (own: Readonly<Record<string, string>>, isGrey = false) => wholeLook(look(own), isGrey);

describe('inks of a mark', () => {
  it('says nothing of what holds anyway', () => {
    expect(inksOf('path', whole({}), ROOT_LOOK)).toEqual({});
  });

  it('says what differs from what it is in, lengths without their unit', () => {
    const inks = inksOf(
      'path',
      whole({ fill: 'none', stroke: 'rgb(22, 34, 43)', 'stroke-width': '1.8px', 'stroke-dasharray': '14px, 3px' }),
      ROOT_LOOK,
    );
    expect(inks).toEqual({ fill: 'none', stroke: '#16222b', 'stroke-width': '1.8', 'stroke-dasharray': '14, 3' });
  });

  it('leaves to its surroundings what they say already', () => {
    const around = whole({ stroke: 'rgb(22, 34, 43)', 'stroke-width': '1.8px' });
    expect(inksOf('path', whole({ stroke: 'rgb(22, 34, 43)', 'stroke-width': '0.8px' }), around)).toEqual({
      'stroke-width': '0.8',
    });
  });

  it('takes back what its surroundings say and it does not', () => {
    const around = whole({ fill: 'none', 'stroke-dasharray': '2px' });
    expect(inksOf('circle', whole({}), around)).toEqual({ fill: '#000000', 'stroke-dasharray': 'none' });
  });

  it('parts colours with an opacity, which multiply with the opacity of the fill', () => {
    const inks = inksOf('rect', whole({ fill: 'rgba(227, 164, 60, 0.5)', 'fill-opacity': '0.4' }), ROOT_LOOK);
    expect(inks).toEqual({ fill: '#e3a43c', 'fill-opacity': '0.2' });
  });

  it('keeps references within the drawing, whatever address the browser puts before them', () => {
    const inks = inksOf('path', whole({ fill: 'url("https://here/page#hatch")', 'clip-path': 'url(#c)' }), ROOT_LOOK);
    expect(inks).toEqual({ fill: 'url(#hatch)', 'clip-path': 'url(#c)' });
    expect(referenceOf('url("#a_r_1_")')).toBe('a_r_1_');
    expect(referenceOf('none')).toBeUndefined();
  });

  it('leaves out faces that only stand in until the real ones have come', () => {
    const inks = inksOf(
      'text',
      whole({ 'font-family': 'Measured, "Measured fallback", Arial, sans-serif' }),
      ROOT_LOOK,
    );
    expect(inks).toEqual({ 'font-family': 'Measured, Arial, sans-serif' });
  });

  it('inherits no opacity, so that each says its own', () => {
    const around = whole({ opacity: '0.6' });
    expect(inksOf('g', whole({ opacity: '0.6' }), around)).toEqual({ opacity: '0.6' });
    expect(inksOf('g', whole({}), around)).toEqual({});
  });

  it('says of the stops of a ramp what no other mark has', () => {
    const ramp = whole({ 'stop-color': 'rgba(181, 42, 69, 0.5)' });
    expect(inksOf('stop', ramp, ROOT_LOOK)).toEqual({ 'stop-color': '#b52a45', 'stop-opacity': '0.5' });
    expect(inksOf('rect', ramp, ROOT_LOOK)).toEqual({});
  });

  it('turns inks grey for a print', () => {
    expect(inksOf('path', whole({ fill: 'rgb(255, 0, 0)' }, true), ROOT_LOOK)).toEqual({ fill: '#7f7f7f' });
  });

  it('knows what cannot be seen: a place for a hand, of a colour that lets all through', () => {
    expect(isUnseen(whole({ fill: 'rgba(0, 0, 0, 0)' }))).toBe(true);
    expect(isUnseen(whole({ fill: 'none', stroke: 'rgb(0, 0, 0)' }))).toBe(false);
  });
});
