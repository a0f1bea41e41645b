// Answers while somebody types: ask when the keys rest, show the newest answer only, drop and
// cancel what has gone stale.

/**
 * @template Question, Answer
 * @param {(question: Question, signal: AbortSignal) => Promise<Answer>} fetchAnswer
 * @param {(outcome: {question: Question, answer?: Answer, error?: unknown}) => void} show
 * @param {AbortSignal} leaving the screen's
 * @param {number} [rest] milliseconds without a key
 */
export function newestAnswer(fetchAnswer, show, leaving, rest = 250) {
  /** @type {number|undefined} */
  let timer;
  /** @type {AbortController|undefined} */
  let asking;
  const stop = () => {
    clearTimeout(timer);
    asking?.abort();
  };
  leaving.addEventListener("abort", stop);

  /** @param {Question} question */
  async function run(question) {
    asking = new AbortController();
    const { signal } = asking;
    try {
      const answer = await fetchAnswer(question, signal);
      if (!signal.aborted) show({ question, answer });
    } catch (error) {
      if (!signal.aborted) show({ question, error });
    }
  }

  return {
    stop,
    /**
     * @param {Question} question
     * @param {{now?: boolean}} [how] now: do not wait for more keys
     */
    ask(question, { now = false } = {}) {
      stop();
      if (leaving.aborted) return;
      timer = setTimeout(() => run(question), now ? 0 : rest);
    },
  };
}
