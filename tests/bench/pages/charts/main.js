// Draws what the page draws: its series by a chart library, its picture by a script of canvas commands. And works the small
// model in a spreadsheet engine.
import { HyperFormula } from 'hyperformula';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { cells } from './sheet.js';

const place = document.getElementById('place');
let series = [];
let commands = () => {};

/** Depths and the costs of both ways, of the step that is to be drawn. */
const step = (depth) => {
  const all = series[Math.floor(depth / 10) % series.length];
  const count = all.length / 3;
  return [0, 1, 2].map((part) => all.slice(part * count, (part + 1) * count));
};

function library() {
  let now = step(0);
  place.replaceChildren();
  const plot = new uPlot({
    width: 800,
    height: 450,
    scales: { x: { time: false }, y: { range: (_, low, high) => [0, high * 1.05] } },
    axes: [{ label: 'Depth, ft' }, { label: 'Cost' }],
    series: [{ label: 'Depth' }, { label: '240 V', stroke: '#d62728', width: 1.5, points: { show: false } }, { label: '480 V', stroke: '#1f77b4', width: 1.5, points: { show: false } }],
  }, now, place);
  return {
    work: (depth) => { now = step(depth); },
    draw: () => plot.batch(() => plot.setData(now)),
    canvas: () => place.querySelector('canvas'),
  };
}

const byHand = () => ({ work: () => {}, draw: (canvas) => commands(canvas.getContext('2d')) });

/** Times the spreadsheet engine: one input changed, the result read. */
function sheet(rounds) {
  const data = cells();
  const formulas = data.flat().filter((cell) => typeof cell === 'string' && cell.startsWith('=')).length;
  const engine = HyperFormula.buildFromArray(data, { licenseKey: 'gpl-v3' });
  const took = [];
  for (let round = 0; round < rounds + 5; round += 1) {
    const began = performance.now();
    engine.setCellContents({ sheet: 0, row: 0, col: 0 }, 20 + ((round * 7) % 400) / 10);
    engine.getCellValue({ sheet: 0, row: 0, col: 6 });
    if (round >= 5) took.push(performance.now() - began);
  }
  return { formulas, took };
}

window.charts = {
  take(all, text) {
    series = all;
    commands = new Function('c', text);
  },
  library,
  byHand,
  sheet,
};
