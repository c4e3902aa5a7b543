// Starts Chromium without a window, and without what it does for itself in the background.
import { chromium } from 'playwright-core';

export function startChromium(args = []) {
  return chromium.launch({
    // tests/run looks for Chromium and sets this.
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox', // Root, as on test machines, cannot have Chromium's sandbox.
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      ...args,
    ],
  });
}
