// Requests that are right or wrong by what several fields ask of each other: a schema says such things
// in other words than the core does, so the two are held together case by case. (What is right or
// wrong about one field alone is tried in tests/golden/schema.test.mjs.)
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';

import { Ajv2020 } from 'ajv/dist/2020.js';

import { at } from '../../tools/js/paths.mjs';
import { runCommand } from '../../tools/js/run_command.mjs';

const ajv = new Ajv2020({ allErrors: true, strictTypes: false, strictTuples: false });
ajv.addSchema(JSON.parse(readFileSync(at('core', 'wire', 'schema.json'), 'utf8')), 'contract');
const fitsRequest = ajv.getSchema('contract#/$defs/request');
const fitsReply = ajv.getSchema('contract#/$defs/reply');

const measured = { lengthMm: 246, ballGirthMm: 228 };
const shoe = { scale: 'eu', size: 39 };
const plain = { stitches: 20, widthMm: 101.6 };
const whole = { ...plain, rounds: 28, heightMm: 101.6 };
const ball = { ballG: 100, ballM: 200 };

const ask = (fields) => ({
  version: 1,
  yarn: { category: 4 },
  foot: measured,
  legHeightMm: 200,
  ...fields,
});
const onFoot = (foot) => ask({ foot });
const onShoe = (size) => onFoot({ shoe: size, body: 'woman' });
const onReadings = (...readings) => ask({ swatch: { readings } });

/** What is asked, and the fields that the core names as wrong in form; none where it is a request. */
const cases = {
  'a category and no swatch': [ask({}), []],
  'a swatch and no yarn': [ask({ swatch: { readings: [whole] }, yarn: undefined }), []],
  'neither swatch nor yarn': [ask({ yarn: undefined }), ['/swatch']],
  'a ball and neither swatch nor category': [ask({ yarn: ball }), ['/swatch']],
  'a swatch without readings beside a category': [ask({ swatch: {} }), ['/swatch/readings']],
  'no readings at all': [onReadings(), ['/swatch/readings']],
  'one whole reading': [onReadings(whole), []],
  'a plain reading beside a whole one': [onReadings(plain, whole), []],
  'plain readings alone': [
    onReadings(plain, plain),
    ['/swatch/readings/0/rounds', '/swatch/readings/0/heightMm'],
  ],
  'rounds without a height': [onReadings({ ...plain, rounds: 28 }), ['/swatch/readings/0/rounds']],
  'a height without rounds beside a whole reading': [
    onReadings(whole, { ...plain, heightMm: 100 }),
    ['/swatch/readings/1/heightMm'],
  ],
  'twelve readings': [onReadings(...Array(12).fill(whole)), []],
  'thirteen readings': [onReadings(...Array(13).fill(whole)), ['/swatch/readings']],
  'a weighed swatch': [ask({ swatch: { readings: [whole], massG: 5, massStitches: 500 } }), []],
  'a mass of unknown stitches': [
    ask({ swatch: { readings: [whole], massG: 5 } }),
    ['/swatch/massG'],
  ],
  'stitches of unknown mass': [
    ask({ swatch: { readings: [whole], massStitches: 500 } }),
    ['/swatch/massStitches'],
  ],
  'a ball of unknown length': [ask({ yarn: { category: 4, ballG: 100 } }), ['/yarn/ballG']],
  'a ball of unknown mass': [ask({ yarn: { category: 4, ballM: 100 } }), ['/yarn/ballM']],
  'a shoe and a body': [onShoe(shoe), []],
  'a shoe beside a measured foot': [onFoot({ ...measured, shoe }), []],
  'a body beside a measured foot': [onFoot({ ...measured, body: 'man' }), []],
  'a shoe, a body and one measure': [onFoot({ lengthMm: 246, shoe, body: 'man' }), []],
  'a shoe alone': [onFoot({ shoe }), ['/foot/body']],
  'a body alone': [onFoot({ body: 'child' }), ['/foot/shoe']],
  'a length alone': [onFoot({ lengthMm: 246 }), ['/foot/ballGirthMm']],
  'a girth alone': [onFoot({ ballGirthMm: 228 }), ['/foot/lengthMm']],
  'a length and a shoe of nobody': [onFoot({ lengthMm: 246, shoe }), ['/foot/body']],
  'a length and a body': [onFoot({ lengthMm: 246, body: 'man' }), ['/foot/ballGirthMm']],
  'no foot in the foot': [onFoot({}), ['/foot/lengthMm', '/foot/ballGirthMm']],
  'a size without a scale': [onShoe({ size: 39 }), ['/foot/shoe/scale']],
  'a scale without a size': [onShoe({ scale: 'eu' }), ['/foot/shoe/size']],
  'EU 60': [onShoe({ scale: 'eu', size: 60 }), []],
  'EU 60.5': [onShoe({ scale: 'eu', size: 60.5 }), ['/foot/shoe/size']],
  'EU 245': [onShoe({ scale: 'eu', size: 245 }), ['/foot/shoe/size']],
  'US women -1': [onShoe({ scale: 'us-women', size: -1 }), ['/foot/shoe/size']],
  'mondopoint 245': [onShoe({ scale: 'mondopoint', size: 245 }), []],
  'mondopoint 400': [onShoe({ scale: 'mondopoint', size: 400 }), []],
  'mondopoint 401': [onShoe({ scale: 'mondopoint', size: 401 }), ['/foot/shoe/size']],
  'mondopoint 60': [onShoe({ scale: 'mondopoint', size: 60 }), ['/foot/shoe/size']],
  'a newer version': [ask({ version: 2 }), ['/version']],
  'an empty rib, toe and pace': [ask({ rib: {}, toe: {}, pace: {} }), []],
};

// Of form alone: what only the computation finds (a size that is no foot's) is beyond a schema.
const ofComputation = /^(count_|not_a_count|leg_|no_room|too_many_rounds|stretched_|shoe_|girth_)/;

async function askCore(request) {
  const { out } = await runCommand(at('build', 'native', 'sockmath'), ['plan'], {
    input: JSON.stringify(request),
  });
  return JSON.parse(out);
}

describe('the schema and the core agree on', () => {
  for (const [name, [request, wrong]] of Object.entries(cases)) {
    it(name, async () => {
      const reply = await askCore(request);
      assert.ok(fitsReply(reply), JSON.stringify(fitsReply.errors));
      const ofForm = (reply.problems ?? []).filter(({ code }) => !ofComputation.test(code));
      assert.deepEqual(
        ofForm.map(({ field }) => field),
        wrong,
      );
      // As JSON, where what is undefined is not there.
      const fits = fitsRequest(JSON.parse(JSON.stringify(request)));
      assert.equal(fits, wrong.length === 0, JSON.stringify(fitsRequest.errors));
    });
  }
});
