// One tab at a time, where the browser can see to it (Web Locks; not over plain http).

/**
 * Work when it is this tab's turn. A turn says who goes first, not who may go: nobody waits longer for it
 * than said, since a tab may be frozen, or left, while it is at it.
 * @template T
 * @param {"writer"|"feed"|"outbox"} what
 * @param {number} patience [ms]
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withTabLock(what, patience, work) {
  if (!navigator.locks) return work();
  let began = false;
  const begin = () => {
    began = true;
    return work();
  };
  try {
    return await navigator.locks.request(
      `flangebook.${what}`,
      { signal: AbortSignal.timeout(patience) },
      begin,
    );
  } catch (error) {
    if (began) throw error;
    return work();
  }
}
