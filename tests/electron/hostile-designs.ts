import { readdirSync, readFileSync } from 'node:fs';

/** Design files as somebody might make them to do harm, or a disk by accident. Equal seeds give equal files. */
type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Random = () => number;

const demos = readdirSync('assets')
  .filter((name) => name.endsWith('.gapwright'))
  .map((name) => readFileSync(`assets/${name}`, 'utf8'));
const schema = JSON.parse(readFileSync('assets/gapwright.schema.json', 'utf8')) as Schema;

interface Schema {
  type?: string;
  properties?: Record<string, Schema>;
  required?: string[];
  oneOf?: Schema[];
  enum?: Json[];
  const?: Json;
  items?: Schema;
  minimum?: number;
  maximum?: number;
  multipleOf?: number;
}

const upTo = (random: Random, n: number) => Math.floor(random() * n);
const one = <T>(random: Random, list: readonly T[]): T => list[upTo(random, list.length)];

/** What has broken readers of files before: numbers, keys and words with a meaning of their own. */
const numbers = ['1e999', '-1e999', '1e308', '5e-324', '-0', '0', '1e-300', '123456789012345678901234567890', '0.1e-7', '2147483648', '-1'];
const notJson = ['NaN', 'Infinity', '-Infinity', '0x10', '01', '.5', '1.', '+1', 'undefined', "'a'", '/* */1', '1,', '"\t"', '"\\x41"'];
const keys = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'length',
  'then',
  '',
  '0',
  'kind',
  'poles',
  '\u0000',
  '💥',
];
const words = [
  '', 'null', '../../etc/passwd', '<img src=x onerror=alert(1)>', '%s%n', '${1}', 'a'.repeat(30_000), '\ud800', '\u202e', '\u0000',
  'block', 'none',
]; // prettier-ignore

function deep(random: Random): string {
  const depth = one(random, [10, 1000, 20_000, 200_000]);
  const [open, close] = one(random, [['[', ']'], ['{"a":', '}'], ['[{"__proto__":', '}]']] as const); // prettier-ignore
  return open.repeat(depth) + '1' + (random() < 0.8 ? close.repeat(depth) : '');
}

/** Text of a value that does not belong. */
function wrong(random: Random): string {
  switch (upTo(random, 8)) {
    case 0: return one(random, numbers);
    case 1: return one(random, notJson);
    case 2: return JSON.stringify(one(random, words));
    case 3: return one(random, ['null', 'true', '[]', '{}', '[[]]', '[null]', '{"kind":1}']);
    case 4: return `{${JSON.stringify(one(random, keys))}:${one(random, ['1', 'null', '{"poles":4}', '[]'])}}`;
    case 5: return random() < 0.02 ? deep(random) : '[[[[[1]]]]]';
    case 6: return `[${Array(upTo(random, random() < 0.02 ? 20_000 : 20)).fill(one(random, numbers)).join(',')}]`;
    default: return String((random() - 0.5) * 10 ** (upTo(random, 40) - 20));
  }
} // prettier-ignore

/** A number that the schema allows, with its ends far more often than chance would have them. */
function allowed({ minimum = 0, maximum = 1, multipleOf = 0 }: Schema, random: Random): number {
  const at = one(random, ['least', 'most', 'even', 'log'] as const);
  const least = Math.max(minimum, 1e-9);
  const value =
    at === 'least' ? minimum
    : at === 'most' ? maximum
    : at === 'even' || maximum <= 0 ? minimum + random() * (maximum - minimum)
    : least * (maximum / least) ** random(); // prettier-ignore
  return multipleOf ? Math.round(value / multipleOf) * multipleOf : value;
}

function sample(node: Schema, random: Random): Json {
  if (node.const !== undefined) return node.const;
  if (node.oneOf) return sample(one(random, node.oneOf), random);
  if (node.enum) return one(random, node.enum);
  if (node.items) return Array.from({ length: upTo(random, 6) }, () => sample(node.items ?? {}, random));
  if (node.type === 'number') return allowed(node, random);
  if (node.type === 'string') return one(random, words).slice(0, 40);
  if (node.type === 'boolean') return random() < 0.5;
  const entries = Object.entries(node.properties ?? {}).filter(([key]) => node.required?.includes(key) || random() < 0.3);
  return Object.fromEntries(entries.map(([key, child]) => [key, sample(child, random)]));
}

/** Puts a new value into one entry chosen at random: one that the schema allows, or a mark for one that it does not. */
function change(value: Json, node: Schema, random: Random, put: (node: Schema) => Json): Json {
  const record = typeof value === 'object' && value !== null && !Array.isArray(value) ? value : undefined;
  const options = node.oneOf?.find((option) => option.properties?.['kind']?.const === record?.['kind']) ?? node;
  const children = Object.keys(options.properties ?? {});
  if (!record || children.length === 0 || random() < 0.08) return put(node);
  const key = one(random, children);
  return { ...record, [key]: change(record[key] ?? null, options.properties?.[key] ?? {}, random, put) };
}

const demo = (random: Random) => one(random, demos);
const parsed = (text: string) => JSON.parse(text) as Json;

const kinds: Record<string, (random: Random) => string | Uint8Array> = {
  /** Sound entries, of which few sit together as a builder would choose them. */
  extreme(random) {
    let design = parsed(demo(random));
    for (let edits = 1 + upTo(random, 4); edits > 0; edits--) design = change(design, schema, random, (node) => sample(node, random));
    return JSON.stringify(design);
  },
  wrongValue(random) {
    const mark = '@@here@@';
    return JSON.stringify(change(parsed(demo(random)), schema, random, () => mark)).replace(`"${mark}"`, () => wrong(random));
  },
  wrongKey(random) {
    const text = demo(random);
    const places = [...text.matchAll(/[{]/g)].map(({ index }) => index + 1);
    const at = one(random, places);
    return `${text.slice(0, at)}${JSON.stringify(one(random, keys))}:${wrong(random)},${text.slice(at)}`;
  },
  damaged(random) {
    let text = demo(random);
    for (let times = 1 + upTo(random, 3); times > 0; times--) {
      const [from, to] = [upTo(random, text.length), upTo(random, text.length)].sort((a, b) => a - b) as [number, number];
      text = one(random, [
        () => text.slice(0, from),
        () => text.slice(0, from) + text.slice(to),
        () => text.slice(0, to) + text.slice(from),
        () => text.slice(0, from) + demo(random).slice(from),
        () => text.slice(0, from) + one(random, ['\u0000', '"', '}', ',', '\ufeff', '\\', '\ud800', '9'.repeat(400)]) + text.slice(from),
        () => text.slice(0, from) + String.fromCharCode(upTo(random, 65536)) + text.slice(from + 1),
      ])();
    }
    return text;
  },
  encoded(random) {
    const text = demo(random).replace('"title": "', '"title": "é µ ');
    return one(random, [
      () => Buffer.from(text, 'utf16le'),
      () => Buffer.from(`\ufeff${text}`, 'utf16le'),
      () => Buffer.from(text, 'utf16le').swap16(),
      () => Buffer.from(text, 'latin1'),
      () => Buffer.from(`\ufeff${text}`),
      () => Buffer.from(`\ufeff\ufeff${text}`),
      () => Buffer.from(text).subarray(0, upTo(random, text.length)),
      () => Buffer.concat([Buffer.from(text), Buffer.from([0xc0, 0xaf, 0xed, 0xa0, 0x80].slice(0, 1 + upTo(random, 5)))]),
      () => Buffer.from(Array.from({ length: upTo(random, 3000) }, () => upTo(random, 256))),
    ])();
  },
  whole(random) {
    if (random() < 0.01)
      return one(random, [
        () => '['.repeat(5_000_000),
        () => `${demo(random)}${' '.repeat(9_000_000)}`,
        () => `{"kind":"gapwright-design","version":1,"bench":[${'{},'.repeat(300_000)}{}]}`,
        () => `{"kind":"gapwright-design","version":1,${Array.from({ length: 100_000 }, (_, i) => `"k${i}":1`).join()}}`,
        () => `{"kind":"gapwright-design","version":1,"title":"${'x'.repeat(9_000_000)}"}`,
        () => `{"kind":"gapwright-design","version":${'9'.repeat(5_000_000)}}`,
        () => deep(random),
      ])();
    return random() < 0.5 ? wrong(random) : `{"kind":"gapwright-design","version":1,"magnets":${wrong(random)}}`;
  },
}; // prettier-ignore

/** The n-th file, and the way it was made. */
export function hostileDesign(random: Random): { kind: string; bytes: Uint8Array } {
  const share = random();
  const kind =
    share < 0.12 ? 'extreme' : share < 0.36 ? 'wrongValue' : share < 0.54 ? 'wrongKey' : share < 0.82 ? 'damaged' : share < 0.93 ? 'encoded' : 'whole'; // prettier-ignore
  const made = kinds[kind]?.(random) ?? '';
  return { kind, bytes: typeof made === 'string' ? Buffer.from(made) : made };
}
