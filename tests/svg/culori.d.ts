/** culori has no types of its own; this is all of it that the tests call. */
declare module 'culori' {
  interface Lab65 {
    mode: 'lab65';
    l: number;
    a: number;
    b: number;
  }
  interface Lrgb {
    mode: 'lrgb';
    r: number;
    g: number;
    b: number;
  }
  export function converter(mode: 'lab65'): (colour: string | Lrgb) => Lab65;
  export function converter(mode: 'lrgb'): (colour: string) => Lrgb;
  export function differenceCiede2000(): (a: string | Lab65, b: string | Lab65) => number;
  export function wcagContrast(a: string, b: string): number;
}
