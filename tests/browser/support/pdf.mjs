// Reads a PDF with a library that has nothing to do with the browser that wrote it.
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Letters that are drawn as one, as “ff”, are two again. */
const plain = (items) => items.map((item) => item.str).join(' ').normalize('NFKC').replaceAll(/\s+/g, ' ');

/** Prints the page as its style sheets ask, and reads it. */
export async function printed(page) {
  return readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: false }));
}

/** The size of the pages in points, and their texts. */
export async function readPdf(bytes) {
  const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const pages = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const sheet = await document.getPage(number);
    const [, , width, height] = sheet.view;
    const { items } = await sheet.getTextContent();
    const seen = items.filter((item) => item.str.trim() !== '');
    const right = Math.max(...seen.map((item) => item.transform[4] + item.width));
    pages.push({ width, height, right, text: plain(items) });
  }
  await document.destroy();
  return { bytes, pages, text: pages.map((one) => one.text).join(' ') };
}
