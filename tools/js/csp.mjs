// The page's content security policy, from the first day: nothing is loaded, asked or run that is
// not in the page itself.
import { createHash } from 'node:crypto';

const hashOf = (text) => `'sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}'`;

/**
 * The policy for a page whose only inline script and style are these texts, to the byte.
 * Styles by hash means: no style attribute in the markup. A script may still set
 * `element.style.width`, which is no markup.
 */
export function policyFor({ script, style }) {
  return [
    `default-src 'none'`,
    // 'wasm-unsafe-eval' lets bytes become a module; text still never becomes code.
    `script-src ${hashOf(script)} 'wasm-unsafe-eval'`,
    `style-src ${hashOf(style)}`,
    // Its own host is for the icon of the installed app alone: the page's policy governs who fetches that.
    `img-src 'self' data: blob:`,
    `worker-src 'self'`,
    `manifest-src 'self'`,
    `base-uri 'none'`,
    `form-action 'none'`,
    `require-trusted-types-for 'script'`,
    // One policy, for the one address that must be named: the service worker's.
    'trusted-types twinround',
  ].join('; ');
}

// A worker is governed by its own policy, not the page's: it asks its own host for the page, and nobody else.
const workerPolicy = `default-src 'none'; connect-src 'self'`;

/** The `_headers` file of a static host. A meta element cannot say who may frame the page. */
export function headersFor(policy) {
  const framed = `  Content-Security-Policy: ${policy}; frame-ancestors *`;
  return [
    '/*',
    '  X-Content-Type-Options: nosniff',
    '  Referrer-Policy: no-referrer',
    // Asked again each time, answered "unchanged" most times: a mended page reaches everyone.
    '  Cache-Control: no-cache',
    ...['/', '/index.html'].flatMap((page) => [page, framed]),
    '/sw.js',
    `  Content-Security-Policy: ${workerPolicy}`,
    '',
  ].join('\n');
}
