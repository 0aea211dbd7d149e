// @ts-check
// An event stream that comes back by itself.


const MOST_WAIT = 10_000;

/**
 * @param {string} address
 * @param {Record<string, (data: string) => void>} told what to do by the name of the event
 * @param {(isThere: boolean) => void} there told when the connection comes and goes
 */
export function listen(address, told, there) {
  let wait = 500;
  /** @type {EventSource | undefined} */
  let source;
  const open = () => {
    source = new EventSource(address);
    source.onopen = () => {
      wait = 500;
      there(true);
    };
    source.onerror = () => {
      source?.close();
      there(false);
      setTimeout(open, wait);
      wait = Math.min(2 * wait, MOST_WAIT);
    };
    for (const [name, act] of Object.entries(told)) {
      source.addEventListener(name, (event) => act(/** @type {MessageEvent} */ (event).data));
    }
  };
  open();
  return {
    stop() {
      if (source) source.onerror = null;
      source?.close();
    },
  };
}
