import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, inject } from 'vitest';
import { findBrowser } from './find-browser.mjs';

/** As root Chromium starts only without its sandbox; the rest keeps it from calling home. */
const CHROMIUM_ARGUMENTS = [
  '--no-sandbox',
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
  /** Keep the browser's file dialogs (File System Access); else tests take the plain input and downloads. */
  readonly fileDialogs?: boolean;
  /** Let the page fetch its files once more for a time without a network; costs each test a second fetch of all of them. */
  readonly offline?: boolean;
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

/** What the driver writes into the page's console where it keeps the offline worker away. */
const BLOCKED_BY_US = 'Service Worker registration blocked by Playwright';

let running: Promise<Browser> | null = null;

function startBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('No Chrome or Chromium found: run `npm test`, or set BROWSER_PATH.');
  return chromium.launch({ executablePath, args: CHROMIUM_ARGUMENTS });
}

/** The one browser of this test file, started when first asked for; closed after the file's last test. */
export function browserOfThisFile(): Promise<Browser> {
  running ??= startBrowser();
  return running;
}

afterAll(async () => {
  const browser = await running;
  running = null;
  await browser?.close();
});

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
  page.on('requestfailed', (request) => problems.push(`failed: ${request.url()} ${request.failure()?.errorText}`));
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`${response.status()}: ${response.url()}`);
  });
}

/**
 * Opens the built app in a fresh profile of this file's browser: nothing is kept from one call to the next.
 * Tests end with `expect(app.problems).toEqual([])`.
 */
export async function openApp(options: OpenOptions = {}): Promise<OpenedApp> {
  const browser = await browserOfThisFile();
  const url = inject('appUrl');
  const context = await browser.newContext({
    viewport: WINDOW_SIZES[options.size ?? 'large'],
    colorScheme: options.colorScheme ?? 'light',
    reducedMotion: options.reducedMotion ?? 'reduce',
    locale: 'en-GB',
    serviceWorkers: options.offline ? 'allow' : 'block',
    ...options.context,
  });
  // Without a screen the browser's own dialogs for files close at once.
  if (!options.fileDialogs)
    await context.addInitScript(() =>
      Object.assign(window, { showOpenFilePicker: undefined, showSaveFilePicker: undefined }),
    );
  const problems: string[] = [];
  const anotherTab = async (address = '') => {
    const page = await context.newPage();
    watch(page, new URL(url).origin, problems);
    await page.goto(url + address, { waitUntil: 'load' });
    return page;
  };
  const page = await anotherTab(options.address);
  return { page, url, problems, anotherTab, close: () => context.close() };
}
