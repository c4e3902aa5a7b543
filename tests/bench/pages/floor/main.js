import { draw } from '../by_hand.js';
import { N, NAMES, room, sweep } from '../model.js';

const [slider, flow, best, canvas] = ['input', 'b', 'i', 'canvas'].map((name) => document.querySelector(name));
const out = room();

function show() {
  sweep(Number(slider.value), out);
  draw(canvas, out);
  flow.textContent = slider.value;
  best.textContent = NAMES[out.best[N - 1]];
}

slider.addEventListener('input', show);
show();
