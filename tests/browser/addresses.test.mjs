// Every page has its address: after a reload, by back and forward, in any folder, in a frame.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { startFolder, startFrame } from './support/folder.mjs';
import { slugs } from './support/labels.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open, url } = useSite();
const job = 'Brindle Wash 7';

async function start(t, options) {
  const { page } = await open(t, options);
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  return { page, app, id: await app.idOf(job) };
}

test('each page comes up by its address and stays after a reload', async (t) => {
  const { page, app, id } = await start(t);
  for (const slug of slugs) {
    await app.goTo(id, slug);
    await page.reload();
    await app.heading(slug).waitFor();
    assert.equal(new URL(page.url()).hash, `#/job/${id}/${slug}`);
    assert.match(await page.title(), / · Brindle Wash 7 · Wellwright$/);
  }
});

test('back and forward go over the pages and the list', async (t) => {
  const { page, app } = await start(t);
  await app.openJob(job);
  for (const slug of ['cable', 'cost', 'papers']) await app.turn(slug);
  for (const slug of ['cost', 'cable', 'water']) {
    await page.goBack();
    await app.heading(slug).waitFor();
  }
  await page.goBack();
  await app.newJobButton.waitFor();
  for (const slug of ['water', 'cable', 'cost', 'papers']) {
    await page.goForward();
    await app.heading(slug).waitFor();
  }
});

test('a page that is not known, or none, is the first one', async (t) => {
  const { page, app, id } = await start(t);
  for (const rest of ['/tomorrow', '/', '', '/water/more']) {
    await page.goto(`${url()}#/`);
    await app.newJobButton.waitFor();
    await page.goto(`${url()}#/job/${id}${rest}`);
    await app.heading('water').waitFor();
  }
});

test('an address that means nothing is the list', async (t) => {
  const { app } = await start(t, { path: '#/nowhere/at/all' });
  assert.equal(await app.jobs.count(), 3);
});

test('an address of a job that is not here says so and leads to the list', async (t) => {
  const { page } = await open(t, { path: '#/job/nowhere/cost' });
  await page.getByRole('heading', { name: 'This job is not on this device.' }).waitFor();
  await page.getByRole('link', { name: 'All jobs' }).click();
  await new Wellwright(page).newJobButton.waitFor();
});

test('a job that is deleted while its page is open in another tab says so there', async (t) => {
  const { page, app, id } = await start(t);
  await app.more(job, 'Delete');
  await page.goto(`${url()}#/job/${id}/cost`);
  await page.getByRole('heading', { name: 'This job is not on this device.' }).waitFor();
});

test('the page works from a folder deep in a host', async (t) => {
  const folder = await startFolder('/tools/well/');
  t.after(folder.stop);
  const { page, responses } = await open(t);
  const app = new Wellwright(page);
  await app.newJobButton.waitFor();
  responses.length = 0;
  await page.goto(folder.url);
  await app.openJob(job);
  for (const slug of ['cable', 'papers']) await app.turn(slug);
  await page.reload();
  await app.heading('papers').waitFor();
  await page.goto(`${folder.url}?gallery`);
  await page.getByRole('heading', { name: 'Parts' }).waitFor();
  const outside = responses.map((response) => response.url()).filter((address) => !address.startsWith(folder.url));
  assert.deepEqual(outside, []);
});

test('the page works in a frame of another origin', async (t) => {
  const frame = await startFrame(url());
  t.after(frame.stop);
  const { page } = await open(t);
  await page.goto(frame.url);
  const app = new Wellwright(page.frameLocator('iframe'));
  await app.openJob(job);
  await app.turn('cost');
  assert.ok((await app.steps.count()) > 5);
  await app.turn('water');
  await app.field('Pump setting').fill('700');
  assert.match(await app.savingTitle(), /at 700 ft$/);
  await page.evaluate(() => history.back());
  await app.heading('cost').waitFor();
});
