import type { Speech } from '../problems.ts';

/** What the page of a site says about its settling tanks. */
export const settlingPageIn = ({ say }: Speech) => ({
  heading: (tank: string) => say('commandLine.settling.heading', { tank }),
  /** Size of grain, what leaves while people pump, what leaves in the storm. */
  columns: [say('commandLine.settling.grain'), say('commandLine.settling.byDay'), say('commandLine.settling.inStorm')],
  notKnown: say('commandLine.settling.notKnown'),
});

/** What the page of a site says about the way to its taps. */
export const headPageIn = ({ say }: Speech) => ({
  heading: (tanks: string) => say('commandLine.head.heading', { tanks }),
  /** The pipe, its bore, its length, the speed in it, the head it takes. */
  columns: [
    say('commandLine.head.pipe'),
    say('commandLine.head.bore'),
    say('commandLine.head.length'),
    say('commandLine.head.speed'),
    say('commandLine.head.takes'),
  ],
  unit: say('commandLine.head.unit'),
});
