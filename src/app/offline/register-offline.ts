/** How long after the page has loaded its files are fetched once more for later: what is on the screen comes first. */
const AFTER_LOAD_MS = 1_500;

/**
 * Makes the built page work without a network from its second opening on. Where the browser allows no such thing (a
 * page opened from a disk, a private window) nothing is lost but that.
 *
 * @param onNewVersion called when another build lies ready, with what brings it up: the page is loaded again.
 * @check tests/browser/keep-offline.test.ts
 */
export function registerOffline(onNewVersion: (bringUp: () => void) => void): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const start = () => setTimeout(() => register(onNewVersion).catch(() => {}), AFTER_LOAD_MS);
  if (document.readyState === 'complete') start();
  else addEventListener('load', start, { once: true });
}

async function register(onNewVersion: (bringUp: () => void) => void): Promise<void> {
  const workers = navigator.serviceWorker;
  const wasServed = workers.controller !== null;
  const registration = await workers.register('./offline-worker.js', { scope: './' });
  const tell = () => {
    const { waiting } = registration;
    if (!waiting || !workers.controller) return;
    onNewVersion(() => {
      workers.addEventListener('controllerchange', () => location.reload(), { once: true });
      waiting.postMessage('take-over');
    });
  };
  tell();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', tell));
  // Another window has brought the new version up: this one still shows the old.
  if (wasServed)
    workers.addEventListener('controllerchange', () => onNewVersion(() => location.reload()), { once: true });
  addEventListener('visibilitychange', () => {
    if (!document.hidden) registration.update().catch(() => {});
  });
}
