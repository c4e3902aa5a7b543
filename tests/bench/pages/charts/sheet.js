// The small model of `../model.js` as a spreadsheet: the flow in A1, the sum of all of it in G1.
import { AREA, N, OPTIONS, depth } from '../model.js';

/** Name of a column, from 0 on. */
function letter(column) {
  const rest = Math.floor(column / 26);
  return (rest > 0 ? letter(rest - 1) : '') + String.fromCharCode(65 + (column % 26));
}

const [sizes, ampacity, impedance, option, years] = [8, 9, 13, 20, 30];
const first = 30;

/** One cable at one depth: current, most impedance, size, area, price, losses, and the cost of the years. */
function ofCable(row, one, put) {
  const line = row + 1;
  const own = letter(option + one);
  const cell = (at) => letter(8 + 7 * one + at) + line;
  const run = `(A${line}+40)`;
  const column = (start) => `${letter(start + one)}$2:${letter(start + one)}$21`;
  [
    `=H${line}/(SQRT(3)*${own}$2*${own}$3*${own}$4)`,
    `=0.05*${own}$2/(SQRT(3)*${cell(0)}*${run})`,
    `=MIN(20,MAX(COUNTIF(${column(ampacity)},"<"&${cell(0)}),COUNTIF(${column(impedance)},">"&${cell(1)}))+1)`,
    `=INDEX($I$2:$I$21,${cell(2)},1)`,
    `=(${own}$7+${own}$8*${cell(3)})*${run}+${own}$9`,
    `=3*${cell(0)}*${cell(0)}*${own}$5/${cell(3)}*${run}/1000*3000*0.15*$AE$1`,
    `=${cell(4)}+${cell(5)}`,
  ].forEach((formula, at) => put(row, 8 + 7 * one + at, formula));
}

/** The water at one depth, by two steps to the friction factor, and what each cable costs. */
function ofDepth(i, put) {
  const row = first + i;
  const line = row + 1;
  const step = (x) => `=${x}${line}-(${x}${line}+2*LOG10($E$1+C${line}*${x}${line}))/(1+2*C${line}/(LN(10)*($E$1+C${line}*${x}${line})))`;
  [
    depth(i),
    `=$D$1*$C$1/($F$1/(1+0.0007*A${line}))`,
    `=2.51/B${line}`,
    `=-1.8*LOG10($E$1^1.11+6.9/B${line})`,
    step('D'),
    step('E'),
    `=1/(F${line}*F${line})*(A${line}+30)/$C$1*$D$1*$D$1/(2*9.80665)`,
    `=998.2*9.80665*$B$1*(A${line}+G${line}+15)/0.72`,
  ].forEach((value, column) => put(row, column, value));
  OPTIONS.forEach((_, one) => ofCable(row, one, put));
  const totals = OPTIONS.map((_, one) => letter(14 + 7 * one) + line);
  put(row, 36, `=MIN(${totals.join(',')})`);
  put(row, 37, `=MATCH(AK${line},AM${line}:AP${line},0)-1`);
  totals.forEach((total, one) => put(row, 38 + one, `=${total}`));
}

/** All cells, row by row. */
export function cells() {
  const rows = Array.from({ length: first + N }, () => Array(42).fill(null));
  const put = (row, column, value) => { rows[row][column] = value; };
  [36, '=A1/3600', 0.1023, '=B1/(PI()*C1*C1/4)', '=0.000045/C1/3.7', 0.0000013].forEach((value, column) => put(0, column, value));
  put(0, 6, `=SUM(AM${first + 1}:AP${first + N})+SUM(AL${first + 1}:AL${first + N})`);
  put(0, years, '=SUM(AE2:AE16)');
  for (let year = 1; year <= 15; year += 1) put(year, years, `=1.03^(${year}-1)/1.07^${year}`);
  OPTIONS.forEach(({ volts, pf, efficiency, rho, amp, c0, c1, fixed }, one) => {
    [volts, pf, efficiency, rho, amp, c0, c1, fixed].forEach((value, at) => put(at + 1, option + one, value));
    const own = letter(option + one);
    put(9, option + one, `=SQRT(1-${own}3*${own}3)`);
    AREA.forEach((area, at) => {
      put(at + 1, sizes, area);
      put(at + 1, ampacity + one, `=14.5*$I${at + 2}^0.62*${own}$6*0.9`);
      put(at + 1, impedance + one, `=${own}$5/$I${at + 2}*${own}$3+0.00008*${own}$10`);
    });
  });
  for (let i = 0; i < N; i += 1) ofDepth(i, put);
  return rows;
}
