// Reads a QR code off a screenshot with a library that has nothing to do with the one that wrote it.
import jsQR from 'jsqr';
import { PNG } from 'pngjs';

export async function readCode(locator) {
  const { data, width, height } = PNG.sync.read(await locator.screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}
