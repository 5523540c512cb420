// Tells the program, once it is awake, what was entered, pressed and dragged before that.
'use strict';
{
  const told = ['input', 'change', 'click', 'keydown', 'submit', 'pointerdown', 'pointermove', 'pointerup', 'pointercancel'];
  const ends = ['touchend', 'touchcancel'];
  let waiting = [];

  // Between the program's first turn and its being told, it hears already: it is told once.
  const wait = (e, more) => {
    e.stopImmediatePropagation();
    waiting.push({at: e.target, type: e.type, ...more});
  };

  // A finger on a slider moves it as the program says, or scrolls the page. What the browser
  // does with the slider itself is undone, until the touch is over.
  let finger = null, drops;
  const point = e => {
    if (e.type === 'pointerdown') {
      clearTimeout(drops);
      finger = e.pointerType !== 'mouse' && e.target.matches('input[type=range]') ? {slider: e.target, value: e.target.value} : null;
      if (finger) e.preventDefault(); // no click of a mouse comes after a tap
    }
    if (e.target !== finger?.slider) return;
    const {pointerId, pointerType, isPrimary, clientX, clientY} = e;
    wait(e, {pointer: {pointerId, pointerType, isPrimary, clientX, clientY}, scrolled: scrollY});
    if (e.type === 'pointerup') drop(400);
  };
  const drop = ms => {
    clearTimeout(drops);
    drops = setTimeout(() => { finger = null; }, ms);
  };
  const ended = () => drop(0);

  // What stands in a field that is typed in, and the caret, as they were last.
  const typed = new Map();
  const caretOf = at => { try { return [at.selectionStart, at.selectionEnd]; } catch { return []; } };
  const setCaret = (at, [from, to]) => { if (from != null) at.setSelectionRange(from, to); };
  // As it wakes the program writes its own into each field. What is typed on then goes on from
  // what was typed.
  const typeOn = ({target: at}) => {
    const last = typed.get(at);
    if (!last || last.value === at.value) return;
    at.value = last.value;
    setCaret(at, last.caret);
  };

  const remember = e => {
    const at = e.target;
    if (e.type.startsWith('pointer')) point(e);
    else if (e.type === 'submit') e.preventDefault();
    else if (e.type === 'click') {
      if (at.closest('button')) wait(e);
    } else if (e.type === 'keydown') {
      const {key, ctrlKey, metaKey, altKey, shiftKey} = e;
      if (!at.matches('input:not([type=range], [type=checkbox]), select, textarea')) wait(e, {keys: {key, ctrlKey, metaKey, altKey, shiftKey}});
    } else if (at === finger?.slider) {
      at.value = finger.value;
      e.stopImmediatePropagation();
    } else {
      // A field's last value counts.
      const last = waiting.at(-1), {value, checked} = at;
      if (e.type === 'input') {
        typed.set(at, {value, caret: caretOf(at)});
        if (last?.at === at && last.type === 'input') waiting.pop();
      }
      wait(e, {value, checked});
    }
  };

  const tell = ({at, type, keys, pointer, scrolled, value, checked}) => {
    const bubbles = true, cancelable = true;
    if (type === 'click') at.click();
    else if (keys) at.dispatchEvent(new KeyboardEvent(type, {...keys, bubbles, cancelable}));
    else if (pointer) {
      const clientY = pointer.clientY + scrolled - scrollY;
      at.dispatchEvent(new PointerEvent(type, {...pointer, clientY, bubbles, cancelable}));
    } else {
      if (at.type === 'checkbox') at.checked = checked;
      else if (at.value !== value) at.value = value;
      at.dispatchEvent(new Event(type, {bubbles}));
    }
  };
  const listen = change => {
    told.forEach(type => document[change](type, remember, true));
    ends.forEach(type => document[change](type, ended, true));
    document[change]('beforeinput', typeOn, true);
  };
  listen('addEventListener');
  window.wakened = () => {
    listen('removeEventListener');
    const at = document.activeElement, last = typed.get(at);
    const caret = last?.value === at.value ? caretOf(at) : last?.caret;
    waiting.forEach(tell);
    waiting = [];
    if (last?.value === at.value) setCaret(at, caret);
  };
}
