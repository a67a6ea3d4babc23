// What TypeScript accepts and what it refuses, under --strict. It is compiled, never run.
import { open, about, say, OutOfRange, type Column } from './zymase/zymase.mjs';

const zymase = await open();
const density: number = zymase.water_density({ temperature: '68 °F' });
const pressure = zymase.co2_pressure({ temperature_celsius: 4, volumes: '2.5 vol CO2' });
const gauge: number = pressure.gauge_pressure, caution: string = pressure.caution;
const verdict: 'within rating' | string = pressure.verdict;
const readings: Column<'density'> = zymase.columns.water_density({ temperature: ['°F', [68, 70]] });
const first: number = readings.density[0]! + readings.failed[0]! + readings.failures;
zymase.columns.water_density({ temperature_celsius: new Float64Array(2) }, { density: new Float64Array(2) });
const forecast = zymase.forecast({ sugar: '120 g/L', nitrogen: '200 mg/L', yeast: '0.5 g/L', temperatures: [{ hour: 0, temperature: '20 °C' }] });
forecast.add({ hours: 40, used: 0.4, uncertainty: 0.01 });
const done: number = forecast.ask({ used: [0.95] }).when[0]!.median;
const name: string = zymase.plan({}).request.name;
try {
  zymase.water_density({ temperature_celsius: 1000 });
} catch (e) {
  if (e instanceof OutOfRange) console.log(e.quantity, e.value, e.max, e.source);
}
console.log(density, gauge, caution, verdict, first, done, name, about()[0]!.inputs[0]!.unit, say('co2_pressure', 'verdict', 0));
zymase.close();

// @ts-expect-error: a number alone has no unit
zymase.water_density({ temperature: 20 });
// @ts-expect-error: a text is under the other name
zymase.water_density({ temperature_celsius: '20 °C' });
// @ts-expect-error: the temperature is missing
zymase.water_density({});
// @ts-expect-error: it is given twice
zymase.water_density({ temperature: '20 °C', temperature_celsius: 20 });
// @ts-expect-error: no such argument
zymase.water_density({ temperature: '20 °C', mood: 1 });
// @ts-expect-error: no such function
zymase.watery_density({});
// @ts-expect-error: a column needs its unit
zymase.columns.water_density({ temperature: [20] });
