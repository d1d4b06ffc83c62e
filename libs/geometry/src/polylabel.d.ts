/** The package ships no types. */
declare module 'polylabel' {
  function polylabel(
    polygon: readonly (readonly (readonly number[])[])[],
    precision?: number,
  ): [number, number] & { distance: number };
  export { polylabel as default };
}
