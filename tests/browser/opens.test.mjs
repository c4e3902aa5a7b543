// The page opens, shows its name and loads each of its parts once.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';

const { open } = useSite();

const name = (page) =>
  page.getByRole('banner').or(page.getByRole('heading', { level: 1 })).filter({ hasText: 'Wellwright' }).first();

test('the page shows its name', async (t) => {
  const { page } = await open(t);
  await name(page).waitFor({ state: 'visible' });
  assert.match(await page.title(), /Wellwright/);
});

test('a security policy is in force that allows no inline script', async (t) => {
  const { page } = await open(t);
  const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
  assert.match(policy, /default-src 'none'/);
  assert.match(policy, /script-src 'self' 'wasm-unsafe-eval'(;|$)/);
  assert.equal(await page.locator('script:not([src])').count(), 0);
});

test('the program is loaded once, as WebAssembly', async (t) => {
  const { page, responses } = await open(t);
  await name(page).waitFor({ state: 'visible' });
  const programs = responses.filter((response) => response.url().endsWith('.wasm'));
  assert.equal(programs.length, 1);
  assert.equal(programs[0].headers()['content-type'], 'application/wasm');
});

test('without scripts a sentence in each language says what the page needs', async (t) => {
  const { page, problems } = await open(t, { javaScriptEnabled: false });
  for (const [language, text] of [['en', /needs JavaScript and WebAssembly/], ['es', /necesita JavaScript y WebAssembly/]]) {
    const sentence = page.getByText(text);
    await sentence.waitFor({ state: 'visible' });
    assert.equal(await sentence.getAttribute('lang'), language);
  }
  // Chromium then reports the preload of a script as refused.
  const others = problems.splice(0).filter((problem) => !/\.js csp$/.test(problem));
  assert.deepEqual(others, []);
});
