// Runs a wasip1 program under Node: node .ci/wasip1.mjs PROGRAM ARGUMENT...
import { readFile } from 'node:fs/promises';
import { WASI } from 'node:wasi';

const [, , program, ...rest] = process.argv;
const wasi = new WASI({
  version: 'preview1',
  args: [program, ...rest],
  env: { ...process.env, PWD: process.cwd() },
  preopens: { '/': '/' },
  returnOnExit: true,
});
const { instance } = await WebAssembly.instantiate(await readFile(program), wasi.getImportObject());
process.exitCode = wasi.start(instance);
