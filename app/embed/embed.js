// <wellwright-curve>: the cost of a pump's cable against its depth, live, in a page of yours.
//
//   <script src="https://wellwright.example/embed.js" defer></script>
//   <wellwright-curve motor="5hp" depth="620ft" change="depth,motor">
//     <a href="https://wellwright.example/">Work it out in Wellwright</a>
//   </wellwright-curve>
//
// Its attributes are the words that README.md lists; one that changes, changes the curve. What stands inside it is shown
// where this file did not load. The element tells of itself by events: `wellwright-result` whenever the answer changes,
// `wellwright-refused` where a word could not be taken; `detail` holds the message. `set(words)` sends words by hand.
(() => {
  const home = new URL('./', document.currentScript.src);
  /** Words that say how the page looks: they can be changed, not taken back. */
  const look = ['units', 'lang', 'theme', 'count', 'sense', 'prices'];
  const job = ['job', 'motor', 'depth', 'price', 'drop', 'metal', 'way240', 'way480'];
  const mostHeight = 10_000;

  class WellwrightCurve extends HTMLElement {
    static observedAttributes = [...look, ...job];
    #frame = null;
    #listens = false;

    connectedCallback() {
      const frame = document.createElement('iframe');
      frame.title = this.title || 'Cost of a pump’s cable against its depth';
      frame.loading = 'lazy';
      frame.setAttribute('sandbox', 'allow-scripts allow-same-origin allow-popups allow-popups-to-escape-sandbox');
      Object.assign(frame.style, { display: 'block', width: '100%', height: '640px', border: '0' });
      const words = new URLSearchParams();
      for (const word of [...look, ...job, 'change']) {
        if (this.hasAttribute(word)) words.set(word, this.getAttribute(word));
      }
      words.set('host', window.location.origin);
      // Behind the sign of a fragment they are the browser's own: every frame has one address, and is fetched once.
      frame.src = `${home}?embed#${words}`;
      this.#frame = frame;
      this.#listens = false;
      (this.shadowRoot ?? this.attachShadow({ mode: 'open' })).replaceChildren(frame);
      window.addEventListener('message', this);
    }

    disconnectedCallback() {
      window.removeEventListener('message', this);
      this.#frame = null;
    }

    attributeChangedCallback(word, before, value) {
      if (value === before || (value === null && look.includes(word))) return;
      // Before the frame listens its address says it.
      if (this.#listens) this.set({ [word]: value ?? '' });
      else if (this.#frame) this.connectedCallback();
    }

    /** Changes the curve: words and what they say. */
    set(words) {
      this.#frame?.contentWindow?.postMessage({ wellwright: 1, set: words }, home.origin);
    }

    /** Asks for the result again. */
    ask() {
      this.#frame?.contentWindow?.postMessage({ wellwright: 1, ask: true }, home.origin);
    }

    handleEvent({ source, origin, data }) {
      if (source !== this.#frame?.contentWindow || origin !== home.origin || data?.wellwright !== 1) return;
      if (data.type === 'ready') this.#listens = true;
      if (data.type === 'size' && data.height > 0 && data.height < mostHeight) this.#frame.style.height = `${data.height}px`;
      if (data.type === 'result' || data.type === 'refused') {
        this.dispatchEvent(new CustomEvent(`wellwright-${data.type}`, { detail: data, bubbles: true }));
      }
    }
  }

  if (!customElements.get('wellwright-curve')) customElements.define('wellwright-curve', WellwrightCurve);
})();
