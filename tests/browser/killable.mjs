// A Chromium that can be killed at any moment, as a power cut kills it, and opened again with what it had on the disk.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

import { chromium } from 'playwright-core';

import { executablePath, flags } from './chromium.mjs';

/** @param {string} profile the folder it keeps everything in */
export async function openKillable(profile) {
  const at = path.join(profile, 'DevToolsActivePort');
  rmSync(at, { force: true });
  const own = [`--user-data-dir=${profile}`, '--remote-debugging-port=0', '--headless=new'];
  // A group of its own: a power cut leaves none of a browser's many processes to write on.
  const program = spawn(executablePath, [...flags, ...own, 'about:blank'], {
    stdio: 'ignore',
    detached: true,
  });
  const ended = new Promise((resolve) => program.once('exit', resolve));
  while (!existsSync(at) || !readFileSync(at, 'utf8').includes('\n')) await wait(50);
  const [port] = readFileSync(at, 'utf8').split('\n');
  const connected = await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
  const kill = async () => {
    if (program.exitCode === null && program.signalCode === null)
      process.kill(-Number(program.pid), 'SIGKILL');
    await ended;
    await connected.close().catch(() => undefined);
  };
  return { window: connected.contexts()[0], kill };
}
