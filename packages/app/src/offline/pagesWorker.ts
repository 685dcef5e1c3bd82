/** Keeps the pages in this browser, so that they open without the program; and tells when newer ones wait. */
class Pages {
  private waiting: ServiceWorker | null = null;
  private hasChanged = false;
  private readonly listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Do newer pages wait, or were they taken into use by another page of this browser? */
  readonly isNewer = (): boolean => this.waiting !== null || this.hasChanged;

  /** Shows the newer pages: this page is loaded anew. */
  readonly show = (): void => {
    if (this.waiting === null) {
      location.reload();
      return;
    }
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    this.waiting.postMessage({ type: 'SKIP_WAITING' });
  };

  /** Begins to keep the pages, where the browser can. */
  async keep(): Promise<void> {
    if (!('serviceWorker' in navigator)) return;
    const hadOne = navigator.serviceWorker.controller !== null;
    navigator.serviceWorker.addEventListener('controllerchange', () => {
      if (hadOne) this.tell(this.waiting, true);
    });
    try {
      const registration = await navigator.serviceWorker.register('/sw.js', { scope: '/', updateViaCache: 'none' });
      this.watch(registration);
      // Looked for at each start only; the program serves newer pages after it was started anew.
      if (hadOne) void registration.update().catch(() => undefined);
    } catch {
      // A browser that keeps no pages: they open while the program answers.
    }
  }

  private watch(registration: ServiceWorkerRegistration): void {
    const look = () => {
      if (registration.waiting && navigator.serviceWorker.controller) this.tell(registration.waiting, this.hasChanged);
    };
    look();
    registration.addEventListener('updatefound', () => {
      registration.installing?.addEventListener('statechange', look);
    });
  }

  private tell(waiting: ServiceWorker | null, hasChanged: boolean): void {
    [this.waiting, this.hasChanged] = [waiting, hasChanged];
    for (const listener of this.listeners) listener();
  }
}

export const pages = new Pages();
