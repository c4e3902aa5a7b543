// Rules of accessibility that a machine can check, on every screen, theme, language and width.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, test } from 'node:test';
import { useSite } from './support/fixture.mjs';
import { labels } from './support/labels.mjs';
import { eachScreen } from './support/screens.mjs';

const { open } = useSite();
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
// The rules themselves come with the package of the binding. They go into a page once, not once a screen.
const binding = createRequire(import.meta.url).resolve('@axe-core/playwright');
const engine = readFileSync(createRequire(binding).resolve('axe-core/axe.min.js'), 'utf8');

/** What is pinned hides others only until one scrolls; here it is let go, so that everything can be judged. */
const letGo = () => {
  for (const pinned of document.querySelectorAll('.dock, .answers')) pinned.style.position = 'static';
};

async function violations(page) {
  await page.evaluate(letGo);
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(engine);
  const found = await page.evaluate(
    (values) => axe.run(document, { runOnly: { type: 'tag', values }, resultTypes: ['violations'] }),
    rules,
  );
  return found.violations.map((rule) => `${rule.id}: ${rule.nodes.map((node) => node.target.join(' ')).join('; ')}`);
}

// Tall, so that little has to be scrolled.
const height = 6000;

describe('no rule is broken', { concurrency: 2 }, () => {
  for (const theme of ['light', 'dark', 'sun']) {
    for (const language of ['en', 'es']) {
      for (const width of [360, 1280]) {
        test(`${theme}, ${language}, ${width} px`, async (t) => {
          const { page } = await open(t, {
            settings: { theme, language },
            locale: labels[language].locale,
            viewport: { width, height },
            reducedMotion: 'reduce',
          });
          const found = [];
          await eachScreen(page, language, async (screen) => {
            found.push(...(await violations(page)).map((violation) => `${screen}: ${violation}`));
          });
          assert.deepEqual(found, []);
        });
      }
    }
  }
});
