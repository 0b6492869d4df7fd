import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';
import { writeLink } from '../../src/interchange/link/write.ts';
import { findBrowser } from './find-browser.mjs';
import { tellWindowOfFailure } from './tell-window.ts';

/**
 * As root Chromium starts only without its sandbox. Without a graphics card its graphics process draws in software, and on a
 * busy machine it has been seen to stop giving frames. The rest keeps it from calling home.
 */
const CHROMIUM_ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  // What is asked of `systemLanguage` in a drawing does not follow the context's locale.
  '--accept-lang=en-GB,en',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
  '--no-first-run',
];

/** The two window sizes that every visible change is looked at in. */
export const WINDOW_SIZES = {
  large: { width: 1440, height: 900 },
  small: { width: 1024, height: 700 },
} as const;

export interface OpenOptions {
  /** Default: large. */
  readonly size?: keyof typeof WINDOW_SIZES;
  readonly colorScheme?: 'light' | 'dark';
  readonly reducedMotion?: 'reduce' | 'no-preference';
  /** Appended to the page's address, such as `#view=compare`. */
  readonly address?: string;
  /**
   * The family to begin with instead of the demo, as a file's value; it comes by a link, so it is unsaved. The demo has
   * two hundred pairs, and judging them is two thirds of the work of opening.
   */
  readonly family?: object;
  /** Keep the browser's file dialogs (File System Access); else tests take the plain input and downloads. */
  readonly fileDialogs?: boolean;
  /** Let the page fill the screen; a window that does cannot be given another size by a test. */
  readonly fullScreen?: boolean;
  /** Let the page fetch its files once more for a time without a network; costs each test a second fetch of all of them. */
  readonly offline?: boolean;
  /**
   * Take the window that this file closed last, with all that it kept taken out, instead of a fresh profile: opening
   * costs a third less. Only for tests that leave the window itself as it is: no dialogs answered, no scripts put in.
   */
  readonly sameWindow?: boolean;
  /** Keep the hints over the views, as a newcomer has them; else they are put away, so that views have their whole height. */
  readonly hints?: boolean;
  /** Anything else a browser context takes, such as `hasTouch`. */
  readonly context?: BrowserContextOptions;
}

export interface OpenedApp {
  readonly page: Page;
  readonly url: string;
  /** Whatever went wrong so far: console errors and warnings, uncaught errors, refused or foreign requests. */
  readonly problems: string[];
  /** Opens the app once more in another tab of the same profile; its complaints go to `problems` too. */
  anotherTab(address?: string): Promise<Page>;
  close(): Promise<void>;
}

/** The part of the address that opens a family. */
function linkTo(family: object): string {
  const link = writeLink(JSON.stringify({ format: 'sectionary-family', version: 1, units: 'mm', ...family }));
  if (!link.ok) throw new Error('The family is too large for a link.');
  return link.fragment;
}

/** What the driver writes into the page's console where it keeps the offline worker away. */
const BLOCKED_BY_US = 'Service Worker registration blocked by Playwright';

let running: Promise<Browser> | null = null;

function startBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('No Chrome or Chromium found: run `npm test`, or set BROWSER_PATH.');
  return chromium.launch({ executablePath, args: CHROMIUM_ARGUMENTS });
}

/** The one browser of this lane of test files, started when first asked for, and again where it broke off. */
export async function browserOfThisLane(): Promise<Browser> {
  running ??= startBrowser();
  const browser = await running;
  if (browser.isConnected()) return browser;
  running = startBrowser();
  return running;
}

/** Closes whatever windows a test file has left open, so that the next one begins with none. */
export async function closeWindows(): Promise<void> {
  parked = null;
  const browser = await running;
  await Promise.all(browser?.contexts().map((context) => context.close()) ?? []);
}

/** Prints what the windows of a failed test show that its file keeps open for the next one. */
export async function tellOpenWindows(): Promise<void> {
  const browser = await running;
  const pages = browser?.contexts().flatMap((context) => context.pages()) ?? [];
  for (const page of pages) if (page !== parked) await tellWindowOfFailure(page);
}

function leavesOrigin(address: string, origin: string): boolean {
  const url = new URL(address);
  return url.protocol !== 'data:' && url.protocol !== 'blob:' && url.origin !== origin;
}

/** Writes down in `problems` everything that a user's console would complain about, and every foreign request. */
function watch(page: Page, origin: string, problems: string[]): void {
  page.on('console', (message) => {
    if (message.text() === BLOCKED_BY_US) return;
    if (message.type() === 'error' || message.type() === 'warning') problems.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => problems.push(`uncaught: ${error.message}`));
  page.on('request', (request) => {
    if (leavesOrigin(request.url(), origin)) problems.push(`left the origin: ${request.url()}`);
  });
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText;
    // Given up by the page itself: it was left, or a thread was ended before all of its program was there.
    if (why !== 'net::ERR_ABORTED') problems.push(`failed: ${request.url()} ${why}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`${response.status()}: ${response.url()}`);
  });
}

/** A window of this file that stands empty until the next test. */
let parked: Page | null = null;

/** How long the driver waits for anything unless told otherwise, milliseconds: a busy machine is no fault of the app. */
const PATIENCE_MS = 60_000;

/** A window that does not come to rest within this time is given up for a fresh one, milliseconds. */
const PARKING_MS = 10_000;

async function freshWindow(options: OpenOptions): Promise<Page> {
  const browser = await browserOfThisLane();
  const context = await browser.newContext({
    viewport: WINDOW_SIZES[options.size ?? 'large'],
    ...mediaOf(options),
    locale: 'en-GB',
    serviceWorkers: options.offline ? 'allow' : 'block',
    ...options.context,
  });
  context.setDefaultTimeout(PATIENCE_MS);
  // Without a screen the browser's own dialogs for files close at once.
  if (!options.fileDialogs)
    await context.addInitScript(() =>
      Object.assign(window, { showOpenFilePicker: undefined, showSaveFilePicker: undefined }),
    );
  if (!options.fullScreen)
    await context.addInitScript(() => Object.defineProperty(document, 'fullscreenEnabled', { get: () => false }));
  if (!options.hints)
    await context.addInitScript(() => {
      try {
        localStorage.getItem('sectionary-help') ?? localStorage.setItem('sectionary-help', '{"hints":false}');
      } catch {
        // A page without a memory has its hints.
      }
    });
  return context.newPage();
}

/** The parked window as a fresh one would be, or a fresh one. */
async function takeWindow(options: OpenOptions): Promise<Page> {
  const page = options.sameWindow ? parked : null;
  if (!page) return freshWindow(options);
  parked = null;
  await page.setViewportSize(WINDOW_SIZES[options.size ?? 'large']);
  await page.emulateMedia({ ...mediaOf(options), media: null, forcedColors: null, contrast: null });
  return page;
}

const mediaOf = ({ colorScheme = 'light', reducedMotion = 'reduce' }: OpenOptions) => ({ colorScheme, reducedMotion });

/** Leaves the app for a picture beside it, where no script runs, and takes out all that the profile has kept. */
async function emptyWindow(page: Page, url: string): Promise<void> {
  page.removeAllListeners();
  await page.unrouteAll();
  page.setDefaultTimeout(PARKING_MS);
  for (const other of page.context().pages()) if (other !== page) await other.close();
  await page.goto(`${url}icons/icon-192.png`);
  await page.evaluate(() => {
    sessionStorage.clear();
    localStorage.clear();
  });
  const debug = await page.context().newCDPSession(page);
  await debug.send('Storage.clearDataForOrigin', { origin: new URL(url).origin, storageTypes: 'all' });
  await debug.detach();
  // Nothing lies under the pointer that the next test begins with.
  await page.mouse.move(0, 0);
  page.setDefaultTimeout(PATIENCE_MS);
}

/** Parks a window for the next test; one that is closed or does not answer is thrown away with its profile. */
async function parkWindow(page: Page, context: BrowserContext, url: string): Promise<void> {
  try {
    if (page.isClosed()) throw new Error('The window is closed.');
    await emptyWindow(page, url);
    parked = page;
  } catch {
    await context.close();
  }
}

/**
 * Opens the built app in a fresh profile of this file's browser: nothing is kept from one call to the next.
 * Tests end with `expect(app.problems).toEqual([])`.
 */
export async function openApp(options: OpenOptions = {}): Promise<OpenedApp> {
  const url = inject('appUrl');
  const page = await takeWindow(options);
  const context = page.context();
  const problems: string[] = [];
  const open = async (page: Page, address = '') => {
    watch(page, new URL(url).origin, problems);
    await page.goto(url + address, { waitUntil: 'load' });
    return page;
  };
  await open(page, options.family ? linkTo(options.family) : options.address);
  // As no file holds it, the page asks before another takes its place, until it is kept.
  if (options.family) await page.locator('[data-kept="kept"]').waitFor({ state: 'attached' });
  return {
    page,
    url,
    problems,
    anotherTab: async (address) => open(await context.newPage(), address),
    close: async () => {
      await tellWindowOfFailure(page);
      await (options.sameWindow ? parkWindow(page, context, url) : context.close());
    },
  };
}
