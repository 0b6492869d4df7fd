/** The package declares its classes but not the module that is imported. */
declare module 'clipper2-wasm/dist/es/clipper2z.js' {
  import type { MainModule } from 'clipper2-wasm/dist/clipper2z.d.ts';

  export type { MainModule, Path64, Paths64, PolyPath64 } from 'clipper2-wasm/dist/clipper2z.d.ts';

  const open: () => Promise<MainModule>;
  export default open;
}
