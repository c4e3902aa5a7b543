import { useLayoutEffect, useRef, useState } from 'react';
import { createRoot } from 'react-dom/client';
import { chart } from '../chart.js';

function App() {
  const [flow, setFlow] = useState(36);
  const [best, setBest] = useState('');
  const place = useRef();
  const drawn = useRef();
  useLayoutEffect(() => {
    drawn.current ??= chart(place.current);
    setBest(drawn.current.set(flow));
  }, [flow]);
  return (
    <>
      <h1>Cost against depth</h1>
      <label>
        Flow <input type="range" min="20" max="60" step="0.1" value={flow} onChange={(event) => setFlow(Number(event.target.value))} /> {flow} m³/h
      </label>
      <p>Best at the deepest: {best}</p>
      <div ref={place} />
    </>
  );
}

createRoot(document.getElementById('app')).render(<App />);
