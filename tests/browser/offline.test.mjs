// Without a network: one visit is enough, a newer build is taken when the user agrees, never half of one.
import assert from 'node:assert/strict';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { startChromium } from './support/chromium.mjs';
import { host } from './support/host.mjs';
import { watch } from './support/watch.mjs';
import { Wellwright } from './support/wellwright.mjs';

let browser;

before(async () => {
  browser = await startChromium();
});
after(() => browser?.close());

/** Waits until a worker that tries to come in has tried, and failed. */
async function isGone(page) {
  const comes = async () => {
    const { installing, waiting } = await navigator.serviceWorker.getRegistration();
    return Boolean(installing ?? waiting);
  };
  for (let tries = 50; tries > 0 && (await page.evaluate(comes)); tries -= 1) await page.waitForTimeout(100);
  assert.equal(await page.evaluate(comes), false, 'it came in');
}

async function visit(t, { url }, options) {
  const context = await browser.newContext({ locale: 'en-US', ...options });
  context.setDefaultTimeout(15_000);
  const page = await context.newPage();
  const watched = watch(page);
  t.after(() => context.close());
  await page.goto(url);
  return { page, context, app: new Wellwright(page), ...watched };
}

const isKept = (page) => page.getByText('Opens without a network from now on.').waitFor();
const styleOf = (page) => page.locator('link[rel=stylesheet]').getAttribute('href');
const keeps = (page) => page.evaluate(() => caches.keys());

/** Asks for a newer build, as the page itself does whenever it is looked at again. */
function looksAgain(page) {
  return page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update().catch(() => {});
  });
}

/** The page opens without the host as it was. */
async function goesOn(site, page, app, style) {
  await site.stop();
  await page.reload();
  await app.newJobButton.waitFor();
  assert.equal(await styleOf(page), style);
}

test('after one visit the page opens and works with the host gone, from the home screen too', async (t) => {
  const site = await host(t, 'tools/well/');
  const { page, context, problems } = await visit(t, site);
  await isKept(page);
  const link = await page.locator('link[rel=manifest]').getAttribute('href');
  const manifest = await (await fetch(new URL(link, site.url))).json();
  await site.stop();
  await context.setOffline(true);
  await page.close();
  // The home screen opens the address that the manifest tells.
  const started = await context.newPage();
  const quiet = watch(started);
  await started.goto(new URL(manifest.start_url, new URL(link, site.url)).href);
  const app = new Wellwright(started);
  await app.openJob('Brindle Wash 7');
  await app.turn('cost');
  await app.curve.waitFor();
  await app.turn('papers');
  await app.well.waitFor();
  assert.deepEqual(problems, []);
  quiet.assertQuiet();
  // Any address of the page opens, with a question too.
  await started.goto(`${site.url}?gallery`);
  await started.getByRole('button', { name: 'New job' }).waitFor();
});

test('a visit typed with the network cut is whole after the tab was closed at once', async (t) => {
  const site = await host(t);
  const { page, context } = await visit(t, site);
  await isKept(page);
  await site.stop();
  await context.setOffline(true);
  await page.close();

  const open = async () => {
    const tab = await context.newPage();
    await tab.goto(site.url);
    const app = new Wellwright(tab);
    await app.openJob('Brindle Wash 7');
    await app.turn('start-up');
    await app.bigButton.waitFor();
    return tab;
  };
  const figures = {
    'Supply volts, pump off': '241.5',
    'Insulation to ground, before lowering': '550',
    'Insulation to ground, after lowering': '210',
    'Water level at rest': '411 1/2',
    Flow: '35.5',
    'Motor amps, line 1': '13.1',
    'Motor amps, line 2': '13.3',
    'Motor amps, line 3': '12',
  };
  const reading = (tab, name) => tab.getByRole('textbox', { name: new RegExp(`^${name}`) });
  const first = await open();
  await first.getByRole('textbox', { name: 'Name or initials' }).fill('RG');
  await first.getByRole('button', { name: 'Begin a visit' }).click();
  for (const [name, text] of Object.entries(figures)) {
    await reading(first, name).click();
    await first.keyboard.type(text);
  }
  // The last figure is still being typed when the tab goes.
  await first.keyboard.type('.9');
  await first.close({ runBeforeUnload: false });

  const again = await open();
  for (const [name, text] of Object.entries({ ...figures, 'Motor amps, line 3': '12.9' })) {
    assert.equal(await reading(again, name).inputValue(), text, name);
  }
});

test('a newer build waits until it is wanted, and one tab does not turn another', async (t) => {
  const site = await host(t);
  const { page, context, app } = await visit(t, site);
  await isKept(page);
  const first = await styleOf(page);
  const other = await context.newPage();
  await other.goto(site.url);
  await new Wellwright(other).openJob('Low Saddle');

  const newer = site.deploy();
  await page.reload();
  await page.getByText('A newer version of the page is ready.').waitFor();
  assert.equal(await styleOf(page), first);
  await app.openJob('Brindle Wash 7');
  await app.field('Pump setting').fill('631');
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction((newer) => document.querySelector('link[rel=stylesheet]').href.includes(newer), newer);
  assert.equal(await app.field('Pump setting').inputValue(), '631');
  assert.equal((await keeps(page)).length, 1);
  // The other tab goes on with what it has, and is told.
  assert.equal(await styleOf(other), first);
  await other.getByText('A newer version of the page is ready.').waitFor();
  await other.getByRole('button', { name: 'Use it now' }).click();
  await other.waitForFunction((newer) => document.querySelector('link[rel=stylesheet]').href.includes(newer), newer);
  await new Wellwright(other).heading('water').waitFor();
  await site.stop();
  await page.reload();
  await app.heading('water').waitFor();
  assert.ok((await styleOf(page)).includes(newer));
});

test('a newer build that is half there is not taken', async (t) => {
  const site = await host(t);
  const { page, app } = await visit(t, site);
  await isKept(page);
  const first = await styleOf(page);
  rmSync(join(site.site, `style-${site.deploy()}.css`));
  await page.reload();
  await app.newJobButton.waitFor();
  // The new worker tries, fails and is gone.
  await isGone(page);
  assert.equal(await page.getByText('A newer version of the page is ready.').count(), 0);
  await goesOn(site, page, app, first);
});

test('a newer build with a file that came torn is not taken', async (t) => {
  const site = await host(t);
  const { page, app } = await visit(t, site);
  await isKept(page);
  const first = await styleOf(page);
  const torn = join(site.site, `style-${site.deploy()}.css`);
  writeFileSync(torn, readFileSync(torn).subarray(0, 1000));
  await looksAgain(page);
  await isGone(page);
  await goesOn(site, page, app, first);
});

test('the program comes over the line once, for the page, its worker, and a newer build that has the same', async (t) => {
  const site = await host(t);
  const programs = () => site.asked.filter((address) => address.endsWith('.wasm')).length;
  const { page } = await visit(t, site);
  await isKept(page);
  assert.equal(programs(), 1);
  site.deploy();
  await page.reload();
  await page.getByText('A newer version of the page is ready.').waitFor();
  assert.equal(programs(), 1);
  assert.equal((await keeps(page)).length, 2);
});

test('a newer build whose page is still the old one is not taken', async (t) => {
  const site = await host(t);
  const { page, app } = await visit(t, site);
  await isKept(page);
  const first = await styleOf(page);
  const old = readFileSync(join(site.site, 'index.html'), 'utf8');
  const newer = site.deploy();
  writeFileSync(join(site.site, 'index.html'), old);
  await looksAgain(page);
  await isGone(page);
  assert.deepEqual((await page.evaluate(() => caches.keys())).filter((name) => name.endsWith(newer)), [], 'nothing is left of the one that failed');
  await goesOn(site, page, app, first);
});

test('an address below the page is not the page', async (t) => {
  const site = await host(t);
  const { page } = await visit(t, site);
  await isKept(page);
  const tab = await page.context().newPage();
  assert.equal((await tab.goto(`${site.url}training.html`)).status(), 200);
  assert.equal(await tab.title(), 'Why deep wells run on 480 V');
  assert.equal((await tab.goto(`${site.url}?embed&motor=5hp&depth=300ft`)).status(), 200);
  await assert.rejects(tab.goto(`${site.url}nothing/here`), /ERR_HTTP_RESPONSE_CODE_FAILURE/);
  await site.stop();
  const other = await page.context().newPage();
  assert.equal((await other.goto(`${site.url}index.html`)).status(), 200, 'its other name is the page, without a network too');
});

test('the manifest names icons that are there, of the size that it says', async (t) => {
  const { url } = await host(t);
  const manifest = await (await fetch(`${url}manifest.webmanifest`)).json();
  for (const { src, sizes, type } of manifest.icons) {
    const answer = await fetch(url + src);
    assert.equal(answer.status, 200, src);
    assert.match(answer.headers.get('content-type'), new RegExp(type.replace('+', '\\+')), src);
    const bytes = Buffer.from(await answer.arrayBuffer());
    if (type === 'image/png') assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, sizes, src);
  }
});

test('the browser’s offer of a place on the home screen is passed on', async (t) => {
  const site = await host(t);
  const { page } = await visit(t, site);
  const button = page.getByRole('button', { name: 'Put on the home screen' });
  assert.equal(await button.count(), 0);
  await page.evaluate(() => {
    const offer = new Event('beforeinstallprompt', { cancelable: true });
    offer.prompt = async () => { window.prompted = true; };
    window.dispatchEvent(offer);
  });
  await button.click();
  assert.equal(await page.evaluate(() => window.prompted), true);
  await button.waitFor({ state: 'detached' });
});
