// Reads a QR code off a screenshot with a library that has nothing to do with the one that wrote it.
import jsQR from 'jsqr';
import { PNG } from 'pngjs';

/** The text of a code, held to the middle of the screen, where no bar lies over it. */
export async function readCode(locator) {
  await locator.evaluate((code) => code.scrollIntoView({ block: 'center' }));
  const { data, width, height } = PNG.sync.read(await locator.screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}
