import { failure, run } from './commands';

/** A reader that closes early, as `head` does, is no fault. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exitCode = error.code === 'EPIPE' ? 0 : 1;
});

async function main(): Promise<void> {
  try {
    process.stdout.write(await run(process.argv.slice(2)));
  } catch (error) {
    const { message, exitCode } = failure(error);
    process.stderr.write(`gapwright: ${message}\n`);
    process.exitCode = exitCode;
  }
}

void main();
