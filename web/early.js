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
  // A pointer that is down on the picture does with it what it would have done: drag a handle, touch a part.
  const onPicture = new Set();
  // Moves nearer than this to one another are told as one, px: each is a step of the boat.
  const near = 4;
  const nearOne = ({at, pointer}) => {
    const [before, last] = waiting.slice(-2);
    return last?.type === 'pointermove' && [before, last].every(w => w.at === at && w.pointer?.pointerId === pointer.pointerId) &&
      Math.hypot(last.pointer.clientX - before.pointer.clientX, last.pointer.clientY - before.pointer.clientY) < near;
  };
  const point = e => {
    const {target: at, type, pointerId, pointerType, isPrimary, clientX, clientY} = e;
    if (type === 'pointerdown') {
      clearTimeout(drops);
      finger = pointerType !== 'mouse' && at.matches('input[type=range]') ? {slider: at, value: at.value} : null;
      if (finger) e.preventDefault(); // no click of a mouse comes after a tap
      if (at.id === 'hit') {
        onPicture.add(pointerId);
        holdPointer(at, pointerId);
      }
    }
    if (at !== finger?.slider && !onPicture.has(pointerId)) return;
    const pointer = {pointerId, pointerType, isPrimary, clientX, clientY};
    if (type === 'pointermove' && nearOne({at, pointer})) waiting.pop();
    wait(e, {pointer, scrolled: scrollY});
    if (type === 'pointerup' || type === 'pointercancel') onPicture.delete(pointerId);
    if (type === 'pointerup') drop(400);
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
