// The kept requests and replies: a folder each, named for the question it asks where that is not `plan`.
import { readdirSync, readFileSync } from 'node:fs';

import { at } from '../../tools/js/paths.mjs';

const questions = ['adjust'];

const questionOf = (name) =>
  questions.find((question) => name.startsWith(`${question}-`)) ?? 'plan';

/** @typedef {{ name: string, question: string, files: string[], read: (file: string) => string }} Kept */
/** @type {Kept[]} */
export const kept = readdirSync(at('tests', 'golden'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => ({
    name,
    question: questionOf(name),
    files: readdirSync(at('tests', 'golden', name)),
    read: (file) => readFileSync(at('tests', 'golden', name, file), 'utf8'),
  }))
  .sort((a, b) => (a.name < b.name ? -1 : 1));
