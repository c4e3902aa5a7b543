// Runs after each build of Trunk, on what it made, and stops the build if that has another shape.
// It moves the inline start script to a file, so that the security policy can forbid inline
// scripts; it names the script files and the program by their final bytes, so that a name never
// stands for two contents; it joins the style sheets; it puts what stands there at first on the page; it writes the policy,
// then the worker that keeps all of it on the device, and last, in a build to give away, each file once more as a host may
// send it, pressed beforehand.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  // Charts measure their text with styled elements.
  "style-src-attr 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "object-src 'none'",
].join('; ');

const folder = process.env.TRUNK_STAGING_DIR;
if (!folder) throw new Error('TRUNK_STAGING_DIR is not set: Trunk runs this file');

const digest = (bytes) => createHash('sha256').update(bytes).digest('hex').slice(0, 16);

function onlyFile(pattern) {
  const names = readdirSync(folder).filter((name) => pattern.test(name));
  if (names.length !== 1) throw new Error(`${pattern} should match one file, not [${names}]`);
  return names[0];
}

/** Replaces what is there once, or says what is missing. */
function replaceOnce(text, pattern, replacement) {
  const found = [...text.matchAll(new RegExp(pattern, 'g'))];
  if (found.length !== 1) throw new Error(`${pattern} should match once, not ${found.length} times`);
  return text.replace(pattern, replacement);
}

// Snippets are script files of libraries. Their names do not follow from their bytes.
if (existsSync(join(folder, 'snippets'))) throw new Error('snippets need names by their bytes');

const wasmFile = onlyFile(/^wellwright-[0-9a-f]+_bg\.wasm$/);
const glueFile = onlyFile(/^wellwright-[0-9a-f]+\.js$/);
let html = readFileSync(join(folder, 'index.html'), 'utf8');

const wasmName = `wellwright-${digest(readFileSync(join(folder, wasmFile)))}.wasm`;
renameSync(join(folder, wasmFile), join(folder, wasmName));

// The glue names the program only as a default, which the start script overrides.
const glue = readFileSync(join(folder, glueFile), 'utf8').replaceAll(/wellwright\w*_bg\.wasm/g, wasmName);
const glueName = `wellwright-${digest(glue)}.js`;
rmSync(join(folder, glueFile));
writeFileSync(join(folder, glueName), glue);

// One style sheet instead of many: one request, in the order of the page.
const sheet = /<link rel="stylesheet" href="\.\/([^"]+\.css)"[^>]*>/g;
const sheets = [...html.matchAll(sheet)].map((link) => link[1]);
if (sheets.length < 2) throw new Error('index.html should link the style sheets');
const style = sheets.map((name) => readFileSync(join(folder, name), 'utf8')).join('\n');
for (const name of sheets) rmSync(join(folder, name));
const styleName = `style-${digest(style)}.css`;
writeFileSync(join(folder, styleName), style);
let first = true;
html = html.replace(sheet, () => {
  const link = first ? `<link rel="stylesheet" href="./${styleName}">` : '';
  first = false;
  return link;
});

const inline = /<script type="module">([^<]*TrunkApplicationStarted[^<]*)<\/script>/;
const start = replaceOnce(
  replaceOnce(html.match(inline)?.[1].trim() ?? '', `./${glueFile}`, `./${glueName}`),
  `'./${wasmFile}'`,
  `window.wellwrightDevice?.bring('./${wasmName}') ?? './${wasmName}'`,
);
const startName = `start-${digest(start)}.js`;
writeFileSync(join(folder, startName), start);

const source = (path) => readFileSync(join(import.meta.dirname, '..', path), 'utf8');
// The browser's offer of a place on the home screen, or a failure, may come early: what listens for them stands first. Behind
// a policy a browser looks for no file ahead of where it reads: one script is one wait, and what starts the program is
// named before it.
const early = ['offline/crash', 'offline/keep', 'first/first'].map((path) => `{\n${source(`${path}.js`)}}\n`).join('');
const earlyName = `early-${digest(early)}.js`;
writeFileSync(join(folder, earlyName), early);
const glueLink = new RegExp(`<link rel="modulepreload" href="\\./${glueFile.replaceAll('.', '\\.')}"[^>]*>`);
html = replaceOnce(html, glueLink, '');
const ahead = [glueName, startName].map((name) => `<link rel="modulepreload" href="./${name}">`).join('');
html = replaceOnce(html, inline, `<script src="./${earlyName}"></script><script type="module" src="./${startName}"></script>`);
html = replaceOnce(html, `<link rel="stylesheet" href="./${styleName}">`, `<link rel="stylesheet" href="./${styleName}">${ahead}`);
// What stands there until the program has come.
html = replaceOnce(html, /<div id="first"><\/div>/, () => `<div id="first">${source('first/page.html')}</div>`);
// WebKit would load the program twice: once for this link, once for the script.
html = replaceOnce(html, /<link rel="preload"[^>]*\.wasm"[^>]*>/, '');
html = replaceOnce(
  html,
  /<meta charset="utf-8"\s*\/?>/,
  (charset) => `${charset}<meta http-equiv="Content-Security-Policy" content="${policy}">`,
);

for (const leftover of [wasmFile, glueFile, ' integrity=', '<style', '<script>']) {
  if (html.includes(leftover)) throw new Error(`index.html should not hold ${leftover}`);
}
// Lines that links left empty.
html = html.replaceAll(/\n\s*\n/g, '\n');
writeFileSync(join(folder, 'index.html'), html);

// Every file of this build; the worker is known by a digest over them, names and bytes.
const files = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(folder, join(entry.parentPath ?? entry.path, entry.name)).split(sep).join('/'))
  .sort();
const whole = createHash('sha256');
for (const file of files) whole.update(`${file}\0`).update(readFileSync(join(folder, file)));
const addresses = files.map((file) => (file === 'index.html' ? './' : `./${file}`));
writeFileSync(
  join(folder, 'worker.js'),
  `const build = '${whole.digest('hex').slice(0, 16)}';\nconst files = ${JSON.stringify(addresses)};\n${source('offline/worker.js')}`,
);

// Pictures are pressed as they are. What grows by it is left out.
if (process.env.TRUNK_PROFILE === 'release') {
  const sizes = (bytes) => ({ [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length });
  for (const file of [...files, 'worker.js'].filter((name) => !name.endsWith('.png'))) {
    const bytes = readFileSync(join(folder, file));
    const pressed = { br: brotliCompressSync(bytes, { params: sizes(bytes) }), gz: gzipSync(bytes, { level: 9 }) };
    for (const [ending, less] of Object.entries(pressed)) {
      if (less.length < bytes.length) writeFileSync(join(folder, `${file}.${ending}`), less);
    }
  }
}
