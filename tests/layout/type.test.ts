import { expect, test } from 'vitest';
import { inks, typeScale } from '../../src/layout/type.ts';

/** Source: WCAG 2.2, definitions of relative luminance and contrast ratio; 4.5 is success criterion 1.4.3. */
const luminance = (colour: string): number => {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
};

test.each(Object.entries(inks))('%s text stands out of white paper', (_, colour) => {
  expect(1.05 / (luminance(colour) + 0.05)).toBeGreaterThanOrEqual(4.5);
});

test.each(Object.entries(typeScale))('%s keeps to the grid of 3 points and clears its own size', (_, style) => {
  expect(style.leading % 3).toBe(0);
  expect(style.leading).toBeGreaterThan(style.size);
});
