// Stands outside the app: applies the saved look before the first paint, watches whether the app starts and stays up,
// keeps the entry (it is in the link) when it does not, and looks after the offline copy.
(function () {
  'use strict';
  var root = document.documentElement;
  var failed = false;

  try {
    var look = localStorage.getItem('benchslate.look');
    if (look === 'dark' || look === 'light') root.dataset.theme = look;
  } catch (e) { /* storage refused: the system's choice serves */ }

  function say(name, detail) {
    window.dispatchEvent(new CustomEvent('benchslate:' + name, { detail: detail }));
  }

  function make(tag, text, cls) {
    var e = document.createElement(tag);
    if (text) e.textContent = text;
    if (cls) e.className = cls;
    return e;
  }

  // The failure page. The entry is in the address, so the address is what must not be lost.
  function fail(reason) {
    if (failed) return;
    failed = true;
    var box = make('main', '', 'shell failure');
    box.setAttribute('role', 'alert');
    box.appendChild(make('h1', 'Benchslate has stopped'));
    box.appendChild(make('p', reason));
    box.appendChild(make('p', 'What you typed is kept in this link:'));
    var link = make('a', location.href, 'keep');
    link.href = location.href;
    box.appendChild(link);
    var row = make('p', '', 'row');
    var again = make('button', 'Reload', 'act');
    again.type = 'button';
    again.onclick = function () { location.reload(); };
    row.appendChild(again);
    var home = make('button', 'Reload at the list of questions', 'act');
    home.type = 'button';
    home.onclick = function () { location.hash = '#/'; location.reload(); };
    row.appendChild(home);
    box.appendChild(row);
    function show() {
      document.body.textContent = '';
      document.body.appendChild(box);
      again.focus();
    }
    if (document.body) show(); else addEventListener('DOMContentLoaded', show);
  }

  function up() { return root.dataset.app === 'up'; }

  var compiles = typeof WebAssembly === 'object' && typeof WebAssembly.instantiate === 'function';
  if (!compiles) {
    fail('This browser has no WebAssembly, or it is switched off (some lock-down modes do that). ' +
      'Use a browser from 2021 or later, or allow this site.');
  } else if (!WebAssembly.validate(new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 1, 111, 0]))) {
    // the smallest module with a reference type, which the app's own module needs
    compiles = false;
    fail('This browser is too old. It takes Chrome 96, Firefox 79, Safari 15.1 (iPadOS 15.1), Samsung Internet 17, or newer.');
  }

  addEventListener('error', function (e) {
    var t = e.target;
    if (t && t !== window && (t.tagName === 'SCRIPT' || (t.tagName === 'LINK' && t.rel === 'stylesheet'))) {
      if (!up()) fail('A part of the app could not be loaded. Look at the connection, then reload.');
      return;
    }
    var wasm = compiles && WebAssembly.RuntimeError && e.error instanceof WebAssembly.RuntimeError;
    if (wasm) fail('Something went wrong inside the app.');
    else if (!up() && e.error) fail('The app could not start: ' + (e.message || 'no reason given') + '.');
  }, true);

  addEventListener('unhandledrejection', function (e) {
    var r = e.reason;
    if (compiles && WebAssembly.RuntimeError && r instanceof WebAssembly.RuntimeError) fail('Something went wrong inside the app.');
    else if (!up()) fail('The app could not start: ' + (r && r.message ? r.message : String(r)) + '.');
  });

  addEventListener('load', function () {
    setTimeout(function () {
      if (!up()) fail('The app has not started after 30 seconds.');
    }, 30000);
  });

  // Where the browser offers to put the app on the home screen, the offer waits for the user's tap on the about page.
  var offer = null;
  function offered(e) {
    offer = e;
    if (e) root.dataset.install = 'ready'; else delete root.dataset.install;
    say('install');
  }
  addEventListener('beforeinstallprompt', function (e) { e.preventDefault(); offered(e); });
  addEventListener('appinstalled', function () { offered(null); });
  addEventListener('benchslate:install-now', function () {
    if (offer) { offer.prompt(); offered(null); }
  });

  // What is folded stands open on paper. Firefox prints what stands at the end of this event, so it is done at once.
  var opened = [];
  addEventListener('beforeprint', function () {
    opened = [].slice.call(document.querySelectorAll('details:not([open])'));
    opened.forEach(function (d) { d.setAttribute('open', ''); });
  });
  addEventListener('afterprint', function () {
    opened.forEach(function (d) { d.removeAttribute('open'); });
    opened = [];
  });

  // The first thing saved asks the browser to keep this page's storage; its answer stands on the about page.
  addEventListener('benchslate:saved', function () {
    if (root.dataset.lasting || !navigator.storage || !navigator.storage.persist) return;
    root.dataset.lasting = 'asked';
    navigator.storage.persist().then(function (yes) {
      root.dataset.lasting = yes ? 'yes' : 'no';
      say('lasting');
    }).catch(function () { delete root.dataset.lasting; });
  });
  if (navigator.storage && navigator.storage.persisted) {
    navigator.storage.persisted().then(function (yes) { if (yes) { root.dataset.lasting = 'yes'; say('lasting'); } }).catch(function () { /* not told */ });
  }

  // The offline copy. Nothing here may stop the app.
  function state(s) { root.dataset.offline = s; say('offline', s); }

  function watch(reg) {
    function offer() { if (reg.waiting && navigator.serviceWorker.controller) { root.dataset.update = 'ready'; say('update'); } }
    function follow(w) {
      if (w) w.addEventListener('statechange', function () { if (w.state === 'installed') offer(); });
    }
    // A first build that could not be stored whole: nothing is kept.
    function first(w) {
      if (w) w.addEventListener('statechange', function () { if (w.state === 'redundant' && !reg.active) state('failed'); });
    }
    offer();
    follow(reg.installing);
    first(reg.installing);
    reg.addEventListener('updatefound', function () { follow(reg.installing); });
    document.addEventListener('visibilitychange', function () {
      if (document.visibilityState === 'visible') reg.update().catch(function () { /* no network */ });
    });
    // The app asks for this at the user's tap, and only then.
    addEventListener('benchslate:use-new-version', function () {
      if (!reg.waiting) { location.reload(); return; }
      navigator.serviceWorker.addEventListener('controllerchange', function () { location.reload(); }, { once: true });
      reg.waiting.postMessage('use-new-version');
    });
  }

  // Ready is said of a full copy only; the worker fetches what is missing before it answers.
  function whole(reg) {
    var port = new MessageChannel();
    port.port1.onmessage = function (e) { state(e.data ? 'ready' : 'holes'); };
    reg.active.postMessage('is-it-whole', [port.port2]);
  }

  if (!('serviceWorker' in navigator)) {
    root.dataset.offline = window.isSecureContext === false ? 'insecure' : 'none';
  } else {
    root.dataset.offline = 'getting';
    addEventListener('load', function () {
      navigator.serviceWorker.register('./sw.js').then(function (reg) {
        watch(reg);
        return navigator.serviceWorker.ready.then(whole);
      }).catch(function () { state('failed'); });
    });
  }
})();
