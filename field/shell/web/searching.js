// The worker that looks for better plans while the crew goes on, one search at a time.
let worker = null;
let busy = false;
let waiting = 0;

const pause_ms = 250;  // events often come close together, each with a new job to search

export function stop_search() {
  clearTimeout(waiting);
  if (busy) {  // a search can only be stopped by ending the worker
    worker.terminate();
    worker = null;
    busy = false;
  }
}

/// `take` is called with each answer: choices as text, and whether it is the last.
export function start_search(events, take) {
  stop_search();
  waiting = setTimeout(() => {
    worker ??= new Worker('search.js');
    busy = true;
    worker.onmessage = ({ data }) => {
      busy = !data.is_last;
      take(data.choices, data.is_last);
    };
    worker.onerror = () => {  // no plan is better than the present plan
      worker = null;
      busy = false;
      take('[]', true);
    };
    worker.postMessage(events);
  }, pause_ms);
}
