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
  // Nothing is redrawn for a size already known, such as the first one observed. Asked for
  // here, it would make the browser lay out a page that is still being read.
  const size = () => `${host.clientWidth} ${host.clientHeight} ${density()} ${getComputedStyle(host).fontSize}`;
  let known;
  const resized = () => {
    const before = known;
    known = size();
    if (!before || known === before) return;
    wake(3);
    dispatchEvent(new Event('resize'));
  };
  // Lettering that the browser makes larger moves what stands under the picture.
  const sizes = new ResizeObserver(resized);
  [host, document.body].forEach(e => sizes.observe(e));
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

  // Ebitengine asks for gamepads at every frame. Asked once, the browser looks for them 200 times
  // a second as long as the page is open.
  Object.defineProperty(navigator, 'getGamepads', {value: () => []});

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

  // What does not scroll may take this share of the window's height, however large the
  // letters are: what is least needed lets go first. Room 0: all stays; 1: the cells
  // scroll; 2: the picture too; 3: the hand; 4: nothing stays.
  const most = 0.45;
  const fixed = ['stick', 'sight', 'hand', 'cells'].map(id => document.getElementById(id));
  const under = ['tools', 'hand', 'cells', 'controls'].map(id => document.getElementById(id));
  const column = inPane => fixed.filter(e => {
    const position = getComputedStyle(e).position;
    return inPane ? position === 'fixed' : position === 'sticky';
  }).reduce((sum, e) => sum + e.offsetHeight, 0);
  window.measureRoom = () => {
    for (let room = 0; room <= 4; room++) {
      if (root.dataset.room !== String(room)) root.dataset.room = room;
      if (column(false) <= most * innerHeight && column(true) <= most * innerHeight) break;
    }
    // All is read before anything is written: for a size asked for after that, the browser
    // would style the page anew. What is written as it stands costs the same.
    const heights = fixed.slice(1).map(e => ['--' + e.id + '-high', e.offsetHeight + 'px']);
    const put = (e, name, text) => {
      if (e.style.getPropertyValue(name) !== text) e.style.setProperty(name, text);
    };
    put(root, '--top', column(false) + 'px');
    under.forEach(e => heights.forEach(([name, text]) => put(e, name, text)));
  };
  if (fixed[0]) {
    const heights = new ResizeObserver(measureRoom);
    fixed.forEach(e => heights.observe(e));
    addEventListener('resize', measureRoom);
  }

  // The screen stays awake at the bench. A browser lets the lock go when the page is out of
  // sight, so it is asked for again when it is seen; one that refuses is told of.
  let awake = false, lock = null;
  const ask = async () => {
    try {
      const got = await navigator.wakeLock.request('screen');
      if (!awake || lock) { got.release(); return; }
      lock = got;
      lock.addEventListener('release', () => { if (lock === got) lock = null; });
    } catch { if (awake && !document.hidden) dispatchEvent(new Event('maysleep')); }
  };
  window.stayAwake = on => {
    awake = on;
    if (on) { ask(); return; }
    lock?.release();
    lock = null;
  };
  document.addEventListener('visibilitychange', () => { if (awake && !lock && !document.hidden) ask(); });

  // Shows what stands at a place, and at which notch the page is.
  window.showAt = at => {
    root.dataset.at = at;
    for (const e of document.querySelectorAll('[data-place]')) {
      const hidden = at !== 'all' && !e.dataset.place.split(' ').includes(at);
      if (e.hidden !== hidden) e.hidden = hidden;
    }
    for (const b of document.querySelectorAll('#notches [data-at]')) {
      b.setAttribute('aria-current', b.dataset.at === at);
      b.tabIndex = b.dataset.at === at ? 0 : -1;
    }
  };

  const contrast = matchMedia('(prefers-contrast: more)');
  window.moreContrast = () => contrast.matches;
  contrast.addEventListener('change', () => dispatchEvent(new Event('contrast')));

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
  // Who has closed the first minute never sees it come and go again.
  root.toggleAttribute('data-met', keptText('localStorage', 'barkwright.met') === 'true');
  // An address means something elsewhere only where the page is served. Its entry in the
  // history knows the boat; a new entry leaves the one before to be gone back to.
  window.showInAddress = (line, boat, anew) => {
    if (!location.protocol.startsWith('http')) return;
    const write = anew ? 'pushState' : 'replaceState';
    const at = root.dataset.at;
    try { history[write]({boat, at}, '', '#d=' + encodeURIComponent(line) + '&at=' + at); } catch { /* too often for this browser */ }
  };
  // Places are steps of the history, from disk too; the address is served only.
  window.showPlace = (at, step) => {
    const hash = location.hash.replace(/&at=.*$/, '');
    try {
      history[step ? 'pushState' : 'replaceState']({...history.state, at}, '', hash ? hash + '&at=' + at : undefined);
    } catch { /* too often for this browser */ }
  };
  window.placeOfHistory = () => history.state?.at ?? '';
  window.placeInAddress = () => location.hash.match(/&at=([a-z]+)/)?.[1] ?? '';
  window.boatOfAddress = () => history.state?.boat ?? '';
  window.lineInAddress = () => {
    const line = location.hash.startsWith('#d=') ? location.hash.slice(3).replace(/&at=.*$/, '') : '';
    try { return decodeURIComponent(line); } catch { return line; }
  };
  // What follows of a pointer goes to an element, unless the pointer is gone.
  window.holdPointer = (at, id) => {
    try { at.setPointerCapture(id); } catch { /* it was lifted */ }
  };
  window.copyText = text => { navigator.clipboard?.writeText(text).catch(() => {}); };
  // A picture shown as what its bytes are. The one before is let go.
  let shownPicture = '';
  window.pictureURL = (bytes, kind) => {
    const before = shownPicture;
    setTimeout(() => URL.revokeObjectURL(before), 60000);
    return shownPicture = URL.createObjectURL(new Blob([bytes], {type: kind}));
  };
  // Drawn anew on a sheet of its own, so that nothing but what is seen goes along, and no
  // larger than so many bytes of text. A browser that refuses gives an empty one.
  window.smallerPicture = (picture, most) => {
    const [wide, high] = [picture.offsetWidth, picture.offsetHeight];
    try {
      for (const long of [1600, 1280, 1024, 800, 640, 480]) {
        const share = Math.min(1, long / Math.max(wide, high));
        const sheet = document.createElement('canvas');
        sheet.width = Math.max(1, Math.round(wide * share));
        sheet.height = Math.max(1, Math.round(high * share));
        const pen = sheet.getContext('2d');
        pen.fillStyle = '#fff';
        pen.fillRect(0, 0, sheet.width, sheet.height);
        pen.drawImage(picture, 0, 0, sheet.width, sheet.height);
        const url = sheet.toDataURL('image/jpeg', 0.8);
        if (url.length <= most) return {url, width: sheet.width, height: sheet.height};
      }
    } catch { /* then it is not kept */ }
    return {url: '', width: 0, height: 0};
  };
  window.handOver = (name, kind, text) => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], {type: kind}));
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };

  window.stopped = why => {
    root.dataset.stopped = 'true';
    if (!root.dataset.ready) document.getElementById('readout')?.replaceChildren();
    note.textContent = why;
    // No number follows them any more. What is typed can still be copied.
    for (const e of document.querySelectorAll('#form :is(input[type=range], select, button)')) e.disabled = true;
  };
  // A context of the graphics is long in coming while the page's first paint is drawn, and the
  // page waits for it. So it is asked for while the thread, which the page has to start, unpacks
  // the program; with what painter.go asks for, and at the size that Ebitengine gives it first: a
  // context that changes its size waits for all that is drawn by then.
  // Ebitengine stops the program where the context is lost while it makes its first objects: the
  // page is opened again without one then.
  const without = 'barkwright.without-webgl';
  const graphics = () => {
    const canvas = Object.assign(document.createElement('canvas'), {width: 16, height: 16});
    if (keptText('sessionStorage', without)) {
      dropText('sessionStorage', without);
      canvas.getContext = () => null;
    }
    canvas.getContext('webgl2', {alpha: false, premultipliedAlpha: true, stencil: true, antialias: false});
    return canvas;
  };
  const start = async () => {
    if (typeof WebAssembly !== 'object' || typeof DecompressionStream !== 'function') {
      stopped('This browser is too old for the page: it needs WebAssembly and DecompressionStream ' +
        '(Chrome or Edge 80, Firefox 113, Safari 16.4, or later).');
      return;
    }
    const go = new Go();
    // Go is woken by its own clock for Ebitengine alone, which asks ten times a second whether
    // sound is to be stopped. There is none here, so that wait ends with whatever happens next.
    // Those within a frame are shorter.
    const gojs = go.importObject.gojs, wait = gojs['runtime.scheduleTimeoutEvent'];
    gojs['runtime.scheduleTimeoutEvent'] = sp => {
      if (go.mem.getInt32((sp >>> 0) + 8, true) < 50) wait(sp);
      else go.mem.setInt32((sp >>> 0) + 16, 0, true);
    };
    const texts = [...document.querySelectorAll('[data-program]')].map(e => e.textContent);
    let canvas;
    const program = await programOf(texts, () => { canvas = graphics(); });
    canvas ??= graphics();
    const instance = await WebAssembly.instantiate(program, go.importObject);
    // During this one call Ebitengine makes its canvas, the first of all, and keeps whichever
    // requestAnimationFrame it finds.
    window.requestAnimationFrame = gate;
    document.createElement = name => {
      if (name !== 'canvas') return Document.prototype.createElement.call(document, name);
      delete document.createElement;
      return canvas;
    };
    known ??= size();
    const done = go.run(instance);
    window.requestAnimationFrame = frame;
    watchDensity();
    await done;
    const context = canvas.getContext('webgl2');
    if (!root.dataset.ready && context?.isContextLost() && keepText('sessionStorage', without, 'true')) {
      // It was not the boat that stopped the page.
      ['localStorage', 'sessionStorage'].forEach(store => dropText(store, 'barkwright.opening'));
      location.reload();
      return;
    }
    stopped('The program has stopped. Reload the page to go on.');
  };
  // The page is painted first. In a tab that is not looked at no frame comes.
  const painted = new Promise(done => {
    frame(() => setTimeout(done));
    setTimeout(done, document.hidden ? 0 : 500);
  });
  const read = new Promise(done => {
    document.readyState === 'loading' ? addEventListener('DOMContentLoaded', done) : done();
  });
  Promise.all([painted, read]).then(start)
    .catch(error => { console.error(error); stopped('The program did not start: ' + error.message); });
}
