import { OPEN_OHMS } from '../constants';
import { readingSection, type Reading } from '../design/readings';

/** What is wrong with pasted text, and where. */
export interface CsvProblem {
  /** Line of the text, from 1. */
  line: number;
  /** Head of the column, where one is to blame. */
  column?: string;
  message: string;
}

export interface CsvReadings {
  readings: Reading[];
  problems: CsvProblem[];
}

type Key = keyof Reading;

interface Column {
  key: Key;
  /** Head when written. */
  head: string;
  /** Beginnings of heads that mean it, in small letters without signs. */
  names: string[];
  /** Shown · factor = SI; other units by the word that stands in the head. */
  factor?: number;
  units?: Record<string, { factor: number; offset?: number }>;
  words?: Record<string, string>;
}

const rpm = (2 * Math.PI) / 60;

const winds = { 'km/h': { factor: 1 / 3.6 }, mph: { factor: 0.44704 }, kn: { factor: 1852 / 3600 } };

const columns: Column[] = [
  { key: 'label', head: 'note', names: ['note', 'label', 'remark'] },
  {
    key: 'on',
    head: 'on',
    names: ['on', 'meter on', 'place', 'where'],
    words: {
      coil: 'coil',
      coils: 'run',
      run: 'run',
      phase: 'phase',
      line: 'line',
      terminals: 'line',
      'two terminals': 'line',
      dc: 'dc',
      'dc side': 'dc',
    },
  },
  { key: 'number', head: 'number', names: ['number', 'no', 'coil', 'phase'] },
  { key: 'to', head: 'to', names: ['to', 'last coil'] },
  {
    key: 'speed',
    head: 'rpm',
    names: ['rpm', 'speed', 'turns a minute', 'rev/min'],
    factor: rpm,
    units: { 'rad/s': { factor: 1 }, hz: { factor: 2 * Math.PI } },
  },
  { key: 'speedBy', head: 'speed by', names: ['speed by', 'by'], words: { drill: 'drill', tachometer: 'tachometer', tacho: 'tachometer' } },
  {
    key: 'temperature',
    head: 'temperature C',
    names: ['temperature', 'temp', 'copper'],
    units: { f: { factor: 5 / 9, offset: -160 / 9 } },
  },
  {
    key: 'ohms',
    head: 'ohms',
    names: ['ohms', 'ohm', 'mohm', 'mohms', 'resistance'],
    units: { mohm: { factor: 1e-3 }, mohms: { factor: 1e-3 } },
  },
  { key: 'leads', head: 'leads ohms', names: ['leads'] },
  { key: 'ohmsStep', head: 'ohms step', names: ['ohms step', 'last digit'] },
  { key: 'volts', head: 'volts', names: ['volts', 'volt', 'v', 'mv'], units: { mv: { factor: 1e-3 } } },
  {
    key: 'meter',
    head: 'meter',
    names: ['meter', 'instrument'],
    words: { average: 'average', plain: 'average', rms: 'rms', 'true rms': 'rms', trms: 'rms', peak: 'peak', scope: 'peak' },
  },
  { key: 'amps', head: 'amps', names: ['amps', 'ampere', 'amperes', 'a', 'ma'], units: { ma: { factor: 1e-3 } } },
  {
    key: 'load',
    head: 'load',
    names: ['load'],
    words: { planned: 'planned', none: 'none', nothing: 'none', resistor: 'resistor', battery: 'battery' },
  },
  { key: 'loadResistance', head: 'load ohms', names: ['load ohms'] },
  { key: 'loadVoltage', head: 'load volts', names: ['load volts'] },
  { key: 'hertz', head: 'hertz', names: ['hertz', 'hz', 'frequency'] },
  { key: 'wind', head: 'wind m/s', names: ['wind'], units: winds },
  { key: 'windSpread', head: 'wind spread m/s', names: ['wind spread', 'gusts'], units: winds },
  { key: 'frameRate', head: 'frames/s', names: ['frames/s', 'fps', 'frames', 'pictures a second'] },
  { key: 'alike', head: 'like blades', names: ['like blades', 'alike', 'blades'] },
  { key: 'accuracy', head: 'accuracy %', names: ['accuracy'], factor: 0.01 },
];

const unended = /^(ol|o\.l\.?|open|inf|infinite|∞|1\.)$/i;

/**
 * Readings from text as a spreadsheet or a notebook gives it: a line of heads, then a line for each reading.
 *
 * @param text  Fields separated by tabs, semicolons, commas or bars; a decimal comma where the comma does not separate.
 * @returns     The readings of every good line, and what is wrong with the others. Never throws.
 */
export function readingsFromCsv(text: string): CsvReadings {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .map((line, i) => ({ line: i + 1, text: line }))
    .filter((l) => l.text.trim() !== '');
  const [first, ...rest] = lines;
  if (!first)
    return { readings: [], problems: [{ line: 1, message: 'there is nothing here: paste a line of heads and a line for each reading' }] };
  const separator = separatorOf(first.text);
  const heads = fieldsOf(first.text, separator);
  const chosen = heads.map(columnFor);
  const problems: CsvProblem[] = heads.flatMap((head, i) =>
    chosen[i] || head === ''
      ? []
      : [{ line: first.line, column: head, message: `is not a head known here; known are ${columns.map((c) => c.head).join(', ')}` }],
  );
  if (!chosen.some((column) => column?.key === 'on'))
    problems.push({ line: first.line, message: 'a column “on” is needed: coil, run, phase, line or dc' });
  if (problems.length) return { readings: [], problems };
  const readings = rest.flatMap(({ line, text: row }) => {
    const { reading, wrong } = readingOf(fieldsOf(row, separator), heads, chosen, separator);
    problems.push(...wrong.map((problem) => ({ line, ...problem })));
    return reading ? [reading] : [];
  });
  return { readings, problems };
}

/** The readings as text that `readingsFromCsv` reads back. */
export function csvFromReadings(readings: readonly Reading[]): string {
  const used = columns.filter(
    ({ key }) => ['on', 'number'].includes(key) || readings.some((reading) => reading[key] !== undefined && reading[key] !== ''),
  );
  const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  const field = (reading: Reading, { key, factor = 1 }: Column) => {
    const value = reading[key];
    if (typeof value !== 'number') return quoted(value ?? '');
    return key === 'ohms' && value >= OPEN_OHMS ? 'open' : String(Number((value / factor).toPrecision(9)));
  };
  return [used.map(({ head }) => head), ...readings.map((reading) => used.map((column) => field(reading, column)))]
    .map((row) => row.join(','))
    .join('\r\n');
}

function readingOf(fields: readonly string[], heads: readonly string[], chosen: readonly (Column | undefined)[], separator: string) {
  const value: Record<string, unknown> = { label: '', number: 1 };
  const wrong: Omit<CsvProblem, 'line'>[] = [];
  if (fields.length > heads.length) wrong.push({ message: `has ${fields.length} fields under ${heads.length} heads` });
  chosen.forEach((column, i) => {
    const text = fields[i] ?? '';
    if (!column || text === '') return;
    const { key, words } = column;
    const { factor, offset = 0 } = unitOf(column, heads[i]);
    if (words) {
      const word = words[text.toLowerCase()];
      if (word) value[key] = word;
      else wrong.push({ column: heads[i], message: `must be one of ${[...new Set(Object.values(words))].join(', ')}; received “${text}”` });
    } else if (key === 'label') value[key] = text.slice(0, 80);
    else if (key === 'ohms' && unended.test(text)) value[key] = OPEN_OHMS;
    else {
      const number = numberOf(text, separator);
      if (number === undefined) wrong.push({ column: heads[i], message: `must be a number; received “${text}”` });
      else value[key] = number * factor + offset;
    }
  });
  if (wrong.length) return { wrong };
  const parsed = readingSection.safeParse(value);
  if (parsed.success) return { reading: parsed.data, wrong };
  return {
    wrong: parsed.error.issues.map(({ path, message }) => {
      const at = chosen.findIndex((column) => column?.key === path[0]);
      const column = chosen[at];
      return column
        ? { column: heads[at], message: inShownUnit(column, heads[at], fields[at], message) }
        : { message: `${String(path[0])} ${message}` };
    }),
  };
}

/** The unit that a head asks for, else the column's own. */
function unitOf({ units, factor = 1 }: Column, head: string): { factor: number; offset?: number } {
  const plain = plainHead(head).split(' ');
  return Object.entries(units ?? {}).find(([unit]) => plain.includes(unit))?.[1] ?? { factor };
}

/** A complaint about a range, in the unit of the column. */
function inShownUnit(column: Column, head: string, text: string, message: string): string {
  const range = /^must be between (\S+) and ([^;]+);/.exec(message);
  if (!range) return message;
  const { factor, offset = 0 } = unitOf(column, head);
  const [low, high] = range.slice(1).map((bound) => Number(((Number(bound) - offset) / factor).toPrecision(5)));
  return `must be between ${low} and ${high}; received ${text}`;
}

/** Letters, digits and strokes only: "Temperature (°C)" is temperature c. */
const plainHead = (head: string) =>
  head
    .toLowerCase()
    .replaceAll('ω', 'ohms')
    .replace(/[^a-z0-9/ ]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** The column whose name is the longest beginning of a head. */
function columnFor(head: string): Column | undefined {
  const plain = plainHead(head);
  const fits = columns.flatMap((column) =>
    column.names.filter((name) => plain === name || plain.startsWith(`${name} `)).map((name) => ({ column, name })),
  );
  return fits.sort((a, b) => b.name.length - a.name.length)[0]?.column;
}

function separatorOf(line: string): string {
  const count = (mark: string) => fieldsOf(line, mark).length;
  return ['\t', ';', '|', ','].reduce((best, mark) => (count(mark) > count(best) ? mark : best));
}

/** Fields of a line, quotes taken off. */
function fieldsOf(line: string, separator: string): string[] {
  const fields: string[] = [];
  let field = '';
  let isQuoted = false;
  for (let i = 0; i < line.length; i++) {
    const mark = line[i];
    if (mark === '"' && isQuoted && line[i + 1] === '"') field += line[++i];
    else if (mark === '"') isQuoted = !isQuoted;
    else if (mark === separator && !isQuoted) {
      fields.push(field.trim());
      field = '';
    } else field += mark;
  }
  return [...fields, field.trim()];
}

function numberOf(text: string, separator: string): number | undefined {
  const plain = separator === ',' ? text : text.replace(',', '.');
  const match = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*[a-zΩ°%/²]*$/i.exec(plain.replace('−', '-'));
  return match ? Number(match[1]) : undefined;
}
