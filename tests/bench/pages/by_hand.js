// The same chart by hand on a canvas: what a page can take at least.
import { COLORS, DEPTHS, NAMES } from './model.js';

const step = (top) => {
  const rough = top / 10;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * [1, 2, 5, 10].find((one) => rough / power <= one);
};

export function draw(canvas, out) {
  const pen = canvas.getContext('2d');
  const { width, height } = canvas;
  const [left, top, right, bottom] = [150, 20, width - 20, height - 110];
  const most = 1.05 * Math.max(...out.total.map((series) => Math.max(...series)));
  const x = (depth) => left + (depth / 420) * (right - left);
  const y = (cost) => bottom - (cost / most) * (bottom - top);
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, width, height);
  pen.fillStyle = '#000';
  pen.font = '24px sans-serif';
  pen.lineWidth = 1;
  pen.strokeStyle = '#ddd';
  pen.textAlign = 'center';
  pen.textBaseline = 'top';
  pen.beginPath();
  for (let depth = 0; depth <= 420; depth += 50) {
    const at = Math.round(x(depth)) + 0.5;
    pen.moveTo(at, top);
    pen.lineTo(at, bottom);
    pen.fillText(depth, at, bottom + 10);
  }
  pen.textAlign = 'end';
  pen.textBaseline = 'middle';
  for (let cost = 0; cost <= most; cost += step(most)) {
    const at = Math.round(y(cost)) + 0.5;
    pen.moveTo(left, at);
    pen.lineTo(right, at);
    pen.fillText(cost, left - 10, at);
  }
  pen.stroke();
  pen.strokeStyle = '#000';
  pen.strokeRect(left, top, right - left, bottom - top);
  pen.textAlign = 'center';
  pen.fillText('Depth, m', (left + right) / 2, height - 30);
  pen.lineWidth = 3;
  pen.textAlign = 'start';
  out.total.forEach((series, one) => {
    pen.strokeStyle = COLORS[one];
    pen.beginPath();
    series.forEach((cost, i) => pen.lineTo(x(DEPTHS[i]), y(cost)));
    pen.stroke();
    pen.fillText(NAMES[one], left + 60, top + 30 + 32 * one);
  });
}
