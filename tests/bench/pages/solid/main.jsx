import { createEffect, createSignal, onMount } from 'solid-js';
import { render } from 'solid-js/web';
import { chart } from '../chart.js';

function App() {
  const [flow, setFlow] = createSignal(36);
  const [best, setBest] = createSignal('');
  let place;
  onMount(() => {
    const drawn = chart(place);
    createEffect(() => setBest(drawn.set(flow())));
  });
  return (
    <>
      <h1>Cost against depth</h1>
      <label>
        Flow <input type="range" min="20" max="60" step="0.1" value={flow()} onInput={(event) => setFlow(Number(event.target.value))} /> {flow()} m³/h
      </label>
      <p>Best at the deepest: {best()}</p>
      <div ref={place} />
    </>
  );
}

render(() => <App />, document.getElementById('app'));
