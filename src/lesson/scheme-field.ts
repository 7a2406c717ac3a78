/** The colours of a cube as a claim names them. */
import { type FaceColours, USUAL_SCHEME, writeScheme } from '../cube/colours.ts';

/** Nothing for the usual colours. */
export function schemeField(scheme: FaceColours): { readonly scheme?: string } {
  const written = writeScheme(scheme);
  return written === writeScheme(USUAL_SCHEME) ? {} : { scheme: written };
}
