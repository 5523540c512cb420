// Starts the program inside this file and keeps Ebitengine in its cell. Without
// these lines it would take the whole page, the keyboard, the wheel and touch.
'use strict';
{
  const root = document.documentElement;
  const host = document.getElementById('view');
  const note = document.getElementById('picture-note');
  const density = () => devicePixelRatio || 1;
  let lost = false, largest = Infinity;

  // Ebitengine takes its size from the body, in device pixels once it believes
  // the density is one. A size of nought makes it skip every frame: one larger than
  // the graphics take would stop the program at once, before anyone hears of the size.
  for (const side of ['clientWidth', 'clientHeight']) {
    Object.defineProperty(document.body, side, {
      configurable: true,
      get: () => {
        const pixels = Math.max(1, Math.round(host[side] * density()));
        return lost || pixels > largest ? 0 : pixels;
      },
    });
  }
  // Nothing is redrawn for a size already known, such as the first one observed.
  const size = () => `${host.clientWidth} ${host.clientHeight} ${density()}`;
  let known = size();
  const resized = () => {
    if (known === size()) return;
    known = size();
    wake(3);
    dispatchEvent(new Event('resize'));
  };
  const watchDensity = () => matchMedia(`(resolution:${density()}dppx)`)
    .addEventListener('change', () => { resized(); watchDensity(); }, {once: true});

  // Ebitengine answers a lost context by reloading the page, which would lose
  // the boat; and once restored its own objects are stale.
  window.stopFrames = () => { lost = true; };
  window.limitPicture = pixels => { largest = pixels; };
  addEventListener('webglcontextlost', event => {
    if (!host.contains(event.target)) return;
    event.stopImmediatePropagation();
    event.preventDefault();
    stopFrames();
    dispatchEvent(new Event('picturelost'));
  }, true);

  // Frames run only when woken: an idle page costs nothing.
  const frame = requestAnimationFrame.bind(window);
  let left = 0, parked = null;
  const gate = call => {
    if (left > 0) { left--; return frame(call); }
    parked = call;
    return 0;
  };
  window.wake = count => {
    left = Math.max(left, count);
    if (!parked) return;
    const call = parked;
    parked = null;
    left--;
    frame(call);
  };

  // The boat stays in sight while the page is read, unless too little is left to read
  // in, as with large letters or a low window; what is gone to stops under it.
  const mostOfWindow = 0.61;
  const sight = document.getElementById('sight');
  const fits = () => {
    root.toggleAttribute('data-stays', sight.offsetHeight <= mostOfWindow * innerHeight);
    root.style.setProperty('--sight', sight.offsetHeight + 'px');
  };
  if (sight) {
    new ResizeObserver(fits).observe(sight);
    addEventListener('resize', fits);
  }

  // What browsers may refuse, each with an answer instead of an exception.
  // Stores go by their names: localStorage, sessionStorage.
  window.keepText = (store, key, text) => {
    try { window[store].setItem(key, text); return window[store].getItem(key) === text; } catch { return false; }
  };
  window.keptText = (store, key) => {
    try { return window[store].getItem(key); } catch { return null; }
  };
  window.dropText = (store, key) => {
    try { window[store].removeItem(key); } catch { /* then it is not there */ }
  };
  window.keptKeys = (store, prefix) => {
    try { return Object.keys(window[store]).filter(key => key.startsWith(prefix)); } catch { return []; }
  };
  // An address means something elsewhere only where the page is served. Its entry in the
  // history knows the boat; a new entry leaves the one before to be gone back to.
  window.showInAddress = (line, boat, anew) => {
    if (!location.protocol.startsWith('http')) return;
    const write = anew ? 'pushState' : 'replaceState';
    try { history[write]({boat}, '', '#d=' + encodeURIComponent(line)); } catch { /* too often for this browser */ }
  };
  window.boatOfAddress = () => history.state?.boat ?? '';
  window.lineInAddress = () => {
    const line = location.hash.startsWith('#d=') ? location.hash.slice(3) : '';
    try { return decodeURIComponent(line); } catch { return line; }
  };
  window.copyText = text => { navigator.clipboard?.writeText(text).catch(() => {}); };
  window.handOver = (name, kind, text) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], {type: kind}));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };

  // Two of 91 letters hold 13 bits of the program, the lowest first: see web/pack.
  const bytesOf = text => {
    const place = new Uint8Array(128);
    for (let code = 33, n = 0; code < 127; code++) if (!'&<>'.includes(String.fromCharCode(code))) place[code] = n++;
    const paired = text.length & ~1, bytes = new Uint8Array((paired / 2 * 13 + (text.length & 1) * 5) >> 3);
    let held = 0, bits = 0, n = 0;
    const take = (value, more) => {
      held |= value << bits;
      for (bits += more; bits >= 8; bits -= 8) { bytes[n++] = held; held >>>= 8; }
    };
    for (let i = 0; i < paired; i += 2) take(place[text.charCodeAt(i)] * 91 + place[text.charCodeAt(i + 1)], 13);
    if (paired < text.length) take(place[text.charCodeAt(paired)], 5);
    return bytes;
  };
  const unpack = async () => {
    const packed = bytesOf(document.getElementById('wasm').textContent.trim());
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
    return new Response(stream).arrayBuffer();
  };
  window.stopped = why => {
    root.dataset.stopped = 'true';
    note.textContent = why;
  };
  const start = async () => {
    if (typeof WebAssembly !== 'object' || typeof DecompressionStream !== 'function') {
      stopped('This browser is too old for the page: it needs WebAssembly and DecompressionStream ' +
        '(Chrome or Edge 80, Firefox 113, Safari 16.4, or later).');
      return;
    }
    const go = new Go();
    const {instance} = await WebAssembly.instantiate(await unpack(), go.importObject);
    // Ebitengine keeps whichever requestAnimationFrame it finds during this one call.
    window.requestAnimationFrame = gate;
    const done = go.run(instance);
    window.requestAnimationFrame = frame;
    new ResizeObserver(resized).observe(host);
    watchDensity();
    await done;
    stopped('The program has stopped. Reload the page to go on.');
  };
  start().catch(error => { console.error(error); stopped('The program did not start: ' + error.message); });
}
