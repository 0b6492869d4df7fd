/** A font file as a `data:` address, put there by the bundler. */
declare module '*.woff?inline' {
  const address: string;
  export default address;
}
