/** The part of dxf 5.3 that `parse-entities.ts` uses; the package has no declarations of its own. */
declare module 'dxf/lib/parseString.js' {
  const parseString: ((text: string) => unknown) | { readonly default: (text: string) => unknown };
  export default parseString;
}
