#!/usr/bin/env node
// The command line: makes dist/cli when it is missing or old, then runs it.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeFresh, root } from './fresh.mjs';

// npm runs this in the project's folder; file names are meant from where npm was called.
if (process.env.npm_lifecycle_event === 'gapwright' && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
if (!makeFresh(['cli'], { quiet: true })) process.exit(1);
await import(pathToFileURL(path.join(root, 'dist/cli/main.cjs')).href);
