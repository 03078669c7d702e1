import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  cuttingDrawings,
  dxfText,
  fieldProbe,
  netlistOf,
  parseDesign,
  type Problem,
  reportPdf,
  sheetPdf,
  solve,
  solveSummary,
  svgText,
} from '../../core/index';
import { designText } from '../design-text';
import { reason } from '../whole-file';
import { searched, spreadOut } from './explore';
import { fieldTable, pointsFrom } from './points';
import { reportOf } from './report';

/** Set by the build. */
declare const GAPWRIGHT_VERSION: string;

/** A design that cannot be worked out; everything else that goes wrong is a plain Error. */
class BadDesign extends Error {
  constructor(file: string, problems: Problem[]) {
    super(problems.map(({ where, message }) => `${where || path.basename(file)}: ${message}`).join('; '));
  }
}

interface Command {
  usage: string;
  does: string;
  /** How many words follow the command's name. */
  words: number;
  flags: readonly string[];
  /** Gives what goes to standard output. */
  run(words: string[], flags: ReadonlySet<string>): string | Promise<string>;
}

/** Writes one of the documents on A4, dated today. */
function print(pdf: typeof sheetPdf): Command['run'] {
  return ([file, out]) => {
    const design = designIn(file!);
    const date = new Date().toLocaleDateString('sv-SE'); // the local day, year first
    const paper = { paper: 'a4', fileName: path.basename(file!), date, version: GAPWRIGHT_VERSION, fontBase64: font() } as const;
    write(out!, pdf(design, solve(design), paper));
    return '';
  };
}

const commands: Record<string, Command> = {
  solve: {
    usage: 'solve FILE [--json]',
    does: 'every result, as a table or as JSON',
    words: 1,
    flags: ['--json'],
    run: ([file], flags) => {
      const results = solve(designIn(file!));
      return flags.has('--json') ? `${JSON.stringify(solveSummary(results), null, 2)}\n` : reportOf(results);
    },
  },
  sheet: {
    usage: 'sheet FILE OUT.pdf',
    does: 'the winding sheet, as PDF on A4',
    words: 2,
    flags: [],
    run: print(sheetPdf),
  },
  report: {
    usage: 'report FILE OUT.pdf',
    does: 'the calculation report: how every number comes about, as PDF on A4',
    words: 2,
    flags: [],
    run: print(reportPdf),
  },
  cut: {
    usage: 'cut FILE OUTDIR',
    does: 'discs, former and pegs at natural size, each as DXF and SVG',
    words: 2,
    flags: [],
    run: ([file, folder]) => {
      const design = designIn(file!);
      const files = cuttingDrawings(design, solve(design)).flatMap(({ name, drawing }) => [
        { out: path.join(folder!, `${name}.dxf`), text: dxfText(drawing) },
        { out: path.join(folder!, `${name}.svg`), text: svgText(drawing) },
      ]);
      makeFolder(folder!);
      for (const { out, text } of files) write(out, text);
      return files.map(({ out }) => `${out}\n`).join('');
    },
  },
  probe: {
    usage: 'probe FILE POINTS.csv',
    does: 'x,y,z in m -> x,y,z,Bx,By,Bz in m and T, as CSV',
    words: 2,
    flags: [],
    run: ([file, points]) => {
      const field = fieldProbe(designIn(file!));
      return fieldTable(pointsFrom(read(points!).toString('utf8'), path.basename(points!)), field);
    },
  },
  netlist: {
    usage: 'netlist FILE',
    does: 'generator, rectifier, cable and load for a circuit simulator',
    words: 1,
    flags: [],
    run: ([file]) => netlistOf(designIn(file!)),
  },
  search: {
    usage: 'search FILE [--json]',
    does: 'the trade-off front of what can be built from the shelf',
    words: 1,
    flags: ['--json'],
    run: ([file], flags) => searched(designIn(file!), flags.has('--json')),
  },
  spread: {
    usage: 'spread FILE [--json]',
    does: '5–95 % bands from the build tolerances, 1000 machines drawn',
    words: 1,
    flags: ['--json'],
    run: ([file], flags) => spreadOut(designIn(file!), flags.has('--json')),
  },
};

/** Runs one command line and gives what it prints; throws when it cannot. */
export function run(args: string[]): string | Promise<string> {
  const [name, ...rest] = args;
  if (name === '--help' || name === 'help') return help();
  if (name === undefined) throw new Error(`name a command: ${Object.keys(commands).join(', ')} (--help tells more)`);
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (!command) throw new Error(`there is no command ${JSON.stringify(name)}; there are ${Object.keys(commands).join(', ')}`);
  const flags = new Set(rest.filter((word) => word.startsWith('--')));
  const words = rest.filter((word) => !word.startsWith('--'));
  const strange = [...flags].find((flag) => !command.flags.includes(flag));
  if (strange) throw new Error(`${name} has no option ${strange}; usage: ${command.usage}`);
  if (words.length !== command.words) throw new Error(`usage: ${command.usage}`);
  return command.run(words, flags);
}

/** What is told, and with which exit code: 2 for a bad design, 1 for anything else. */
export function failure(error: unknown): { message: string; exitCode: 1 | 2 } {
  const message = error instanceof Error ? error.message : String(error);
  return { message: message.replace(/\s*\n\s*/g, ' '), exitCode: error instanceof BadDesign ? 2 : 1 };
}

function help(): string {
  const rows = Object.values(commands).map(({ usage, does }) => `  ${usage.padEnd(24)}${does}`);
  return [
    'gapwright COMMAND FILE …',
    '',
    ...rows,
    '',
    'Exit code 2: the design is bad, standard error names the entry. 1: anything else.',
    '',
  ].join('\n');
}

function designIn(file: string) {
  const parsed = parseDesign(designTextIn(file));
  if (!parsed.ok) throw new BadDesign(file, parsed.problems);
  return parsed.design;
}

function designTextIn(file: string): string {
  const bytes = read(file);
  try {
    return designText(bytes);
  } catch (error) {
    throw new BadDesign(file, [{ where: '', message: reason(error) }]);
  }
}

function read(file: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new Error(`${file}: ${reason(error)}`);
  }
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new Error(`${folder}: ${reason(error)}`);
  }
}

function write(file: string, content: Uint8Array | string): void {
  try {
    writeFileSync(file, content);
  } catch (error) {
    throw new Error(`${file}: ${reason(error)}`);
  }
}

/** The sheet's type, which stands in the source tree beside dist/. */
function font(): string {
  return readFileSync(path.join(__dirname, '../../assets/fonts/DejaVuSans.ttf')).toString('base64');
}
