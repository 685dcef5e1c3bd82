import { spawn } from 'node:child_process';

/** What opens an address in a person's browser, by system. */
const openers: Readonly<Record<string, readonly [command: string, ...args: string[]]>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
};

/** Opens an address in the browser; where there is none, nothing happens: the address stands on the screen as well. */
export function openAddress(address: string): void {
  const [command, ...args] = openers[process.platform] ?? ['xdg-open'];
  const started = spawn(command, [...args, address], { stdio: 'ignore', detached: true });
  started.on('error', () => undefined);
  started.unref();
}
