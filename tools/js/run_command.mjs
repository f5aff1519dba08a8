// Runs a program to its end and keeps what it said. Never throws: a program that is not there, dies
// by a signal or takes too long is told as a failure like any other.
import { spawn } from 'node:child_process';

import { root } from './paths.mjs';

const minute = 60_000;

/**
 * @param {string} command
 * @param {string[]} args
 * @param {{ env?: Record<string, string | undefined>, cwd?: string, timeout?: number, input?: string | Buffer }} [options]
 * @returns {Promise<{ ok: boolean, code: number | null, out: string, stdout: string }>}
 */
export function runCommand(command, args, options = {}) {
  const { env = {}, cwd = root, timeout = 20 * minute, input = '' } = options;
  return new Promise((resolve) => {
    // A group of its own, so that whatever it started ends with it.
    const child = spawn(command, args, { cwd, env: { ...process.env, ...env }, detached: true });
    let out = '';
    let stdout = '';
    const end = (code, note) => {
      clearTimeout(timer);
      resolve({ ok: code === 0, code, out: note ? `${out}\n${note}\n` : out, stdout });
    };
    const timer = setTimeout(() => {
      out += `\n${command}: ended after ${timeout / minute} minutes\n`;
      try {
        process.kill(-child.pid, 'SIGKILL');
      } catch {
        // It ended by itself in the meantime.
      }
    }, timeout);
    child.stdout.setEncoding('utf8');
    child.stderr.setEncoding('utf8');
    child.stdout.on('data', (chunk) => {
      out += chunk;
      stdout += chunk;
    });
    child.stderr.on('data', (chunk) => (out += chunk));
    child.stdin.on('error', () => {});
    child.stdin.end(input);
    child.on('error', (error) => end(null, `${command}: ${error.message}`));
    child.on('close', (code, signal) => end(code, signal ? `${command}: ended by ${signal}` : ''));
  });
}

/** Runs every job, at most `width` at a time. */
export async function runPool(jobs, width) {
  const waiting = [...jobs];
  const worker = async () => {
    for (let job = waiting.shift(); job; job = waiting.shift()) await job();
  };
  await Promise.all(Array.from({ length: width }, worker));
}
