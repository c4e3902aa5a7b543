// Reads a PDF with a library that has nothing to do with the browser that wrote it.
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Prints the page as its style sheets ask, and reads it: the size of its pages in points, and their texts. */
export async function printed(page) {
  const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: false });
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const sheet = await document.getPage(number);
    const [, , width, height] = sheet.view;
    const { items } = await sheet.getTextContent();
    const right = Math.max(...items.map((item) => item.transform[4] + item.width));
    pages.push({ width, height, right, text: items.map((item) => item.str).join(' ').replaceAll(/\s+/g, ' ') });
  }
  await document.destroy();
  return { bytes, pages, text: pages.map((one) => one.text).join(' ') };
}
