// Walks over every screen in either language: the list, a job's seven pages, folded and unfolded, a working, a field in
// error, the lesson, a job across the table, the curve inside another page, the gallery.
import { slugs } from './labels.mjs';
import { Wellwright } from './wellwright.mjs';

const demoJob = 'Brindle Wash 7';

/** Brings up one screen after another, the gallery last, and awaits `visit(name)` on each. */
export async function eachScreen(page, language, visit) {
  const app = new Wellwright(page, language);
  await app.newJobButton.waitFor();
  await visit('list');
  const id = await app.idOf(demoJob);
  await app.goTo(id, 'water');
  for (const slug of slugs) {
    await app.goTo(id, slug);
    const sign = { pump: app.setpoint, power: app.ways, 'start-up': app.bigButton, papers: app.well }[slug] ?? app.depthSlider;
    await sign.waitFor();
    await visit(slug);
    if (await unfold(page)) await visit(`${slug}, unfolded`);
  }
  await app.goTo(id, 'cable');
  await app.workings.first().click();
  await page.getByRole('button', { name: app.words.close }).waitFor();
  await visit('a working');
  await page.keyboard.press('Escape');
  await app.field(app.words.drop).fill('?');
  await visit('a field in error');
  for (let step = 1; step <= 10; step += 1) {
    await page.evaluate((address) => { location.hash = address; }, `#/lesson/${step}`);
    const answers = page.locator('.lesson-choices').getByRole('button');
    await page.locator(`.lesson-steps [aria-current][href$="/${step}"]`).waitFor();
    await answers.first().click();
    await visit(`lesson, step ${step}`);
  }
  await page.evaluate((id) => { location.hash = `#/show/${id}`; }, id);
  await page.getByRole('button', { name: app.words.hidePrices }).waitFor();
  await app.depthSlider.waitFor();
  await visit('show');
  const words = 'motor=5hp&depth=620ft&color=x&change=depth,motor,price,count,units,sense';
  await page.goto(new URL(`?embed&lang=${language}&${words}`, page.url()).href);
  await app.depthSlider.waitFor();
  await visit('embed');
  await page.goto(new URL('?gallery', page.url()).href);
  await page.getByRole('button', { name: app.words.newJob }).waitFor();
  await visit('gallery');
}

/** Unfolds what is folded away, and tells whether there was any. */
function unfold(page) {
  return page.evaluate(() => {
    const folds = [...document.querySelectorAll('main details:not([open])')];
    for (const fold of folds) fold.open = true;
    return folds.length > 0;
  });
}
