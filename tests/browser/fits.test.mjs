// Nothing runs off the side, on narrow screens and with large letters, and fingers hit what they aim at.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { cutOff, tooSmall } from './support/fit.mjs';
import { useSite } from './support/fixture.mjs';
import { labels } from './support/labels.mjs';
import { eachScreen } from './support/screens.mjs';

const usual = useSite();
// Letters twice as large, by the browser's own setting: media queries in rem follow it.
const large = useSite(['--blink-settings=defaultFontSize=32']);

/** What is found on any screen, each with the screen's name. */
async function onEachScreen(t, site, language, width, look, options = {}) {
  const { page } = await site.open(t, {
    locale: labels[language].locale,
    viewport: { width, height: 800 },
    reducedMotion: 'reduce',
    ...options,
  });
  const found = [];
  await eachScreen(page, language, async (screen) => {
    found.push(...(await look(page)).map((what) => `${screen}: ${what}`));
  });
  return found;
}

describe('every screen fits', { concurrency: 2 }, () => {
  for (const language of ['en', 'es']) {
    test(`320 px, ${language}`, async (t) => {
      assert.deepEqual(await onEachScreen(t, usual, language, 320, cutOff), []);
    });

    for (const width of [360, 768, 1280]) {
      test(`letters twice as large, ${width} px, ${language}`, async (t) => {
        assert.deepEqual(await onEachScreen(t, large, language, width, cutOff), []);
      });
    }

    test(`fingers hit every control at 360 px, ${language}`, async (t) => {
      assert.deepEqual(await onEachScreen(t, usual, language, 360, tooSmall, { hasTouch: true }), []);
    });
  }
});
