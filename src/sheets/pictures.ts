/** ProvedLesson -> the pictures of its cases, each alone. */
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Ink } from '../svg/palette.ts';
import type { Scene } from '../svg/scene.ts';
import { LANGUAGES } from '../words/languages.ts';
import { caseName, casePicture } from './panel.ts';

export interface CasePicture {
  readonly number: number;
  readonly title: string;
  readonly scene: Scene;
}

export function casePictures(proved: ProvedLesson, ink: Ink): CasePicture[] {
  const words = LANGUAGES[proved.lesson.language];
  return proved.cases.map((one) => ({
    number: one.case.number,
    title: caseName(one, words),
    scene: casePicture(one, { ink, words }),
  }));
}
