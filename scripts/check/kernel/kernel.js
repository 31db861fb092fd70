// The heat balance of calc/craft in plain JavaScript, written as it is there, and both timed in turn in one run:
// node kernel.js wasm_exec.js kernel.wasm prints "microseconds in WebAssembly, in JavaScript, and the sums of both".
"use strict";
const [, , exec, wasm] = process.argv;
require(exec);

const sigma = 5.670374419e-8, gravity = 9.80665;
const power = Math.pow;

function air(k, p) {
  const warm = k - 300, heat = 1006.69 + 0.04238 * warm + 3.62e-4 * warm * warm;
  const density = p / (287.05 * k), root = k * Math.sqrt(k);
  const conductivity = 2.41244e-3 * root / (k + 174.95), viscosity = 1.51019e-6 * root / (k + 123.2) / density;
  return { conductivity, viscosity, diffusivity: conductivity / (density * heat), expansion: 1 / k };
}

const lying = (rayleigh, pr) => { const n = 0.6 + 0.387 * power(rayleigh, 1 / 6) / power(1 + power(0.559 / pr, 9 / 16), 8 / 27); return n * n; };
function upright(gr, pr, slender) {
  const plate = 0.825 + 0.387 * power(gr * pr, 1 / 6) / power(1 + power(0.492 / pr, 9 / 16), 8 / 27);
  const b = 0.0571322 + 0.20305 * power(pr, -0.43), c = 0.9165 - 0.0043 * Math.sqrt(pr) + 0.01333 * Math.log(pr) + 4.809e-4 / pr;
  return plate * plate * (1 + b * power(Math.sqrt(32 / Math.sqrt(gr)) * slender, c));
}

class Body {
  constructor(hanging, share, diameter, height, area, heat) {
    Object.assign(this, { hanging, share, diameter, height, area, heat, air: 293.15, emissivity: 0.9, pressure: 101325 });
  }
  film(t) {
    const a = air((t + this.air) / 2, this.pressure), pr = a.viscosity / a.diffusivity, rise = Math.max(0.01, Math.abs(t - this.air));
    const grashof = (l) => gravity * a.expansion * rise * l * l * l / (a.viscosity * a.viscosity);
    if (this.hanging) return upright(grashof(this.height), pr, this.height / this.diameter) * a.conductivity / this.height;
    return lying(grashof(this.diameter) * pr, pr) * a.conductivity / this.diameter;
  }
  loss(t) {
    const w = this.air, radiation = sigma * this.emissivity * (t + w) * (t * t + w * w);
    return this.area * (this.share * this.film(t) * (t - w) + radiation * (t - w));
  }
  capacity(t) {
    const x = Math.min(3, (t - 293.15) / 80), [a, b, c] = this.heat;
    return a + x * (b + x * c);
  }
  rate(watts, t) { return (watts - this.loss(t)) / this.capacity(t); }
  steady(watts) {
    const c = new Chord();
    c.high = this.air;
    c.most = watts - this.loss(c.high);
    if (c.most === 0) return c.high;
    for (let step = 20; c.most > 0; step *= 2) {
      c.low = c.high; c.least = c.most; c.high += step;
      c.most = watts - this.loss(c.high);
    }
    for (let i = 0, was = c.high; i < 60; i++) {
      const t = c.next();
      if (Math.abs(t - was) < 1e-6) return t;
      was = t;
      c.take(t, watts - this.loss(t));
    }
    return NaN;
  }
  curve(into, from, watts, every) {
    const r = new Run(this, from, watts);
    for (let i = 0; i < into.length; i++) {
      const t = every * (i + 1);
      while (r.at < t && r.step());
      into[i] = r.between(Math.min(t, r.at));
    }
    return into[into.length - 1];
  }
  after(from, watts, t) { return this.curve(this.one ??= [0], from, watts, t); }
  timeTo(from, to, watts) {
    const r = new Run(this, from, watts), way = to - from;
    while (r.rate * way > 0 && r.step()) {
      if ((to - r.temp) * way > 0) continue;
      let low = r.wasAt, high = r.at;
      for (let i = 0; i < 40; i++) {
        const mid = (low + high) / 2;
        if ((to - r.between(mid)) * way > 0) low = mid; else high = mid;
      }
      return high;
    }
    return Infinity;
  }
  gain(on, off, watts, t) { return this.after(this.after(t, watts, on), 0, off) - t; }
  cycle(on, off, watts) {
    const c = new Chord();
    c.low = this.steady(0); c.high = this.steady(watts);
    c.least = this.gain(on, off, watts, c.low); c.most = this.gain(on, off, watts, c.high);
    let was = c.low;
    if (c.least > 0 && !(c.most < 0)) was = c.high;
    else if (c.least > 0) {
      for (let i = 0; i < 30; i++) {
        const t = c.next(), step = t - was;
        was = t;
        if (Math.abs(step) < 0.003) break;
        c.take(t, this.gain(on, off, watts, t));
      }
    }
    return [was, this.after(was, watts, on)];
  }
}

class Chord {
  constructor() { this.low = this.high = this.least = this.most = this.side = 0; }
  next() { return this.low + (this.high - this.low) * this.least / (this.least - this.most); }
  take(t, f) {
    if (f > 0) {
      this.low = t; this.least = f;
      if (this.side > 0) this.most /= 2;
      this.side = 1;
    } else {
      this.high = t; this.most = f;
      if (this.side < 0) this.least /= 2;
      this.side = -1;
    }
  }
}

class Run {
  constructor(body, from, watts) {
    this.body = body; this.watts = watts; this.at = 0; this.temp = from;
    this.rate = body.rate(watts, from);
    this.wasAt = this.wasTemp = this.wasRate = 0;
    this.next = this.rate !== 0 ? 0.5 / Math.abs(this.rate) : 0;
  }
  step() {
    for (let i = 0; i < 50; i++) {
      const h = this.next, k1 = this.rate;
      if (!(h > 0)) break;
      const k2 = this.body.rate(this.watts, this.temp + h / 2 * k1), k3 = this.body.rate(this.watts, this.temp + 3 * h / 4 * k2);
      const temp = this.temp + h / 9 * (2 * k1 + 3 * k2 + 4 * k3), rate = this.body.rate(this.watts, temp);
      const off = h / 72 * Math.abs(-5 * k1 + 6 * k2 + 8 * k3 - 9 * rate);
      if (!(off < 1e6)) { this.next = h / 10; continue; }
      this.next = h * Math.max(0.2, Math.min(5, 0.9 * power(0.003 / off, 1 / 3)));
      if (off > 0.003) continue;
      this.wasAt = this.at; this.wasTemp = this.temp; this.wasRate = this.rate;
      this.at += h; this.temp = temp; this.rate = rate;
      const fall = (this.wasRate - rate) / (temp - this.wasTemp);
      if (fall > 0) this.next = Math.min(this.next, 1.5 / fall);
      if (!(Math.abs(rate) > 0.0015 * fall)) this.next = 0;
      return true;
    }
    return false;
  }
  between(t) {
    const h = this.at - this.wasAt;
    if (!(h > 0)) return this.temp;
    const x = (t - this.wasAt) / h, d = this.temp - this.wasTemp, a = h * this.wasRate - d, b = d - h * this.rate;
    return this.wasTemp + x * (d + (1 - x) * (a * (1 - x) + b * x));
  }
}

const d = 0.5e-3, od = 1.2e-3, l = 0.1, f = 0.45, mass = 1140 * Math.PI / 4 * d * d * f;
const heat = [1460 * mass, 635 * mass, -45 * mass];
const ends = [new Body(true, 0.8, od, l, Math.PI * od * l, heat), new Body(false, 1.2, d, l, Math.PI * d * f, heat)];

function band(times) {
  const first = new Array(30), second = new Array(30);
  let sum = 0;
  while (times-- > 0) {
    sum = 0;
    for (const b of ends) {
      const watts = b.loss(373.15), [low, high] = b.cycle(4, 10, watts);
      sum += b.steady(watts) + low + high + b.timeTo(293.15, 343.15, watts) + b.timeTo(343.15, 313.15, 0);
      b.curve(first, low, watts, 4 / 30);
      b.curve(second, high, 0, 10 / 30);
      for (const t of first) sum += t;
      for (const t of second) sum += t;
    }
  }
  return sum;
}

(async () => {
  const go = new Go();
  const { instance } = await WebAssembly.instantiate(require("fs").readFileSync(wasm), go.importObject);
  go.run(instance);
  const times = 200, both = { wasm: instance.exports.band, js: band }, least = { wasm: Infinity, js: Infinity }, sums = {};
  for (let round = 0; round < 12; round++) { // the first ones warm them up, and the least of all counts
    for (const name in both) {
      const start = performance.now();
      sums[name] = both[name](times);
      least[name] = Math.min(least[name], (performance.now() - start) * 1000 / times);
    }
  }
  console.log(least.wasm.toFixed(1), least.js.toFixed(1), sums.wasm, sums.js);
  process.exit(0);
})();
