// Calls the service this page came from. A busy service and a lost line are waited for and asked again; whoever is overtaken stops at once.

const root = new URL('.', document.baseURI);
const SLOW_AFTER_MS = 1500;
const MOST_TRIES = 6;
const MOST_WAIT_S = 30;

/** What the service refuses, in its own words (RFC 9457). */
export class Refusal extends Error {
  constructor(problem, status) {
    super(problem?.detail ?? `The service answered ${status}.`);
    this.status = status;
    this.errors = problem?.errors ?? {};
    this.requestId = problem?.requestId;
  }
}

/** The address of a path of the service, relative to this page: a link of an answer may stand below another prefix. */
export const address = path => new URL(path.replace(/^.*?\/?(?=v1\/|openapi\/|docs)/, ''), root).href;

export const getJson = (path, options) => call(path, options).then(answer => answer.json());
export const getText = (path, options) => call(path, options).then(answer => answer.text());
export const postJson = (path, body, options) => call(path, { ...options, body }).then(answer => answer.json());
export const postForText = (path, body, accept, options) => call(path, { ...options, body, accept }).then(answer => answer.text());

/**
 * Asks until there is an answer, a refusal, or nobody wants it any more.
 * @param signal Given up when it says so.
 * @param say Told what is being waited for: 'slow', 'busy' with seconds, 'offline' with seconds, and 'back'.
 */
async function call(path, { body, accept, signal, say = () => {} } = {}) {
  const headers = {};
  if (body) headers['Content-Type'] = 'application/json';
  if (accept) headers.Accept = accept;
  for (let attempt = 1; ; attempt++) {
    const slow = setTimeout(() => say('slow'), SLOW_AFTER_MS);
    let answer;
    try {
      answer = await fetch(address(path), { method: body ? 'POST' : 'GET', headers, body: body && JSON.stringify(body), signal });
    } catch (fault) {
      if (signal?.aborted || attempt >= MOST_TRIES) throw fault;
    } finally {
      clearTimeout(slow);
    }
    if (answer?.ok) return answer;
    if (answer && ![429, 503].includes(answer.status)) throw await refusal(answer);
    if (answer && attempt >= MOST_TRIES) throw await refusal(answer);
    const seconds = answer ? Math.min(Number(answer.headers.get('Retry-After')) || 1, MOST_WAIT_S) : Math.min(2 ** attempt, MOST_WAIT_S);
    say(answer ? 'busy' : 'offline', seconds);
    await pause(seconds * 1000, signal, !answer);
    say('back');
  }
}

async function refusal(answer) {
  const isProblem = answer.headers.get('Content-Type')?.includes('json');
  return new Refusal(isProblem ? await answer.json().catch(() => null) : null, answer.status);
}

/** Waits; shorter when the line comes back, and not at all for who is overtaken. */
export function pause(ms, signal, untilOnline = false) {
  return new Promise((resolve, reject) => {
    const done = () => { clean(); resolve(); };
    const stop = () => { clean(); reject(signal.reason); };
    const timer = setTimeout(done, ms);
    const clean = () => {
      clearTimeout(timer);
      removeEventListener('online', done);
      signal?.removeEventListener('abort', stop);
    };
    if (signal?.aborted) { stop(); return; }
    signal?.addEventListener('abort', stop);
    if (untilOnline) addEventListener('online', done);
  });
}
