// WebKitGTK, driven by the open WebDriver protocol: no library speaks to Debian's build of it.
import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { setTimeout as wait } from 'node:timers/promises';

const browser = '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser';
const selectAll = '\uE009a\uE000'; // Control and a, then both let go
const erase = '\uE003';

/** A port nobody listens on. */
const freePort = () =>
  new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });

/** Tries until it succeeds, for some seconds: a program just started is not yet there. */
async function untilReady(attempt) {
  for (let times = 1; ; times += 1) {
    try {
      return await attempt();
    } catch (error) {
      if (times === 100) throw error;
      await wait(100);
    }
  }
}

/** A screen that is none, for a browser that has no way to do without. */
async function startScreen() {
  const screen = spawn(
    'Xvfb',
    ['-displayfd', '1', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp'],
    {
      stdio: ['ignore', 'pipe', 'ignore'],
    },
  );
  const display = await new Promise((resolve, reject) => {
    screen.stdout.once('data', (text) => resolve(`:${String(text).trim()}`));
    screen.once('error', reject);
    screen.once('exit', () => reject(new Error('no screen for WebKitGTK')));
  });
  return { display, stop: () => screen.kill() };
}

/** One WebKitGTK with one page. */
export async function openWebKit() {
  const screen = await startScreen();
  const port = await freePort();
  const driver = spawn('WebKitWebDriver', [`--port=${port}`], {
    env: { ...process.env, DISPLAY: screen.display, WEBKIT_DISABLE_COMPOSITING_MODE: '1' },
    stdio: 'ignore',
  });
  const ask = async (method, path, body) => {
    const reply = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const { value } = await reply.json();
    if (!reply.ok) throw new Error(`${method} ${path}: ${value?.error} ${value?.message}`);
    return value;
  };
  const options = { binary: browser, args: ['--automation'] };
  const started = await untilReady(() =>
    ask('POST', '/session', {
      capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } },
    }),
  );
  const session = `/session/${started.sessionId}`;
  const find = async (css) => {
    const found = await ask('POST', `${session}/element`, { using: 'css selector', value: css });
    return `${session}/element/${Object.values(found)[0]}`;
  };
  const evaluate = (script) =>
    ask('POST', `${session}/execute/sync`, { script: `return (${script})()`, args: [] });
  return {
    version: started.capabilities.browserVersion,
    goto: (url) => ask('POST', `${session}/url`, { url }),
    evaluate,
    evaluateInFrame: async (script) => {
      await ask('POST', `${session}/frame`, { id: 0 });
      try {
        return await evaluate(script);
      } finally {
        await ask('POST', `${session}/frame`, { id: null });
      }
    },
    click: async (css) => ask('POST', `${await find(css)}/click`, {}),
    type: async (css, text) => {
      const element = await find(css);
      await ask('POST', `${element}/click`, {});
      await ask('POST', `${element}/value`, { text: selectAll });
      await ask('POST', `${element}/value`, { text: erase });
      await ask('POST', `${element}/value`, { text });
    },
    end: async () => {
      await ask('DELETE', session).catch(() => undefined);
      driver.kill();
      screen.stop();
    },
  };
}
