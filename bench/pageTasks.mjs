// Tasks of the page's thread in Chromium: the wall and the CPU time of each while something is done, with the CPU slowed by the
// browser or the CPU time of each task taken so many times.
import { setTimeout as later } from 'node:timers/promises';
import { quietBrowser } from './quietBrowser.mjs';
import { partsOf, tracedForParts } from './taskParts.mjs';

/** So many tasks of each trace are told in parts, where that is asked for. */
const most_told = 6;
/** A mark the page makes, which tells its process from the browser's own. */
const ofPage = 'eavewell-page';

/** Keeps the most rows that are in the page at once; it runs in the page. */
export function countRows() {
  window.mostRows = 0;
  // In a task of its own after each frame, so that no task of the page is longer for it.
  const look = () => {
    window.mostRows = Math.max(window.mostRows, document.querySelectorAll('[role=row]').length);
    requestAnimationFrame(() => setTimeout(look));
  };
  setTimeout(look);
}

/**
 * What measures tasks of a page.
 *
 * @param asked - how many times slower the CPU is to be; whether the browser slows it itself, or CPU time is multiplied; whether the
 *   longest tasks are told in parts
 */
// long: several ways to measure, with what they are all given
export function taskMeasure({ slower, isSlowed, isInParts }) {
  const traced = {
    transferMode: 'ReportEvents',
    traceConfig: {
      includedCategories: [
        'toplevel',
        'blink.user_timing',
        'disabled-by-default-devtools.timeline',
        '__metadata',
        ...(isInParts ? tracedForParts : []),
      ],
    },
  };
  const rate = isSlowed ? slower : 1;

  /** Tasks of the main threads of some processes: wall and CPU time [ms], longest first. */
  function tasksIn(events, isOfPage) {
    const main = events.filter(
      ({ name, args, pid }) => name === 'thread_name' && args.name === 'CrRendererMain' && isOfPage(pid),
    );
    const isMain = (one) => main.some(({ pid, tid }) => pid === one.pid && tid === one.tid);
    const tasks = events
      .filter((one) => one.name === 'RunTask' && one.dur > 0 && isMain(one))
      .map((one) => ({
        wall_ms: one.dur / 1000,
        cpu_ms: ((one.tdur ?? one.dur) / 1000) * (isSlowed ? 1 : slower),
        event: one,
      }))
      .sort((a, b) => b.cpu_ms - a.cpu_ms);
    for (const task of tasks.slice(0, isInParts ? most_told : 0)) task.parts = partsOf(events, task.event);
    for (const task of tasks) delete task.event;
    return tasks;
  }

  /** Tasks of the page's main thread while something is done; what the bench itself looks up in the page is looked up before. */
  async function tasksOf(page, work) {
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate });
    const events = [];
    session.on('Tracing.dataCollected', ({ value }) => events.push(...value));
    await session.send('Tracing.start', traced);
    await work();
    const done = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
    await session.send('Tracing.end');
    await done;
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    await session.detach();
    return tasksIn(events, () => true);
  }

  /** Presses where something stands, as a hand does: it comes there, presses, and lets go a little later. */
  async function press(page, what) {
    await what.scrollIntoViewIfNeeded();
    const { x, y, width, height } = await what.boundingBox();
    return tasksOf(page, async () => {
      await page.mouse.move(x + width / 2, y + height / 2);
      await later(80);
      await page.mouse.down();
      await later(80);
      await page.mouse.up();
      await later(900);
    });
  }

  /** Tasks of the page's main thread while it is opened for the first time, in a browser that nobody listens to. */
  async function tasksOfLoad(browserPath, windowSize, url) {
    const browser = await quietBrowser(browserPath);
    const told = async (expression) => (await browser.toPage('Runtime.evaluate', { expression })).result.value;
    try {
      await browser.toPage('Page.enable');
      await browser.toPage('Page.addScriptToEvaluateOnNewDocument', { source: `(${countRows})()` });
      await browser.toPage('Emulation.setDeviceMetricsOverride', {
        ...windowSize,
        deviceScaleFactor: 1,
        mobile: false,
      });
      await browser.toPage('Emulation.setCPUThrottlingRate', { rate });
      const events = [];
      browser.on('Tracing.dataCollected', ({ value }) => events.push(...value));
      await browser.send('Tracing.start', traced);
      await browser.toPage('Page.navigate', { url });
      for (let i = 0; !(await told('window.mostRows > 0')); i++) {
        if (i === 300) throw new Error('the list of sites did not come up within a minute');
        await later(100);
      }
      await later(2000);
      const rows = await told('window.mostRows');
      await told(`performance.mark('${ofPage}')`);
      const done = new Promise((resolve) => browser.on('Tracing.tracingComplete', resolve));
      await browser.send('Tracing.end');
      await done;
      const page = events.find(({ name }) => name === ofPage);
      if (page === undefined) throw new Error('the trace does not tell which process shows the page');
      return { tasks: tasksIn(events, (pid) => pid === page.pid), rows };
    } finally {
      await browser.close();
    }
  }

  return { tasksOf, press, tasksOfLoad };
}
