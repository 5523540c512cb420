// What the program writes on the page, and what of the page the browser lays out meanwhile.
'use strict';
{
  // The text of an element, what a field holds, or an attribute.
  // A text that stands alone is changed where it is: a new one would be laid out from the start.
  window.writeOne = (e, what, text) => {
    const only = e.firstChild;
    if (what === 'value') e.value = text;
    else if (what !== 'text') e.setAttribute(what, text);
    else if (only?.nodeType === Node.TEXT_NODE && only === e.lastChild && text) only.data = text;
    else e.textContent = text;
  };
  // Many at once: of each the place's number, what of it is written, and the text.
  const places = [];
  window.placeOf = e => places.push(e) - 1;
  window.writeAll = all => {
    const parts = all.split('\x1f');
    for (let i = 0; i + 2 < parts.length; i += 3) writeOne(places[parts[i]], parts[i + 1], parts[i + 2]);
  };

  // With all on one page a step would have every stage laid out and painted, though two are in sight. While steps follow
  // one another, a stage out of the window keeps the height it has, so that nothing moves, and is laid out only when it
  // comes near. All are laid out again before anything is written that a step does not write.
  const within = 40; // ms, after which the program takes the boat to stand: RestDelay in wasm/pipeline
  let last = -Infinity, waiting = [];
  window.stepped = () => {
    const now = performance.now(), follows = now - last < within;
    last = now;
    if (!follows || waiting.length || document.documentElement.dataset.at !== 'all') return;
    const out = [...document.querySelectorAll('.step')].map(e => [e, e.getBoundingClientRect()])
      .filter(([, at]) => at.bottom < 0 || at.top > innerHeight);
    for (const [e, at] of out) {
      e.style.contentVisibility = 'auto';
      e.style.containIntrinsicHeight = at.height + 'px';
    }
    waiting = out.map(([e]) => e);
  };
  window.layOut = () => {
    for (const e of waiting) e.style.contentVisibility = e.style.containIntrinsicHeight = '';
    waiting = [];
  };
  addEventListener('beforeprint', layOut);
}
