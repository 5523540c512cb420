// What the page does where it is served: it keeps itself for use without a network, and
// says when there is a newer one. The one in use stays until its user takes the newer.
'use strict';
{
  const workers = navigator.serviceWorker;
  const say = waiting => {
    const notices = document.getElementById('notices');
    if (!notices || notices.querySelector('[data-newer]')) return;
    const box = document.createElement('div');
    box.dataset.newer = '';
    box.innerHTML = '<p>There is a newer version of this page. The boat in hand is kept; reload when it suits you.</p>' +
      '<button type="button" data-take>Reload now</button><button type="button">Later</button>';
    box.addEventListener('click', event => {
      const button = event.target.closest('button');
      if (!button) return;
      // The page's own notices are answered elsewhere.
      event.stopPropagation();
      if (!('take' in button.dataset)) { box.remove(); return; }
      button.disabled = true;
      workers.addEventListener('controllerchange', () => location.reload(), {once: true});
      waiting.postMessage('take');
    });
    notices.append(box);
  };
  const watch = registration => {
    // Without a worker in charge there was no version before.
    const arrived = () => { if (registration.waiting && workers.controller) say(registration.waiting); };
    const follow = () => registration.installing?.addEventListener('statechange', arrived);
    registration.addEventListener('updatefound', follow);
    follow();
    arrived();
    // A page left open for days looks when it is come back to.
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') registration.update().catch(() => {});
    });
  };
  const start = () => workers.register('sw.js').then(watch).catch(() => {
    document.documentElement.dataset.kept = 'not';
  });
  if (workers) addEventListener('load', start);
}
