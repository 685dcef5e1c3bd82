import type { BrowserContext, Page } from 'playwright-core';

/** What went wrong in pages that no eye would see: errors in the console, broken rules of the policy, requests to others. */
export class Watch {
  private readonly faults: string[] = [];
  private readonly expected: RegExp[] = [];

  constructor(
    context: BrowserContext,
    /** `http://127.0.0.1:PORT` of the program: everything the pages need comes from there. */
    readonly origin: string,
  ) {
    context.on('page', (page) => this.listenTo(page));
    context.on('request', (request) => {
      const isOurs = request.url().startsWith(`${origin}/`) || /^(?:data|blob|about):/.test(request.url());
      if (!isOurs) this.faults.push(`asked another host: ${request.url()}`);
    });
    context.on('weberror', (error) => this.faults.push(`thrown: ${error.error().message}`));
  }

  /** Says that a fault belongs to the journey: a refused request is told in the console. */
  expect(pattern: RegExp): void {
    this.expected.push(pattern);
  }

  /** What was not expected, each once. */
  get unexpected(): readonly string[] {
    return [...new Set(this.faults)].filter((fault) => !this.expected.some((pattern) => pattern.test(fault)));
  }

  private listenTo(page: Page): void {
    page.on('console', (message) => {
      if (message.type() !== 'error' && message.type() !== 'warning') return;
      const at = message.location().url;
      this.faults.push(`console ${message.type()}: ${message.text()}${at === '' ? '' : ` (${at})`}`);
    });
    page.on('crash', () => this.faults.push('the page crashed'));
  }
}
