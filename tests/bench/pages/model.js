// The one small model that every page of the comparison works: cost of four cables against depth. Its constants are made
// up, for timing alone.
export const N = 200;
export const AREA = [1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630, 800];
export const NAMES = ['400 V Cu', '400 V Al', '690 V Cu', '1000 V Al'];
export const COLORS = ['#d62728', '#1f77b4', '#2ca02c', '#9467bd'];
export const OPTIONS = [
  { volts: 400, pf: 0.85, efficiency: 0.9, rho: 0.0225, amp: 1, c0: 1.2, c1: 0.28, fixed: 0 },
  { volts: 400, pf: 0.85, efficiency: 0.9, rho: 0.036, amp: 0.78, c0: 1, c1: 0.09, fixed: 150 },
  { volts: 690, pf: 0.85, efficiency: 0.9, rho: 0.0225, amp: 1, c0: 1.4, c1: 0.28, fixed: 900 },
  { volts: 1000, pf: 0.84, efficiency: 0.89, rho: 0.036, amp: 0.78, c0: 1.3, c1: 0.09, fixed: 2200 },
];
export const depth = (i) => 20 + i * (380 / (N - 1));
export const DEPTHS = Float64Array.from({ length: N }, (_, i) => depth(i));
export const room = () => ({ total: OPTIONS.map(() => new Float64Array(N)), best: new Uint8Array(N) });

const gravity = 9.80665;
const root3 = Math.sqrt(3);
const bore = 0.1023;
const rough = 4.5e-5 / bore / 3.7;

export function colebrook(a, reynolds) {
  const b = 2.51 / reynolds;
  let x = -1.8 * Math.log10(a ** 1.11 + 6.9 / reynolds);
  for (let round = 0; round < 2; round += 1) {
    const y = a + b * x;
    x -= (x + 2 * Math.log10(y)) / (1 + (2 * b) / (Math.LN10 * y));
  }
  return 1 / (x * x);
}

function annuity() {
  let sum = 0;
  for (let year = 1; year <= 15; year += 1) sum += 1.03 ** (year - 1) / 1.07 ** year;
  return sum;
}

/** Works the model for a flow in m³/h into `out`; the sum of all of it says whether two of them are the same. */
export function sweep(flow, out) {
  const q = flow / 3600;
  const speed = q / ((Math.PI * bore * bore) / 4);
  const years = annuity();
  let sum = 0;
  for (let i = 0; i < N; i += 1) {
    const deep = depth(i);
    const viscosity = 1.3e-6 / (1 + 7e-4 * deep);
    const loss = (colebrook(rough, (speed * bore) / viscosity) * (deep + 30) * speed * speed) / bore / (2 * gravity);
    const shaft = (998.2 * gravity * q * (deep + loss + 15)) / 0.72;
    const run = deep + 40;
    let least = Infinity;
    for (let o = 0; o < OPTIONS.length; o += 1) {
      const { volts, pf, efficiency, rho, amp, c0, c1, fixed } = OPTIONS[o];
      const current = shaft / (root3 * volts * pf * efficiency);
      const sine = Math.sqrt(1 - pf * pf);
      let size = 0;
      while (
        size < AREA.length - 1 &&
        !(14.5 * AREA[size] ** 0.62 * amp * 0.9 >= current &&
          root3 * current * run * ((rho / AREA[size]) * pf + 8e-5 * sine) <= 0.05 * volts)
      ) size += 1;
      const watts = ((3 * current * current * rho) / AREA[size]) * run;
      const total = (c0 + c1 * AREA[size]) * run + fixed + (watts / 1000) * 3000 * 0.15 * years;
      out.total[o][i] = total;
      if (total < least) {
        least = total;
        out.best[i] = o;
      }
      sum += total;
    }
    sum += out.best[i];
  }
  return sum;
}
