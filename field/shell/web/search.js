// A worker that looks for better plans: the same program, without its screen.
let events = null;
let ready = false;

function search() {
  if (ready && events) {
    const at = Module._malloc(events.length);
    HEAPU8.set(events, at);
    Module._hemline_search(at, events.length);
    Module._free(at);
    events = null;
  }
}

self.onmessage = ({ data }) => {
  events = data;
  search();
};
self.Module = {
  noInitialRun: true,
  onRuntimeInitialized() {
    ready = true;
    search();
  },
  found: (choices, is_last) => postMessage({ choices, is_last }),
};
importScripts('hemline.js');
