/**
 * Prints one part of the page and nothing else of it.
 *
 * @param part - what is printed
 */
export function printAlone(part: HTMLElement): void {
  const { dataset } = document.documentElement;
  part.classList.add('printed');
  dataset['printAlone'] = '';
  window.addEventListener(
    'afterprint',
    () => {
      part.classList.remove('printed');
      delete dataset['printAlone'];
    },
    { once: true },
  );
  window.print();
}
