// Shows the boat before the program is awake. It stands after boot.js, whose functions it calls.
'use strict';
{
  const root = document.documentElement;
  // What stands before the program is awake. The boat of a new user is laid into the page. A
  // boat that is kept has its picture and numbers kept beside it as they were last shown. They
  // stand only if it is kept as it was then. Any page opened from disk can write what is kept,
  // so the picture is shown as an image and all else as text.
  const early = document.getElementById('first');
  const kept = key => keptText('localStorage', 'barkwright.' + key);
  const shown = '#cells [data-result], #cells [data-verdict], #headline [data-result], [data-chip], #held-name, #held-value, #picture-key';
  const named = e => {
    const kind = ['result', 'verdict', 'chip', 'typed'].find(kind => kind in e.dataset);
    return kind ? kind + ' ' + e.dataset[kind] : e.id || e.name;
  };
  const inSight = e => !e.closest('[data-place][hidden]');
  const fields = () => [...document.querySelectorAll('#form [name], #form [data-typed]')].filter(inSight);
  let lastFirst = '';
  // Of thwarts alone a boat may lack the control: the program shows no other again.
  const controls = [...document.querySelectorAll('#form [data-control]')].filter(e => /^thwart\d$/.test(e.dataset.control));
  window.keepFirst = (boat, stamp, line, units, heldName, heldValue, key, picture) => {
    const of = {boat, stamp, line, units, at: root.dataset.at, sun: root.dataset.sun ?? ''};
    const texts = {}, states = {}, values = {};
    for (const e of document.querySelectorAll(shown)) {
      if (!inSight(e)) continue;
      texts[named(e)] = e.textContent;
      if (e.dataset.state) states[named(e)] = e.dataset.state;
    }
    Object.assign(texts, {'held-name': heldName, 'held-value': heldValue, 'picture-key': key});
    const lacking = controls.filter(e => e.hidden).map(e => e.dataset.control);
    for (const e of fields()) values[named(e)] = e.value;
    const checks = [...document.querySelectorAll('#head-checks b')].map(e => [e.textContent, e.className, e.dataset.state, e.parentElement.dataset.check]);
    const text = JSON.stringify({of, texts, states, values, lacking, checks, picture});
    if (text !== lastFirst && keepText('localStorage', 'barkwright.first', text)) lastFirst = text;
  };
  const keptFirst = at => {
    try {
      const boat = keptText('sessionStorage', 'barkwright.in-hand') || kept('in-hand');
      const first = JSON.parse(kept('first')), {of} = first, line = lineInAddress();
      const stands = JSON.parse(kept('boat.' + boat)).kept.stamp === of.stamp && of.boat === boat && of.at === at &&
        of.units === (kept('units') || 'in16') && (!line || line === of.line);
      return stands && !kept('opening') && !kept('stops.' + boat) ? first : null;
    } catch { return null; }
  };
  const showFirst = () => {
    const at = [placeInAddress(), kept('place')].find(name => document.querySelector(`#notches [data-at="${CSS.escape(name ?? '')}"]`));
    showAt(at ?? 'choose');
    const anyKept = keptKeys('localStorage', 'barkwright.boat.').length > 0 || kept('designs');
    const first = keptFirst(root.dataset.at);
    if (!first && !anyKept && !lineInAddress() && (kept('units') ?? 'in16') === 'in16') {
      if (!['choose', 'shed', 'all'].includes(root.dataset.at)) early.replaceChildren();
      return;
    }
    early.replaceChildren();
    for (const e of document.querySelectorAll(shown)) e.textContent = first?.texts[named(e)] ?? '';
    document.getElementById('head-checks').replaceChildren(...(first?.checks ?? []).flatMap(([text, className, state, check]) => {
      const button = document.createElement('button'), b = document.createElement('b');
      Object.assign(b, {textContent: text, className});
      b.dataset.state = state;
      button.type = 'button';
      button.dataset.check = String(check);
      button.append(b);
      return [button, ' '];
    }));
    for (const e of document.querySelectorAll('#cells [data-verdict]')) {
      e.dataset.state = String(first?.states[named(e)] ?? '');
    }
    for (const e of document.querySelectorAll('#form [data-typed], #name, #notes')) e.value = '';
    if (!first) return;
    for (const e of controls) e.hidden = first.lacking?.includes(e.dataset.control);
    for (const e of fields()) if (named(e) in first.values) e.value = first.values[named(e)];
    root.dataset.metric = first.of.units === 'mm';
    if (first.of.sun) return; // the program turns the page for sunlight
    const picture = new Image();
    picture.alt = '';
    picture.setAttribute('src', 'data:image/svg+xml,' + encodeURIComponent(first.picture));
    early.append(picture);
  };
  // What another page has kept may have any form.
  try { if (early) showFirst(); } catch { early.replaceChildren(); }
}
