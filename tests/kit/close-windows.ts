import { afterAll, afterEach } from 'vitest';
import { closeWindows, tellOpenWindows } from './open-app.ts';

// Runs anew for each file of browser tests, though the modules and the browser stay.
afterEach(tellOpenWindows);
afterAll(closeWindows);
