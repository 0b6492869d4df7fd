import { z } from 'zod';

// The page forbids compiling code from text, which the library would otherwise try.
z.config({ jitless: true });

/** The library that checks a value's shape. */
export { z };
