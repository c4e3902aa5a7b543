// A copy of the project to break things in, which goes when the program that made it ends.
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));
const left = /(^|\/)(node_modules|target|dist|\.git)$/;

export function copyOfProject(name) {
  const copy = mkdtempSync(join(tmpdir(), `wellwright-${name}-`));
  process.on('exit', () => rmSync(copy, { recursive: true, force: true }));
  cpSync(root, copy, { recursive: true, filter: (path) => !left.test(path) });
  return copy;
}
