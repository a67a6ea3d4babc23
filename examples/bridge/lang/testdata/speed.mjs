// node speed.mjs DIR: until the library is ready, a call by number and by text, a column; JSON.
import { pathToFileURL } from 'node:url';

const start = performance.now();
const { open } = await import(pathToFileURL(`${process.argv[2]}/zymase.mjs`));
const z = await open();
const said = { ready: performance.now() - start, calls: {}, texts: {}, columns: {} };
const examples = {
  water_density: [{ temperature_celsius: 20 }, { temperature: '20 °C' }],
  hydrometer_correct: [{ reading: 1.046, temperature_celsius: 25 }, { reading: '1.046', temperature: '25 °C' }],
  ferment_from_gravities: [{ original_gravity: 1.048, gravity: 1.01 }, { original_gravity: '1.048', gravity: '1.01' }],
};
// The shortest of several runs of n, in ns each.
const best = (n, f) => {
  let least = Infinity;
  for (const until = performance.now() + 700; performance.now() < until;) {
    const t = performance.now();
    f(n);
    least = Math.min(least, (performance.now() - t) / n * 1e6);
  }
  return least;
};
for (const [name, [numbers, texts]] of Object.entries(examples)) {
  const f = z[name], first = Object.keys(numbers)[0];
  said.calls[name] = best(100, (n) => { for (let i = 0; i < n; i++) f(numbers); });
  said.texts[name] = best(100, (n) => { for (let i = 0; i < n; i++) f(texts); });
  const column = { ...numbers, [first]: new Float64Array(256).fill(numbers[first]) };
  said.columns[name] = best(256, () => z.columns[name](column));
}
console.log(JSON.stringify(said));
