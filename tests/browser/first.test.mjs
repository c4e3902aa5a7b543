// What stands on the page until the program has come, and that it goes.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { useSite } from './support/fixture.mjs';
import { dist } from './support/site.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();

/** Holds the program back until `go` is called. */
function hold() {
  let go;
  const gone = new Promise((resolve) => { go = resolve; });
  const prepare = (context) => context.route('**/*.wasm', async (route) => {
    await gone;
    await route.continue().catch(() => {});
  });
  return { go, prepare };
}

const first = (page) => page.locator('#first');
const shown = (page, text) => first(page).getByText(text).filter({ visible: true });
const drawn = (page) => first(page).getByRole('figure').filter({ visible: true });

for (const [locale, lead, note] of [['en-US', /^A deep well/, /invented figures/], ['es-MX', /^Un pozo profundo/, /cifras inventadas/]]) {
  test(`who is new sees what it is for and an example, which go when the program has come: ${locale}`, async (t) => {
    const { go, prepare } = hold();
    const { page } = await open(t, { prepare, locale });
    await shown(page, lead).waitFor();
    await shown(page, note).waitFor();
    assert.equal(await drawn(page).count(), 1);
    assert.match(await drawn(page).textContent(), /\$546/);
    assert.equal(await page.locator('html').getAttribute('lang'), locale.slice(0, 2));
    go();
    await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor();
    assert.equal(await first(page).count(), 0);
  });
}

test('the theme that was set is there from the first', async (t) => {
  const { prepare } = hold();
  const { page } = await open(t, { prepare, settings: { theme: 'sun' } });
  await shown(page, /^Loading/).waitFor();
  assert.equal(await page.locator('html').getAttribute('data-theme'), 'sun');
});

test('nothing is shifted when the program takes the page over', async (t) => {
  const { go, prepare } = hold();
  const watch = (context) => context.addInitScript(() => {
    window.shifted = 0;
    new PerformanceObserver((list) => list.getEntries().forEach(({ value }) => { window.shifted += value; })).observe({ type: 'layout-shift', buffered: true });
  });
  const { page } = await open(t, { prepare: async (context) => { await prepare(context); await watch(context); }, path: '#/job/demo-0/water' });
  await shown(page, /^Loading/).waitFor();
  go();
  await page.getByRole('slider').first().waitFor();
  await page.waitForTimeout(300);
  assert.equal(await page.evaluate(() => window.shifted), 0);
});

/** A job that was opened, and of which the page was left: its address. */
async function left(page) {
  const app = new Wellwright(page, 'en');
  await app.newJob({ depth: '620', power: '7.5' });
  await app.jobName.fill('Ridge well');
  await app.jobName.press('Enter');
  await page.waitForFunction(() => Object.keys(localStorage).some((key) => key.startsWith('wellwright.job.') && localStorage.getItem(key).includes('Ridge well')));
  const url = page.url();
  await page.goto('about:blank');
  return url;
}

test('who comes back to a job sees its last answer; who comes to another, or finds it gone, does not', async (t) => {
  const { page, context } = await open(t, { locale: 'en-US' });
  const url = await left(page);
  const { prepare } = hold();
  await prepare(context);
  await page.goto(url);
  await shown(page, 'Ridge well').waitFor();
  await shown(page, 'As it was last time').waitFor();
  assert.match(await first(page).locator('.last:visible').innerText(), /480\sV|Waiting for/);
  assert.equal(await drawn(page).count(), 0, 'the example');
  const id = url.match(/#\/job\/([^/]+)/)[1];
  for (const other of ['', '#/job/other/water', '#/job/demo-0/water', `#/show/${id}`]) {
    await page.goto('about:blank');
    await page.goto(url.replace(/#.*/, other));
    await shown(page, /^Loading/).waitFor();
    assert.equal(await shown(page, 'Ridge well').count(), 0, other);
  }
  await page.evaluate((key) => localStorage.removeItem(key), `wellwright.job.${id}`);
  await page.goto('about:blank');
  await page.goto(url);
  await shown(page, /^Loading/).waitFor();
  assert.equal(await shown(page, 'Ridge well').count(), 0, 'gone');
});

test('a last answer of any other form is left out', async (t) => {
  for (const text of ['', 'null', '[]', '{"id":3}', '{"id":', '{"id":"demo-0"}', '"x"']) {
    const { prepare } = hold();
    const store = (context) => context.addInitScript((kept) => {
      if (location.protocol.startsWith('http')) localStorage.setItem('wellwright.last', kept);
    }, text);
    const { page } = await open(t, { locale: 'en-US', path: '#/job/demo-0/water', prepare: async (context) => { await prepare(context); await store(context); } });
    await shown(page, /^Loading/).waitFor();
    assert.equal(await first(page).locator('.last:visible').count(), 0, text);
  }
});

/** How a program does not come: not at all, or as something else, as from a network that asks to sign in. */
const ways = {
  'does not come': (route) => route.abort(),
  'comes as something else': (route) => route.fulfill({ contentType: 'application/wasm', body: '<html>' }),
};

for (const [name, cuts] of Object.entries(ways)) test(`a program that ${name} is said, and can be asked for again`, async (t) => {
  let cut = true;
  const prepare = (context) => context.route('**/*.wasm', (route) => (cut ? cuts(route) : route.continue()));
  const { page, problems } = await open(t, { prepare, locale: 'en-US' });
  await shown(page, /^The page did not come through/).waitFor();
  assert.ok(problems.splice(0).length > 0);
  cut = false;
  await first(page).getByRole('button', { name: 'Try again' }).filter({ visible: true }).click();
  await new Wellwright(page, 'en').newJobButton.waitFor();
});

test('inside a page of somebody else nothing stands there, and nothing stored is read', async (t) => {
  const { prepare } = hold();
  const spy = (context) => context.addInitScript(() => {
    window.reads = 0;
    const own = Storage.prototype.getItem;
    Storage.prototype.getItem = function (...all) { window.reads += 1; return own.apply(this, all); };
  });
  const { page } = await open(t, { path: '?embed', prepare: async (context) => { await prepare(context); await spy(context); } });
  await page.waitForFunction(() => document.documentElement.dataset.first === 'none');
  assert.equal(await first(page).isVisible(), false);
  assert.equal(await page.evaluate(() => window.reads), 0);
});

test('files that are pressed beforehand are the files that they stand for', () => {
  const names = readdirSync(dist);
  const pressed = names.filter((name) => /\.(br|gz)$/.test(name));
  assert.ok(pressed.length >= 16, `${pressed}`);
  for (const kind of ['.wasm', 'index.html', '.css']) {
    for (const ending of ['.br', '.gz']) assert.ok(pressed.some((name) => name.endsWith(kind + ending)), kind + ending);
  }
  for (const name of pressed) {
    const open = name.endsWith('.br') ? brotliDecompressSync : gunzipSync;
    assert.ok(open(readFileSync(join(dist, name))).equals(readFileSync(join(dist, name.slice(0, -3)))), name);
  }
  assert.doesNotMatch(readFileSync(join(dist, 'worker.js'), 'utf8'), /\.(br|gz)"/);
});
