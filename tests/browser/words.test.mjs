// No word of one language is left in the other, on any screen, in any message.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { labels, slugs } from './support/labels.mjs';
import { textsOf, wordsOf } from './support/said.mjs';
import { eachScreen } from './support/screens.mjs';
import { Wellwright } from './support/wellwright.mjs';

const { open } = useSite();

// Words that may stand in both languages.
const same = new Set([
  // Names: the page, the demo jobs, languages by their own name, a file that the test hands over.
  ...['wellwright', 'brindle', 'wash', 'low', 'saddle', 'quill', 'flat', 'english', 'español', 'json'],
  // Gauges, standards and their publishers.
  ...['awg', 'kcmil', 'nec', 'nfpa', 'ieee', 'astm', 'asme', 'iapws', 'nema', 'nist', 'ansi', 'isa', 'nom', 'sede'],
  // Units, and what pipes are sold by.
  ...['gpm', 'gal', 'psi', 'kpa', 'watts', 'volts', 'pvc', 'sdr', 'sidr', 'kva', 'kwh', 'kelvin', 'fahrenheit', 'csv', 'usd'],
  // Forms of files and codes, and a size of paper.
  ...['pdf', 'svg', 'png', 'letter'],
  // Authors, and books by their titles.
  ...['darcy', 'weisbach', 'hazen', 'williams', 'colebrook', 'turbulent', 'flow', 'pipes', 'fritsch', 'carlson', 'monotone',
    'piecewise', 'cubic', 'interpolation', 'karassik', 'pump', 'handbook', 'moody', 'friction', 'factors', 'for', 'pipe',
    'joukowsky', 'über', 'den', 'hydraulischen', 'stoß', 'wasserleitungsröhren', 'wylie', 'streeter', 'transients', 'systems',
    'saunders', 'riding', 'the', 'reflected', 'wave', 'ias', 'iec', 'thomson', 'lord', 'economy', 'conductors', 'electricity',
    'mckay', 'beckman', 'conover', 'technometrics', 'munson', 'fundamentals', 'fluid', 'mechanics', 'table', 'hydraulic', 'tables'],
  // Functions and indices in formulas; `sin` is also Spanish for “without”.
  ...['sin', 'cos', 'max', 'min', 'log', 'thd', 'tdd', 'sce', 'scr'],
  // Spelt alike in both, with one meaning.
  ...['auto', 'cable', 'color', 'control', 'nominal', 'total', 'conductor', 'conduit', 'factor', 'gas', 'local', 'manual', 'metal', 'motor', 'provisional',
    'terminal', 'usual', 'delta', 'reactor', 'bus', 'general', 'rotor'],
  // The trade in Mexico says `válvula check`; `use` and `sea` are also Spanish verbs.
  ...['check', 'use', 'sea'],
]);

const said = { en: new Map(), es: new Map() };

/** Notes what a screen says, and that the page names its language rightly. */
async function listen(page, language, screen) {
  assert.equal(await page.evaluate(() => document.documentElement.lang), language, screen);
  said[language].set(screen, await textsOf(page));
}

const start = (t, language) =>
  open(t, { locale: labels[language].locale, viewport: { width: 1280, height: 900 }, reducedMotion: 'reduce' });

for (const language of ['en', 'es']) {
  const words = labels[language];

  test(`screens are heard in ${language}`, async (t) => {
    const { page } = await start(t, language);
    await eachScreen(page, language, (screen) => listen(page, language, screen));
  });

  test(`errors, findings and workings are heard in ${language}`, async (t) => {
    const { page } = await start(t, language);
    const app = new Wellwright(page, language);
    const id = await app.idOf('Brindle Wash 7');
    const heard = new Set();
    for (const slug of slugs.slice(0, -1)) {
      await app.goTo(id, slug);
      if (slug === 'power') await app.unfoldWays();
      for (const name of await app.workings.evaluateAll((all) => all.map((sign) => sign.getAttribute('aria-label')))) {
        if (heard.has(name)) continue;
        heard.add(name);
        await page.getByRole('button', { name, exact: true }).first().click();
        await listen(page, language, `working ${heard.size}`);
        await page.keyboard.press('Escape');
      }
    }
    assert.ok(heard.size > 12, `${heard.size} workings`);
    await app.goTo(id, 'cable');
    await app.choice(words.metal).selectOption({ label: words.aluminum });
    await app.field(words.ambient).fill('130 °F');
    await listen(page, language, 'aluminum in warm surroundings');
    await app.goTo(id, 'water');
    for (const [place, text] of ['400', '475', '755', '770', '', '-1', 'x', '1,2,3', '1e999', '3/0', '620 A'].entries()) {
      await app.field(words.depth).fill(text);
      await listen(page, language, `depth ${place}`);
    }
    for (const slug of slugs) {
      await app.goTo(id, slug);
      await listen(page, language, `${slug} with an error`);
    }
    await page.goto(new URL('#/job/nowhere', page.url()).href);
    await page.getByRole('heading').waitFor();
    await listen(page, language, 'a job that is not here');
  });

  test(`messages and an empty list are heard in ${language}`, async (t) => {
    const { page } = await start(t, language);
    const app = new Wellwright(page, language);
    const tell = async (name, text) => {
      await app.fileChooser.setInputFiles({ name: 'x.json', mimeType: 'application/json', buffer: Buffer.from(text) });
      await app.messages.getByText('x.json').waitFor();
      await listen(page, language, `a file ${name}`);
    };
    await tell('cut short', '{"schema":1');
    await tell('without a sign', '{}');
    await tell('of tomorrow', '{"schema":99}');
    await tell('with an odd entry', '{"schema":1,"x":1}');
    await tell('too large', ' '.repeat(1_000_001));
    await app.settings.click();
    await listen(page, language, 'settings');
    await page.keyboard.press('Escape');
    for (const name of ['Brindle Wash 7', 'Low Saddle', 'Quill Flat']) {
      await app.more(name, words.delete);
      await app.messages.getByText(name).waitFor();
      await listen(page, language, `${name} deleted`);
    }
    await app.newJob();
    await listen(page, language, 'a new job');
    await page.goBack();
    const odd = '{"schema":1,"name":"?","site":{"pump_setting":{"value":9,"unit":"A"}}}';
    await app.fileChooser.setInputFiles({ name: '?', mimeType: 'application/json', buffer: Buffer.from(odd) });
    await listen(page, language, 'a file opened');
    await app.openJob('?');
    await listen(page, language, 'a depth in amperes');
  });

  test(`notices of storage are heard in ${language}`, async (t) => {
    const { page } = await start(t, language);
    const app = new Wellwright(page, language);
    await app.newJobButton.waitFor();
    await page.evaluate(() => {
      localStorage.setItem('wellwright.job.a', '{');
      localStorage.setItem('wellwright.job.b', '[1');
    });
    await page.reload();
    await app.alerts.first().waitFor();
    await listen(page, language, 'two that can’t be read');
    await app.alerts.getByRole('button', { name: words.delete }).first().click();
    await page.getByRole('dialog').waitFor();
    await listen(page, language, 'the question before it');
    await page.keyboard.press('Escape');
    await page.evaluate(() => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await app.openJob('Brindle Wash 7');
    await app.field(words.depth).fill('700');
    await app.alerts.waitFor();
    await listen(page, language, 'full');
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', { get: () => null });
    });
    await page.reload();
    // Without storage the demo jobs stand there all the same, under the ids that they have on every device.
    await app.alerts.waitFor();
    await listen(page, language, 'none');
  });
}

test('the screens of both languages share no word but those that are the same', () => {
  assert.deepEqual([...said.en.keys()].sort(), [...said.es.keys()].sort());
  assert.ok(said.en.size > 45, `${said.en.size} screens were heard`);
  const english = wordsOf([...said.en.values()].flat());
  const found = [];
  for (const [screen, texts] of said.es) {
    for (const text of texts) {
      const left = [...wordsOf([text])].filter((word) => english.has(word) && !same.has(word));
      if (left.length > 0) found.push(`${left}: “${text}”, ${screen}`);
    }
  }
  const first = [...new Map(found.map((line) => [line.split(', ')[0], line])).values()];
  assert.deepEqual(first, []);
});

test('every word that may be the same is needed', () => {
  const [english, spanish] = [said.en, said.es].map((texts) => wordsOf([...texts.values()].flat()));
  assert.deepEqual([...same].filter((word) => !(english.has(word) && spanish.has(word))), []);
});
