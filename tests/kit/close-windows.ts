import { afterAll } from 'vitest';
import { closeWindows } from './open-app.ts';

// Runs anew for each file of browser tests, though the modules and the browser stay.
afterAll(closeWindows);
