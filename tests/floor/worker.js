// The same worker as the app's keeps this page, so that both start alike without a network.
addEventListener('load', () => navigator.serviceWorker.register('./sw.js').catch(() => {}));
