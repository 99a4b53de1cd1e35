import { mergeCommand } from './merge-command';

const { status, out, err } = mergeCommand(process.argv.slice(2));
process.stdout.write(out);
process.stderr.write(err);
process.exitCode = status;
