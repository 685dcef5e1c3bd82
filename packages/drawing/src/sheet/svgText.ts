import type { Picture } from './shapes.ts';
import { type SvgNode, svgOf } from './svgOf.ts';

/**
 * A picture as a file of SVG that stands alone: black on white, water a hatch, as it is printed.
 *
 * @param picture - shapes in px
 * @param title - what it is called by those who do not see it [text]
 * @returns the file [text]
 * @definition SVG 2, W3C
 */
export function svgText(picture: Picture, title: string): string {
  const { width, height } = picture;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">`;
  return `${head}<title>${escaped(title)}</title>${onPaper}${svgOf(picture).map(written).join('')}</svg>\n`;
}

function written({ tag, attributes, children }: SvgNode): string {
  const given = Object.entries(attributes)
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('');
  const inside = children.map((child) => (typeof child === 'string' ? escaped(child) : written(child))).join('');
  return inside === '' ? `<${tag}${given}/>` : `<${tag}${given}>${inside}</${tag}>`;
}

const named = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' } as const;
const escaped = (text: string) => text.replace(/[&<>"]/g, (letter) => named[letter as keyof typeof named]);

/** Weights of the look on paper [px of 1/96 inch]: .13, .18, .35 and .50 mm. */
const onPaper = `<defs>
<pattern id="water" width="6" height="3" patternUnits="userSpaceOnUse"><path d="M0 1.5H6" stroke="#000" stroke-width=".5"/></pattern>
<pattern id="low" width="6" height="6" patternUnits="userSpaceOnUse"><path d="M0 3H6" stroke="#000" stroke-width=".35"/></pattern>
<pattern id="earth" width="8" height="8" patternUnits="userSpaceOnUse"><path d="M0 8L8 0" stroke="#000" stroke-width=".5"/></pattern>
<pattern id="concrete" width="9" height="9" patternUnits="userSpaceOnUse"><path d="M2 2h.8M6 4h.8M3 7h.8" stroke="#000" stroke-width=".8"/></pattern>
<pattern id="masonry" width="14" height="10" patternUnits="userSpaceOnUse"><path d="M0 0H14M0 5H14M3 0V5M10 5V10" fill="none" stroke="#000" stroke-width=".5"/></pattern>
${[0.2, 0.45, 0.7, 1, 1.35]
  .map(
    (thick, index) =>
      `<pattern id="level${index + 2}" width="3" height="2.5" patternUnits="userSpaceOnUse"><path d="M0 1.25H3" stroke="#000" stroke-width="${thick}"/></pattern>`,
  )
  .join('\n')}
<pattern id="likely" width="5" height="5" patternUnits="userSpaceOnUse"><path d="M1 1.5h.9M3.5 4h.9" stroke="#000" stroke-width=".9"/></pattern>
<pattern id="doubt" width="4" height="4" patternUnits="userSpaceOnUse"><path d="M-1 1L1 -1M0 4L4 0M3 5L5 3" stroke="#000" stroke-width=".7"/></pattern>
</defs><style>
path{fill:none;stroke-linejoin:round}text{font-family:Andika,"DejaVu Sans",sans-serif;fill:#000}
.p-none{stroke:none}.p-hair{stroke-width:.5px}.p-thin{stroke-width:.7px}.p-edge{stroke-width:1.3px}.p-cut{stroke-width:1.9px}
.i-ink,.i-second,.i-water,.i-waterline,.i-ochre,.i-brick{stroke:#000}.i-mark{stroke:#444}.i-rule{stroke:#888}.i-paper{stroke:#fff}
.d-proposed{stroke-dasharray:6 4}.d-unknown{stroke-dasharray:3 3}.d-dotted{stroke-dasharray:1 3}
.g-paper,.g-figure{fill:#fff}.g-likely{fill:url(#likely)}.g-ochreWash,.g-brickWash{fill:url(#likely)}.g-ink,.g-brick,.g-waterline{fill:#000}.g-mark,.g-ochre{fill:#777}
.g-water{fill:url(#water)}.g-low{fill:url(#low)}.g-earth{fill:url(#earth)}.g-concrete{fill:url(#concrete)}.g-masonry{fill:url(#masonry)}
.g-level1{fill:#fff}${[2, 3, 4, 5, 6].map((level) => `.g-level${level}{fill:url(#level${level})}`).join('')}.g-doubt{fill:url(#doubt)}
.t-lettering{font-size:11px}.t-body{font-size:13px}.t-figure{font-size:18px}.strong{font-weight:700}
.halo{paint-order:stroke;stroke:#fff;stroke-width:4px;stroke-linejoin:round}
.m-full{fill:#000}.m-line{stroke:#000;stroke-width:2.2px}.m-heavy{stroke:#000;stroke-width:3.6px}.m-dashed{stroke:#000;stroke-width:2px;stroke-dasharray:3.2 2.4}
</style>`;
