// The curve inside a page of somebody else, at another origin: what it is asked for, what it says, what it leaves alone.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { address, listen } from '../../app/build/server.mjs';
import { around, bare, training } from './support/around.mjs';
import { startChromium } from './support/chromium.mjs';
import { useSite } from './support/fixture.mjs';
import { dist } from './support/site.mjs';

const { open, url } = useSite();
const plain = (text) => text.replaceAll(/\s+/g, ' ').trim();
const frameOf = (page, at = 0) => page.locator('iframe').nth(at).contentFrame();
const depthOf = (frame) => frame.getByRole('slider').getAttribute('aria-valuetext').then(plain);

/** Waits until a look at the page gives what is wanted, and says what it gave last. */
async function until(page, look, wanted, what = 'it') {
  let last;
  for (let tries = 100; tries > 0; tries -= 1) {
    last = await look();
    if (wanted(last)) return last;
    await page.waitForTimeout(50);
  }
  throw new Error(`${what}: ${JSON.stringify(last)}`);
}

/** A frame of the built page with these words, inside a page at another origin that it names as its host. */
async function framed(t, words = '', { host = true, inside = '', size = 'width="900" height="700"', ...options } = {}) {
  const pages = {};
  const origin = await around(t, pages);
  const named = host === true ? `&host=${origin}` : host === false ? '' : `&host=${host}`;
  pages['/'] = bare(`<iframe ${size} src="${url()}?embed${words}${named}"></iframe>${inside}`);
  const { page, ...rest } = await open(t, { path: '', ...options });
  await page.goto(`${origin}/`);
  const frame = frameOf(page);
  await frame.getByRole('main').waitFor();
  return { page, frame, origin, ...rest };
}

const heard = (page, type) => page.evaluate((type) => window.heard.filter((message) => message.type === type), type);
const say = (page, message) =>
  page.evaluate(
    ([message, to]) => document.querySelector('iframe').contentWindow.postMessage(message, to),
    [message, new URL(url()).origin],
  );

test('an address asks for motor, depth, price, units, language, theme and what may be changed', async (t) => {
  const words = '&motor=5hp&depth=620ft&price=5&units=si&lang=es&theme=sun&count=cable&change=motor,price,units,count';
  const { frame } = await framed(t, words);
  const root = frame.locator('html');
  assert.equal(await root.getAttribute('lang'), 'es');
  assert.equal(await root.getAttribute('data-theme'), 'sun');
  // 620 ft are 188.98 m.
  await frame.getByText(/V ahorra, a 189/).first().waitFor();
  assert.equal(await frame.getByRole('slider').count(), 0, 'the depth may not be changed');
  // 5 hp of 745.7 W are 3.7285 kW; a price without a unit is in that of the screen.
  assert.match(await frame.getByRole('textbox', { name: /Potencia/ }).inputValue(), /^3[.,]7285$/);
  assert.match(await frame.getByRole('textbox', { name: /[Mm]etal/ }).inputValue(), /^5$/);
  await frame.getByRole('group', { name: 'Unidades' }).getByRole('radio').first().click({ force: true });
  await frame.getByText(/V ahorra, a 620/).first().waitFor();
});

test('what stands in the frame agrees with the job that it opens to', async (t) => {
  const { page, frame, context } = await framed(t, '&motor=7.5hp&depth=700ft');
  const numbers = plain(await frame.getByRole('main').locator('dl').innerText());
  const [tab] = await Promise.all([context.waitForEvent('page'), frame.getByRole('link', { name: 'Open this job in Wellwright' }).click()]);
  await tab.getByRole('button', { name: 'Add 1 job' }).click();
  const link = tab.getByRole('main').getByRole('heading', { level: 2 }).getByRole('link').first();
  await link.click();
  const answer = tab.getByRole('region', { name: 'Answer and picture' });
  await answer.waitFor();
  const saving = plain(await answer.locator('dl').innerText()).match(/\$[\d,.]+/)[0];
  assert.ok(numbers.includes(saving), `${saving} in ${numbers}`);
  await page.bringToFront();
});

test('the page around hears results and moves the curve', async (t) => {
  const { page, frame } = await framed(t, '&motor=5hp&depth=620ft');
  const last = async () => (await heard(page, 'result')).at(-1);
  const first = await until(page, last, Boolean, 'a result');
  assert.deepEqual([first.wellwright, first.count, first.origin], [1, 'installed', new URL(url()).origin]);
  assert.deepEqual(first.result.at_depth.depth, { value: 620, unit: 'ft' });
  assert.deepEqual(await heard(page, 'ready'), [{ wellwright: 1, type: 'ready', origin: first.origin }]);
  await say(page, { wellwright: 1, set: { depth: '400ft', count: 'cable', motor: 10 } });
  const then = await until(page, last, (it) => it.result.at_depth.depth.value === 400, 'a result at 400 ft');
  assert.deepEqual([then.count, await depthOf(frame)], ['cable', '400 ft']);
  // What is shown is what was sent: copper not bought, to a tenth of a pound.
  const pounds = then.result.at_depth.saving.metal.value.toFixed(1);
  assert.match(plain(await frame.locator('dl').innerText()), new RegExp(`Copper not bought ${pounds} ?lb`));
  const before = (await heard(page, 'result')).length;
  await say(page, { wellwright: 1, ask: true });
  await until(page, async () => (await heard(page, 'result')).length, (count) => count === before + 1, 'the result again');
  // A visitor’s own hand is told, too.
  await frame.getByRole('slider').press('ArrowDown');
  await until(page, last, (it) => it.result.at_depth.depth.value === 401, 'a result at 401 ft');
});

test('messages of a page that was not named change nothing, and it hears nothing but a height', async (t) => {
  for (const host of [false, 'https://training.example']) {
    const browser = await startChromium();
    const page = await browser.newPage();
    const pages = {};
    const origin = await around(t, pages);
    pages['/'] = bare(`<iframe width="900" height="700" src="${url()}?embed&motor=5hp&depth=620ft${host ? `&host=${host}` : ''}"></iframe>`);
    await page.goto(`${origin}/`);
    const frame = frameOf(page);
    await frame.getByRole('slider').waitFor();
    await say(page, { wellwright: 1, set: { depth: '400ft' } });
    await say(page, { wellwright: 1, ask: true });
    await frame.getByRole('slider').press('ArrowDown');
    await until(page, () => depthOf(frame), (depth) => depth === '621 ft', 'its own key moves it');
    const types = await page.evaluate(() => [...new Set(window.heard.map(({ type, ...rest }) => `${type} ${Object.keys(rest).sort()}`))]);
    assert.deepEqual(types, ['size height,origin,wellwright'], `${host}`);
    await browser.close();
  }
});

test('messages of a frame beside it, at the named origin, change nothing', async (t) => {
  const pages = {};
  const origin = await around(t, pages);
  pages['/'] = bare(`<iframe width="900" height="700" src="${url()}?embed&motor=5hp&depth=620ft&host=${origin}"></iframe><iframe id="other" src="/other"></iframe>`);
  pages['/other'] = bare('');
  const { page } = await open(t);
  await page.goto(`${origin}/`);
  await until(page, async () => (await heard(page, 'result')).length, (count) => count > 0, 'a result');
  const other = page.frames().find((frame) => frame.url().endsWith('/other'));
  await other.evaluate(([to]) => window.parent.frames[0].postMessage({ wellwright: 1, set: { depth: '400ft' } }, to), [new URL(url()).origin]);
  // What comes after it from the page around is heard: so was, and was left alone, what came before.
  await say(page, { wellwright: 1, set: { motor: '10hp' } });
  await until(page, async () => (await heard(page, 'result')).length, (count) => count > 1, 'a result');
  assert.equal(await depthOf(frameOf(page)), '620 ft');
});

test('hostile messages change nothing and break nothing', async (t) => {
  const { page, frame } = await framed(t, '&motor=5hp&depth=620ft');
  await until(page, async () => (await heard(page, 'result')).length, (count) => count > 0, 'a result');
  await page.evaluate((to) => {
    const deep = {};
    let at = deep;
    for (let i = 0; i < 3000; i += 1) at = at.next = {};
    const round = { wellwright: 1 };
    round.set = round;
    const messages = [
      null, 5, '', 'wellwright', [], {}, { wellwright: {} }, { wellwright: 2, set: { depth: '5ft' } },
      { wellwright: 1, set: null }, { wellwright: 1, set: ['depth', '5ft'] }, { wellwright: 1, set: { depth: { value: 5 } } },
      { wellwright: 1, set: { depth: 'NaN' } }, { wellwright: 1, set: { depth: '1e999ft' } }, { wellwright: 1, set: { job: 'x'.repeat(450_000) } },
      { wellwright: 1, set: { depth: '5ft', more: 'y'.repeat(600_000) } }, { wellwright: 1, set: { __proto__: null, host: 'https://evil.example' } },
      { wellwright: 1, set: { change: 'motor', name: '<img src=x onerror=alert(1)>' } }, { wellwright: 1, set: deep }, round, new Map([['wellwright', 1]]),
    ];
    for (const message of messages) document.querySelector('iframe').contentWindow.postMessage(message, to);
  }, new URL(url()).origin);
  await say(page, { wellwright: 1, set: { motor: '10hp' } });
  const told = await until(page, async () => (await heard(page, 'result')).at(-1), (it) => it.result.errors.length === 0, 'a result');
  assert.equal(told.result.at_depth.depth.value, 620);
  assert.equal(await depthOf(frame), '620 ft');
  const codes = (await heard(page, 'refused')).flatMap(({ words, code }) => code ?? words.map((word) => word.code));
  assert.deepEqual([...new Set(codes)].sort(), ['no_job', 'not_a_number', 'other_unit', 'unknown_message', 'unknown_word']);
});

test('words that can not be taken are named beside the curve and to the page around', async (t) => {
  const { page, frame } = await framed(t, '&motor=5hp&depth=deep&units=furlongs&colour=red');
  const told = frame.getByRole('alert');
  await told.getByText('depth = deep').waitFor();
  for (const text of ['does not begin with a number', 'not one of those that can be asked for', 'no word that this page knows']) {
    assert.ok((await told.innerText()).includes(text), text);
  }
  await frame.getByText(/Waiting for/).first().waitFor();
  const [{ words }] = await until(page, () => heard(page, 'refused'), (all) => all.length > 0, 'a refusal');
  assert.deepEqual(words.map(({ word, code }) => [word, code]), [['units', 'other_choice'], ['depth', 'not_a_number'], ['colour', 'unknown_word']]);
  // Out of its range: read, and refused by name.
  await say(page, { wellwright: 1, set: { depth: '9000ft' } });
  const last = await until(page, async () => (await heard(page, 'result')).at(-1), (it) => it?.result.errors.some((error) => error.code !== 'missing'), 'an error');
  assert.ok(last.result.errors.some((error) => error.field === 'site.pump_setting'));
});

test('the page around is told the height, and a frame of that height has nothing to scroll', async (t) => {
  const { page, frame } = await framed(t, '&motor=5hp&depth=620ft&change=depth,motor,price,count');
  const fits = async (width) => {
    await page.locator('iframe').evaluate((frame, width) => { frame.width = width; }, width);
    await page.waitForTimeout(300);
    const sizes = await heard(page, 'size');
    await page.locator('iframe').evaluate((frame, height) => { frame.height = height; }, sizes.at(-1).height);
    await page.waitForTimeout(300);
    const { scroll, client, wide } = await frame.locator('html').evaluate((root) => ({ scroll: root.scrollHeight, client: root.clientHeight, wide: root.scrollWidth - root.clientWidth }));
    assert.ok(scroll <= client && wide <= 0, `${width}: ${scroll} in ${client}, ${wide} too wide`);
    return sizes.at(-1).height;
  };
  const heights = [await fits(900), await fits(360), await fits(320), await fits(900)];
  assert.ok(new Set(heights).size > 1, `another width, another height: ${heights}`);
  assert.equal(heights[3], heights[0], 'wide again, it is as high as it was');
});

test('the sample page, copied to another origin, shows three curves at once and follows one', async (t) => {
  const pages = {};
  const origin = await around(t, pages);
  pages['/'] = training(url());
  const { page } = await open(t, { viewport: { width: 1100, height: 4000 } });
  await page.goto(`${origin}/`);
  for (const at of [0, 1, 2]) await frameOf(page, at).getByRole('main').waitFor();
  assert.equal(await depthOf(frameOf(page, 1)), '620 ft');
  assert.equal(await frameOf(page, 2).locator('html').getAttribute('lang'), 'es');
  const metal = page.getByRole('status');
  const before = await until(page, () => metal.innerText(), (text) => /^\d+ lb$/.test(text), 'the metal');
  await page.getByRole('button', { name: /100 ft deeper/ }).click();
  await until(page, () => metal.innerText(), (text) => /^\d+ lb$/.test(text) && text !== before, 'more metal');
  assert.equal(await depthOf(frameOf(page, 1)), '720 ft');
  assert.equal(await depthOf(frameOf(page, 0)), '300 ft', 'the others stay');
  // An attribute that changes, changes the curve, and every frame is as high as what stands in it.
  await page.locator('#house').evaluate((curve) => curve.setAttribute('depth', '450ft'));
  await until(page, () => depthOf(frameOf(page, 0)), (depth) => depth === '450 ft', 'the attribute');
  for (const at of [0, 1, 2]) {
    const { scroll, client } = await frameOf(page, at).locator('html').evaluate((root) => ({ scroll: root.scrollHeight, client: root.clientHeight }));
    assert.ok(scroll <= client, `${at}: ${scroll} in ${client}`);
  }
});

test('where the script does not load, what stands inside the element is shown', async (t) => {
  const pages = {};
  const origin = await around(t, pages);
  pages['/'] = training(url()).replace(/<script src=.*<\/script>/, '').replace(/<script>[\s\S]*<\/script>/, '');
  const { page } = await open(t);
  await page.goto(`${origin}/`);
  assert.equal(await page.getByRole('link', { name: 'Work it out in Wellwright' }).first().isVisible(), true);
});

test('a curve far down the page is not loaded before it comes near', async (t) => {
  const pages = {};
  const origin = await around(t, pages);
  pages['/'] = bare(`<script src="${url()}embed.js" defer></script><div style="height: 9000px"></div><wellwright-curve motor="5hp" depth="620ft"></wellwright-curve>`);
  const { page, responses } = await open(t);
  await page.waitForLoadState('networkidle');
  const before = responses.length;
  await page.goto(`${origin}/`);
  await page.waitForTimeout(1000);
  const asked = () => responses.slice(before).map((response) => response.url()).filter((address) => address.startsWith(url()) && !address.endsWith('embed.js'));
  assert.deepEqual(asked(), []);
  await page.evaluate(() => window.scrollTo(0, 9000));
  await frameOf(page).getByRole('main').waitFor();
  assert.ok(asked().some((address) => address.endsWith('.wasm')));
});

test('frames after the first take nothing over the wire', async (t) => {
  // The built page on a host that counts what it sends.
  const sent = [];
  const server = await listen(dist, 0);
  server.prependListener('request', ({ url }, response) => {
    const one = { url, bytes: 0 };
    sent.push(one);
    for (const name of ['write', 'end']) {
      const own = response[name];
      response[name] = (part, ...rest) => {
        if (part && typeof part !== 'function') one.bytes += part.length;
        return own.call(response, part, ...rest);
      };
    }
  });
  t.after(() => new Promise((resolve) => { server.close(resolve); server.closeAllConnections(); }));
  const site = address(server);
  const pages = {};
  const origin = await around(t, pages);
  pages['/'] = bare(`<script src="${site}embed.js" defer></script><wellwright-curve motor="3hp" depth="300ft"></wellwright-curve>`);
  const { page } = await open(t, { viewport: { width: 1000, height: 3000 } });
  await page.goto(`${origin}/`);
  await frameOf(page).getByRole('slider').waitFor();
  const first = sent.splice(0).reduce((sum, { bytes }) => sum + bytes, 0);
  assert.ok(first > 100_000, `the first frame takes ${first} bytes`);
  await page.evaluate(() => {
    for (const depth of ['620ft', '900ft']) {
      const curve = document.createElement('wellwright-curve');
      curve.setAttribute('motor', '7.5hp');
      curve.setAttribute('depth', depth);
      document.body.append(curve);
    }
  });
  for (const at of [1, 2]) await frameOf(page, at).getByRole('slider').waitFor();
  assert.deepEqual([await depthOf(frameOf(page, 1)), await depthOf(frameOf(page, 2))], ['620 ft', '900 ft']);
  assert.deepEqual(sent.filter(({ bytes }) => bytes > 0), [], 'no file is sent again');
  assert.ok(sent.every(({ url }) => url.startsWith('/?embed')), `nothing but the page itself is asked about: ${JSON.stringify(sent)}`);
});

test('it stores nothing, sets no cookie and keeps no worker, inside a page or alone', async (t) => {
  const look = () =>
    Promise.all([
      Object.keys(localStorage), Object.keys(sessionStorage), document.cookie, caches.keys(), indexedDB.databases(),
      navigator.serviceWorker.getRegistrations().then((all) => all.length),
    ]);
  const nothing = [[], [], '', [], [], 0];
  const { page, frame, context } = await framed(t, '&motor=5hp&depth=620ft&change=depth,motor,units,count', { serviceWorkers: 'allow', hasTouch: true });
  await frame.getByRole('slider').press('PageDown');
  await frame.getByRole('textbox').first().fill('15');
  await frame.getByRole('group', { name: 'Units' }).getByRole('radio').last().click({ force: true });
  // The first page that the fixture opened is the whole app: its own site is looked at from a clean context instead.
  const clean = await context.browser().newContext({ serviceWorkers: 'allow' });
  t.after(() => clean.close());
  const alone = await clean.newPage();
  await alone.goto(`${url()}?embed&motor=5hp&depth=620ft`);
  await alone.getByRole('slider').press('PageDown');
  await alone.waitForTimeout(1000);
  assert.deepEqual(await alone.evaluate(look), nothing);
  await page.bringToFront();
});

test('it works where a browser keeps nothing for pages inside others', async (t) => {
  const browser = await startChromium(['--test-third-party-cookie-phaseout', '--block-third-party-cookies']);
  t.after(() => browser.close());
  const pages = {};
  const origin = (await around(t, pages)).replace('127.0.0.1', 'localhost');
  pages['/'] = bare(`<script src="${url()}embed.js" defer></script><wellwright-curve motor="5hp" depth="620ft"></wellwright-curve>`);
  const page = await browser.newPage();
  const errors = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  await page.goto(`${origin}/`);
  const frame = frameOf(page);
  await frame.getByRole('slider').press('ArrowDown');
  await until(page, () => depthOf(frame), (depth) => depth === '621 ft', 'it moves');
  assert.equal(await frame.locator('html').evaluate(() => { try { localStorage.length; return 'kept'; } catch (error) { return error.name; } }), 'SecurityError');
  assert.deepEqual(errors, []);
});
