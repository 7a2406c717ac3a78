/** A drawing as a page would show it: SVG text -> pixels, by a renderer that knows nothing of cubes. */
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import type { Scene } from '../../src/svg/scene.ts';
import { writeSvg } from '../../src/svg/write-svg.ts';

const FONT = createRequire(import.meta.url).resolve(
  '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
);

export interface Pixels {
  /** `#rrggbb` at a point in scene units. */
  readonly at: (x: number, y: number) => string;
}

export function pixelsOf(scene: Scene): Pixels {
  const scale = 4;
  const image = new Resvg(writeSvg(scene, 'test'), {
    background: '#ffffff',
    fitTo: { mode: 'width', value: scene.width * scale },
    font: { fontFiles: [FONT], loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' },
  }).render();
  const { pixels, width } = image;
  return {
    at: (x, y) => {
      const i = 4 * (Math.round(y * scale) * width + Math.round(x * scale));
      return `#${[0, 1, 2].map((k) => pixels[i + k]!.toString(16).padStart(2, '0')).join('')}`;
    },
  };
}
