import { version } from '../package.json' with { type: 'json' }

if (process.argv[2] === '--version') process.stdout.write(`${version}\n`)
