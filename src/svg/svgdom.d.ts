/** svgdom has no types of its own; this is all of it that we call. */
declare module 'svgdom' {
  export function createSVGWindow(): Window & { readonly document: Document };
}
