// Runs a program built for WASI: `node tests/bench/wasi.mjs program.wasm`.
import { readFile } from 'node:fs/promises';
import { WASI } from 'node:wasi';

const wasi = new WASI({ version: 'preview1' });
const module = await WebAssembly.compile(await readFile(process.argv[2]));
wasi.start(await WebAssembly.instantiate(module, wasi.getImportObject()));
