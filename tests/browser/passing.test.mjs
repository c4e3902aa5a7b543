// Passing a job on: a link, codes, files; what comes in is looked at before it is added, and nothing is lost.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { readCode } from './support/code.mjs';
import { useSite } from './support/fixture.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open, url } = useSite();
const demo = 'Brindle Wash 7';

/** The page with no job but those that a test adds, or with the demo jobs. */
async function start(t, options) {
  const { page, context } = await open(t, { locale: 'en-US', ...options });
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  return { page, context, app };
}

/** Opens what passes the open job on. */
async function passOn(page, app, name) {
  await app.openJob(name);
  await app.turn('papers');
  await page.getByText('Pass it on').click();
  await page.getByRole('img', { name: /code|Code/ }).waitFor();
}

const arrived = (page) => page.getByRole('region', { name: 'What came in' });
const jobsOf = async (app) => (await app.kept()).map(([, text]) => JSON.parse(text).job);
const jobNamed = async (app, name) => (await jobsOf(app)).filter((job) => job.name === name);

async function linkOf(t, name = demo) {
  const { page, context, app } = await start(t, { permissions: ['clipboard-read', 'clipboard-write'] });
  await passOn(page, app, name);
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await app.messages.getByText('Copied.').waitFor();
  const link = await page.evaluate(() => navigator.clipboard.readText());
  const [job] = await jobNamed(app, name);
  return { link, job, page, context, app };
}

test('a link carries the whole job, and nothing is added before somebody agrees', async (t) => {
  const { link, job } = await linkOf(t);
  assert.ok(link.startsWith(`${url()}#/add/1.`), link);
  const { page, app } = await start(t);
  await app.more(demo, 'Delete');
  const before = await app.kept();
  await page.goto(link);
  await arrived(page).getByText(demo).waitFor();
  await arrived(page).getByText(/620\sft.*\$546/).waitFor();
  assert.deepEqual(await app.kept(), before);
  // The letters do not stay in the address, where a reload would ask again.
  assert.equal(new URL(page.url()).hash, '#/');
  await arrived(page).getByRole('button', { name: 'Add 1 job' }).click();
  await app.job(demo).waitFor();
  assert.equal(await arrived(page).count(), 0);
  assert.deepEqual(await jobNamed(app, demo), [job]);
});

test('the code on a telephone’s screen holds the job, to a camera', async (t) => {
  const { page, app } = await start(t, { viewport: { width: 360, height: 740 }, deviceScaleFactor: 3 });
  const [job] = await jobNamed(app, demo);
  await passOn(page, app, demo);
  const link = await readCode(page.getByRole('img', { name: 'QR code of the job' }));
  assert.ok(link.startsWith(`${url()}#/add/1d.`), link);
  const { page: other, app: there } = await start(t);
  await there.more(demo, 'Delete');
  await other.goto(link);
  await arrived(other).getByRole('button', { name: 'Add 1 job' }).click();
  await there.job(demo).waitFor();
  assert.deepEqual(await jobNamed(there, demo), [job]);
});

test('a job too large for one code is a series, photographed in any order, each code in a tab of its own', async (t) => {
  const { page, app } = await start(t, { viewport: { width: 360, height: 740 }, deviceScaleFactor: 3 });
  const big = JSON.parse(readFileSync(new URL('../../app/src/demo/house_and_stock.json', import.meta.url), 'utf8'));
  big.name = 'Many words';
  let chance = 7;
  const next = () => (chance = (chance * 1103515245 + 12345) % 2147483648);
  big.note = Array.from({ length: 260 }, () => next().toString(36)).join(' ');
  await app.fileChooser.setInputFiles({ name: 'big.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(big)) });
  await app.job('Many words').waitFor();
  const [job] = await jobNamed(app, 'Many words');
  await passOn(page, app, 'Many words');
  const links = [];
  for (;;) {
    links.push(await readCode(page.locator('svg.qr')));
    const more = page.getByRole('button', { name: 'Next code' });
    if (await more.isDisabled()) break;
    await more.click();
  }
  assert.ok(links.length > 2, `${links.length} codes`);
  assert.equal(new Set(links).size, links.length);
  assert.match(await page.getByText(/^Code \d+ of \d+$/).innerText(), new RegExp(`Code ${links.length} of ${links.length}`));

  const { page: other, context, app: there } = await start(t);
  const shuffled = [...links.slice(1).reverse(), links[1], links[0]];
  for (const [place, link] of shuffled.entries()) {
    const tab = place === 0 ? other : await context.newPage();
    await tab.goto(link);
    if (place < shuffled.length - 1) await arrived(tab).getByText(/codes are here/).waitFor();
    else await arrived(tab).getByRole('button', { name: 'Add 1 job' }).click();
  }
  await other.reload();
  await there.job('Many words').waitFor();
  assert.deepEqual(await jobNamed(there, 'Many words'), [job]);
});

test('a link that is cut, altered, newer or nonsense is refused in plain words, and nothing changes', async (t) => {
  const { link } = await linkOf(t);
  const { page, app } = await start(t);
  const before = await app.kept();
  const middle = Math.floor(link.length * 0.7);
  const other = link[middle] === 'A' ? 'B' : 'A';
  for (const [bad, why] of [
    [link.slice(0, middle), 'its end is missing'],
    [link.slice(0, middle) + other + link.slice(middle + 1), 'some of its letters were changed'],
    [link.replace('/add/1.', '/add/2.'), 'made by a newer version of this page'],
    [`${url()}#/add/hello`, 'there is no job in it'],
    [`${url()}#/add/1.${'A'.repeat(500_000)}`, 'larger than any job'],
    [`${url()}#/add/<img src=x onerror=alert(1)>`, 'there is no job in it'],
  ]) {
    await page.goto(`${url()}?${why.length}`);
    await page.evaluate((hash) => { location.hash = hash; }, new URL(bad).hash);
    await arrived(page).getByText(new RegExp(`The job in the link can’t be read: .*${why}`)).waitFor();
    await arrived(page).getByRole('button', { name: 'Close' }).click();
    assert.equal(await arrived(page).count(), 0);
    assert.deepEqual(await app.kept(), before, why);
  }
});

test('a name that is taken is asked about: both, the new one alone, or none; what went can be brought back', async (t) => {
  const { link, job } = await linkOf(t);
  const { page, app } = await start(t);
  await app.openJob(demo);
  await app.field('Pump setting').fill('640');
  const bring = async (choice) => {
    await page.goto(`${url()}?${choice.length}`);
    await page.goto(link);
    await arrived(page).getByText('A job of this name is on this device already.').waitFor();
    await arrived(page).getByRole('radio', { name: choice }).click({ force: true });
  };
  await bring('Leave it out');
  assert.equal(await arrived(page).getByRole('button', { name: 'Add 0 jobs' }).isDisabled(), true);
  await arrived(page).getByRole('button', { name: 'Add nothing' }).click();
  assert.equal((await jobNamed(app, demo))[0].site.pump_setting.value, 640);

  await bring('Keep both');
  await arrived(page).getByRole('button', { name: 'Add 1 job' }).click();
  await app.job(`${demo}, copy`).waitFor();
  assert.equal((await jobNamed(app, demo))[0].site.pump_setting.value, 640);
  await app.more(`${demo}, copy`, 'Delete');

  await bring('Replace the one here');
  await arrived(page).getByRole('button', { name: 'Add 1 job' }).click();
  const deep = '"pump_setting":{"unit":"ft","value":640';
  await page.waitForFunction((deep) => Object.values(localStorage).every((text) => !text.includes(deep)), deep);
  assert.deepEqual(await jobNamed(app, demo), [job]);
  await app.messages.getByRole('button', { name: 'Undo' }).click();
  await page.waitForFunction((deep) => Object.values(localStorage).some((text) => text.includes(deep)), deep);
  assert.equal((await jobNamed(app, demo)).length, 2);

  // The very same is left out unless somebody wants it twice.
  await page.goto(`${url()}?same`);
  await page.goto(link);
  await arrived(page).getByText('The very same job is on this device already.').waitFor();
  assert.equal(await arrived(page).getByRole('radio', { name: 'Leave it out' }).isChecked(), true);
});

test('a file of many jobs: the good ones are offered, each fault is told with job and line', async (t) => {
  const { page, app } = await start(t);
  const before = (await app.kept()).length;
  const text = '[\n{"schema":1,"name":"One"},\n{"schema":1,\n"name":"Two",\n"cable":{\n"metal":"gold"}},\n{"schema":9},\n{"schema":1,"name":"Four"}\n]';
  await app.fileChooser.setInputFiles({ name: 'many.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await arrived(page).getByText(/many\.json.*job 2, line 6:/).waitFor();
  await arrived(page).getByText(/many\.json.*job 3, line 7:/).waitFor();
  assert.equal((await app.kept()).length, before);
  await arrived(page).getByRole('button', { name: 'Add 2 jobs' }).click();
  await app.job('One').waitFor();
  await app.job('Four').waitFor();
  assert.equal((await app.kept()).length, before + 2);
  // Nothing is wrong with these; more than one is asked about all the same.
  const good = '[{"schema":1,"name":"Five"},{"schema":1,"name":"Six"}]';
  await app.fileChooser.setInputFiles({ name: 'good.json', mimeType: 'application/json', buffer: Buffer.from(good) });
  await arrived(page).getByRole('button', { name: 'Add 2 jobs' }).click();
  await app.job('Six').waitFor();
  await app.messages.getByText('2 jobs added.').waitFor();
  await app.fileChooser.setInputFiles({ name: 'none.json', mimeType: 'application/json', buffer: Buffer.from('[]') });
  await app.messages.getByText(/none\.json.*holds no job/).waitFor();
});

test('a link or a job’s text is pasted', async (t) => {
  const { link } = await linkOf(t, 'Low Saddle');
  const { page, app } = await start(t, { permissions: ['clipboard-read', 'clipboard-write'] });
  await app.more('Low Saddle', 'Delete');
  const put = (text) => page.evaluate((text) => navigator.clipboard.writeText(text), text);
  await put(`Here is the job: ${link}`);
  await page.keyboard.press('Control+V');
  await arrived(page).getByRole('button', { name: 'Add 1 job' }).click();
  await app.job('Low Saddle').waitFor();
  await put('{"schema":1,"name":"Pasted"}');
  await app.settings.click();
  await page.getByRole('button', { name: 'Paste' }).click();
  await app.job('Pasted').waitFor();
  await put('not a job');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Control+V');
  await app.messages.getByText(/The pasted text.*cut short or no job file \(line 1/).waitFor();
});
