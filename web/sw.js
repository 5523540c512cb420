// Keeps one version of the page whole. It is installed only once every file is here and
// the page is the very one that it was written for; then it waits until the user takes it.
'use strict';
const page = '<!--PAGE-->';
const files = ['./', 'manifest.webmanifest', 'icon-192.png', 'icon-512.png'];
// Caches belong to the whole host, which may hold other pages and other copies of this one.
const own = 'barkwright ' + registration.scope + ' ';
const cache = own + page;

const isThePage = async answer => {
  const sum = await crypto.subtle.digest('SHA-256', await answer.clone().arrayBuffer());
  return Array.from(new Uint8Array(sum), byte => byte.toString(16).padStart(2, '0')).join('') === page;
};

const take = async () => {
  const answers = await Promise.all(files.map(file => fetch(file, {cache: 'no-cache'})));
  if (!answers.every(answer => answer.ok)) throw new Error('a file is not to be had');
  if (!await isThePage(answers[0])) throw new Error('the page is of another version than its worker');
  const store = await caches.open(cache);
  await Promise.all(files.map((file, i) => store.put(file, answers[i])));
};

const dropOlder = async () => {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(own) && name !== cache).map(name => caches.delete(name)));
};

// The page itself answers for its folder, whatever boat its address names.
const answer = async request => {
  const url = new URL(request.url);
  const asked = url.origin + url.pathname;
  const file = asked === registration.scope + 'index.html' ? './' : asked;
  const store = await caches.open(cache);
  return await store.match(file) ?? fetch(request);
};

addEventListener('install', event => event.waitUntil(take()));
addEventListener('activate', event => event.waitUntil(dropOlder()));
addEventListener('message', event => { if (event.data === 'take') skipWaiting(); });
addEventListener('fetch', event => {
  if (event.request.method === 'GET' && event.request.url.startsWith(registration.scope)) event.respondWith(answer(event.request));
});
