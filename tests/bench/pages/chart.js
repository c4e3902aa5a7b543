// The chart of the Solid and the React page, by a fast chart library.
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { COLORS, DEPTHS, N, NAMES, room, sweep } from './model.js';

export function chart(place) {
  const out = room();
  let top = 0;
  let plot;
  return {
    set(flow) {
      sweep(flow, out);
      top = Math.max(...out.total.map((series) => Math.max(...series)));
      const data = [DEPTHS, ...out.total];
      if (plot) plot.setData(data);
      else {
        plot = new uPlot({
          width: 800,
          height: 450,
          scales: { x: { time: false }, y: { range: () => [0, top * 1.05] } },
          axes: [{ label: 'Depth, m' }, { label: 'Cost, 15 years' }],
          series: [{ label: 'Depth' }, ...NAMES.map((label, i) => ({ label, stroke: COLORS[i], width: 1.5, points: { show: false } }))],
        }, data, place);
      }
      return NAMES[out.best[N - 1]];
    },
  };
}
