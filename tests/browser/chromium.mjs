// Debian's Chromium, headless, quiet, and as root: that takes these flags.
import { chromium } from 'playwright-core';

export const executablePath = '/usr/bin/chromium';
export const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launchChromium = () => chromium.launch({ executablePath, args: flags });
