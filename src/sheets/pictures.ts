/** ProvedLesson -> the pictures of its cases, each alone. */
import type { ProvedLesson } from '../lesson/prove.ts';
import type { Scene } from '../svg/scene.ts';
import type { Making } from './making.ts';
import { caseName, casePicture } from './panel.ts';

export interface CasePicture {
  readonly number: number;
  readonly title: string;
  readonly scene: Scene;
}

/** A picture for each case, as panels have them. */
export const casePictures = (proved: ProvedLesson, making: Making): CasePicture[] =>
  proved.cases.map((one) => ({
    number: one.case.number,
    title: caseName(one, making),
    scene: casePicture(one, making),
  }));
