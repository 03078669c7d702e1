#!/usr/bin/env node
// The command line: makes dist/cli when it is missing or old, then runs it.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { makeFresh, root } from './fresh.mjs';

if (!makeFresh(['cli'], { quiet: true })) process.exit(1);
await import(pathToFileURL(path.join(root, 'dist/cli/main.cjs')).href);
