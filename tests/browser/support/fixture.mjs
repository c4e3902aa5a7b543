// One site and one Chromium for all tests of a file.
import { after, before } from 'node:test';
import { startChromium } from './chromium.mjs';
import { startSite } from './site.mjs';
import { watch } from './watch.mjs';

const patience = 15_000;

/**
 * Call it once at the top of a test file, with switches of Chromium if need be. Its `open(t)` opens the page in a fresh context and fails the test `t` if
 * anything went wrong on it. Options: `path`; `settings` as a returning user has them; `prepare(context)`, which runs
 * before the page loads; and Playwright's own for a context. The worker that keeps the page is blocked unless a test
 * asks for it with `serviceWorkers: 'allow'`: a fresh context would load the page twice.
 */
export function useSite(args) {
  let site;
  let browser;

  before(async () => {
    site = await startSite();
    browser = await startChromium(args);
  });

  after(async () => {
    await browser?.close();
    await site?.stop();
  });

  async function open(t, { path = '', settings, prepare, ...options } = {}) {
    const context = await browser.newContext({ serviceWorkers: 'block', ...options });
    context.setDefaultTimeout(patience);
    if (settings) await context.addInitScript(keepSettings, JSON.stringify(settings));
    await prepare?.(context);
    const page = await context.newPage();
    const watched = watch(page);
    t.after(async () => {
      await context.close();
      watched.assertQuiet();
    });
    await page.goto(site.url + path);
    return { page, context, ...watched };
  }

  return { open, url: () => site.url };
}

/** Runs on the page; what is kept already wins. */
function keepSettings(settings) {
  if (location.protocol.startsWith('http') && localStorage.getItem('wellwright.settings') === null) {
    localStorage.setItem('wellwright.settings', settings);
  }
}
