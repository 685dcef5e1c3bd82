import { writeSync } from 'node:fs';

// Loaded before a command: tells on file descriptor 3 how much memory it took at most [KiB].
process.on('exit', () => writeSync(3, String(process.resourceUsage().maxRSS)));
