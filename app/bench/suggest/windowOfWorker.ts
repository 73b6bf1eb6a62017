// The landmark libraries were written for pages and look for a window; a worker's global scope serves them as well.
Object.assign(globalThis, { window: globalThis });
