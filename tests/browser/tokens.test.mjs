// Contrast, proved from the tokens themselves: every colour that carries text or marks a control, on
// every ground it stands on, in light and in dark. WCAG 2.2, 1.4.3 (text 4.5 to 1) and 1.4.11 (marks
// and the edges of controls 3 to 1); luminance as WCAG defines it.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, it } from 'node:test';
import { fileURLToPath } from 'node:url';

const styles = fileURLToPath(new URL('../../web/style/', import.meta.url));
const tokens = readFileSync(path.join(styles, 'tokens.css'), 'utf8');

/** The colour tokens of one block. */
const coloursOf = (text) =>
  Object.fromEntries(
    [...text.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, colour]) => [name, colour]),
  );
const [lightText, darkText] = tokens.split('@media (prefers-color-scheme: dark)');
const light = coloursOf(lightText);
const schemes = { light, dark: { ...light, ...coloursOf(darkText) } };

const channel = (hex) => {
  const share = parseInt(hex, 16) / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
};
const luminance = (colour) =>
  0.2126 * channel(colour.slice(1, 3)) +
  0.7152 * channel(colour.slice(3, 5)) +
  0.0722 * channel(colour.slice(5, 7));
function contrast(one, other) {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

const grounds = ['paper', 'sheet'];
/** Colours of text, each on the grounds it is set on. */
const text = {
  ink: grounds,
  'ink-soft': grounds,
  madder: grounds,
  woad: grounds,
  'on-madder': ['madder'],
};
/** Colours of marks and of the edges of controls. */
const marks = {
  'line-strong': grounds,
  weld: grounds,
  woad: grounds,
  madder: grounds,
};

/** Everything that a rule of the style sheets gives to one of these properties by token. */
function used(properties) {
  const names = new Set();
  for (const file of readdirSync(styles).filter((name) => name.endsWith('.css'))) {
    // Forced colours and print bring palettes of their own.
    if (file === 'contrast.css' || file === 'print.css') continue;
    const rules = readFileSync(path.join(styles, file), 'utf8');
    const declared = new RegExp(`(?:^|[;{\\s])(?:${properties}):[^;]*var\\(--([a-z-]+)\\)`, 'g');
    for (const [, name] of rules.matchAll(declared)) names.add(name);
  }
  return [...names].sort();
}

describe('the contrast sum itself', () => {
  it('is 21 for black on white, 1 for a colour on itself, and WCAG’s 4.48 for #777 on white', () => {
    assert.ok(Math.abs(contrast('#000000', '#ffffff') - 21) < 1e-9);
    assert.equal(contrast('#97382a', '#97382a'), 1);
    assert.ok(Math.abs(contrast('#777777', '#ffffff') - 4.48) < 0.005);
  });
});

for (const [name, colours] of Object.entries(schemes)) {
  describe(name, () => {
    for (const [kind, pairs, least] of [
      ['text', text, 4.5],
      ['marks', marks, 3],
    ]) {
      for (const [token, on] of Object.entries(pairs)) {
        for (const ground of on) {
          it(`${kind}: ${token} on ${ground}`, () => {
            assert.ok(colours[token] && colours[ground], 'both are tokens');
            const ratio = contrast(colours[token], colours[ground]);
            assert.ok(ratio >= least, `${ratio.toFixed(2)} to 1, and ${least} is the least`);
          });
        }
      }
    }

    it('dark has its own of every colour that light has', () => {
      const own = coloursOf(darkText);
      assert.deepEqual(
        Object.keys(light).filter((token) => !(token in own)),
        [],
      );
    });
  });
}

describe('the style sheets', () => {
  it('set text only in colours proved above', () => {
    const unproved = used('color').filter((token) => !(token in text));
    assert.deepEqual(unproved, []);
  });
  it('set text only on grounds proved above', () => {
    const proved = new Set([...Object.values(text).flat(), 'weld']); // weld is a dot without text
    const others = used('background|background-color').filter((token) => !proved.has(token));
    assert.deepEqual(others, []);
  });
  it('take colours from the tokens alone', () => {
    for (const file of readdirSync(styles).filter((one) => /\.css$/.test(one))) {
      if (file === 'tokens.css' || file === 'print.css') continue;
      const rules = readFileSync(path.join(styles, file), 'utf8').replace(/\/\*.*?\*\//gs, '');
      assert.deepEqual(
        rules.match(/#[0-9a-f]{3,8}\b|rgba?\([^)]*\)|hsla?\([^)]*\)/g) ?? [],
        [],
        file,
      );
    }
  });
});
