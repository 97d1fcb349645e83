import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { given, formula } from '../../../src/core/working/step.ts';
import { withNumbers, withSymbols } from '../../../src/ui/lesson/working/formulaMarkup.ts';
import { workOutSteps } from '../../../src/ui/lesson/working/mathBench.ts';
import { Maths } from '../../../src/ui/lesson/working/Maths.ts';
import { figureText, isWrittenAlike, writtenFigure } from '../../../src/ui/text/working/figures.ts';

type Markup = Parameters<typeof Maths>[0]['of'];
const html = (of: Markup) => renderToStaticMarkup(createElement(Maths, { of }));
/** What is read out, without the tree. */
const text = (of: Markup) => html(of).replaceAll(/<[^>]+>/g, '');
const SCOPE = new Map([
  ['t', { value: 0.84, unit: 'mm', isWorked: false }],
  ['θ', { value: 0.610865238, unit: '', isWorked: true }],
  ['L', { value: 12, unit: 'mm', isWorked: false }],
  ['k', { value: -2.5, unit: '', isWorked: false }],
] as const);

describe('a formula as mathematics', () => {
  it('sets a quotient as over and under, without the brackets that a line makes needless', () => {
    expect(html(withSymbols('t * θ / (2 * L)'))).toContain('<mfrac>');
    expect(text(withSymbols('t * θ / (2 * L)'))).toBe('t·θ2·L');
  });

  it('puts in numbers with units, and what a step gave to as many figures as the step showed', () => {
    expect(text(withNumbers('t * θ / (2 * L)', SCOPE))).toBe('0.84mm×0.61092×12mm');
  });

  it('keeps brackets where they mean something', () => {
    expect(text(withNumbers('(t - L) * k', SCOPE))).toBe('(0.84mm−12mm)×(−2.5)');
    expect(text(withNumbers('t^3', SCOPE))).toBe('(0.84mm)3');
    expect(text(withSymbols('sqrt(a^2 + b^2)'))).toBe('√(a2+b2)');
    expect(text(withSymbols('sqrt(a)'))).toBe('√a');
  });

  it('sets what follows the mark below the line, functions and π by their names', () => {
    expect(html(withSymbols('ε_p'))).toContain(
      '<msub><mi mathvariant="normal">ε</mi><mi mathvariant="normal">p</mi></msub>',
    );
    expect(text(withSymbols('α * pi / (180 deg)'))).toBe('α·π180°');
    expect(text(withSymbols('max(a, log10(b))'))).toBe('max(a;log10(b))');
  });
});

describe('the computer algebra', () => {
  const t = given('t', 0.84, 'mm', 'size');
  const step = (expression: string, unit: '' | 'mm' | 'N mm', inputs = [t]) =>
    workOutSteps([
      formula({ id: 'x', symbol: 'y', expression, given: inputs, unit, figure: 1, source: 'plane-bending' }),
    ])[0];

  it('refuses a sum of a length and a number, and a result of another kind than the step says', () => {
    expect(step('t + 1', 'mm')?.outcome.how).toBe('failed');
    expect(step('t * t', 'mm')?.outcome.how).toBe('failed');
    expect(step('t / t', 'mm')?.outcome.how).toBe('failed');
    expect(step('t', '')?.outcome.how).toBe('failed');
  });

  it('refuses what was not given, and what is not finite', () => {
    expect(step('t * L', 'mm')?.outcome.how).toBe('failed');
    expect(step('1 / (t / t - 1)', '')?.outcome.how).toBe('failed');
  });

  it('turns MPa times cubic millimetres into N·mm, and tells how far off a figure is', () => {
    const E = given('E', 2000, 'MPa', 'filament');
    const { outcome } = step('E * t^3', 'N mm', [E, t]) ?? {};
    expect(outcome).toMatchObject({ how: 'worked' });
    // 2000 N/mm² · 0.592704 mm³
    expect(outcome?.how === 'worked' && outcome.value).toBeCloseTo(1185.408, 9);
    expect(outcome?.how === 'worked' && outcome.off).toBeCloseTo(1 - 1 / 1185.408, 9);
  });

  it('takes a short name for what was given, never for a unit of that name', () => {
    // m is a metre and h an hour to the algebra, where nothing of that name is given.
    expect(step('h', 'mm', [given('h', 0.2, 'mm', 'print')])?.outcome).toMatchObject({ how: 'worked', value: 0.2 });
  });
});

describe('figures of a working', () => {
  it('shows four figures, thousands parted, and a power of ten where it is very small or large', () => {
    expect(writtenFigure(20949.793, 4)).toEqual({ digits: '20\u2009950' });
    expect(writtenFigure(0.0213803, 4)).toEqual({ digits: '0.02138' });
    expect(writtenFigure(0.0000213, 4)).toEqual({ digits: '2.13', power: -5 });
    expect(writtenFigure(-0.031, 6)).toEqual({ digits: '−0.031' });
    expect(writtenFigure(0, 4)).toEqual({ digits: '0' });
    expect(writtenFigure(1e12, 4)).toEqual({ digits: '1', power: 12 });
    expect(figureText(0.0000213, 4)).toBe('2.13\u00a0×\u00a010^−5');
  });

  it('tells figures apart that differ in a shown place, and no others', () => {
    expect(isWrittenAlike(0.021380283, 0.0213803)).toBe(true);
    expect(isWrittenAlike(0.02138, 0.02139)).toBe(false);
    expect(isWrittenAlike(2.13e-5, 2.13e-4)).toBe(false);
  });
});
