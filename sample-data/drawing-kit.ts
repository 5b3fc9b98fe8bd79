/**
 * A small kit for drawing the invented objects: ink outlines that tremble, fills that miss the outline a little, hatched
 * shade, on a ruled page with a centimetre scale. Everything returns SVG text; nothing is random but the filters' seeds.
 */
export const tint = {
  ink: "#33271f",
  paper: "#f6eddb",
  rule: "#cfd3c4",
  margin: "#c4583b",
  cream: "#fdf6e6",
  red: "#b9432b",
  brick: "#8f3524",
  ochre: "#dba63f",
  straw: "#ecd08a",
  clay: "#c9825c",
  blue: "#41698f",
  sky: "#a9c3d1",
  sage: "#93a67f",
  leaf: "#5f7d4c",
  plum: "#7c4763",
  grey: "#a9a69c",
  pale: "#d6d3c8",
  brass: "#cf9f45",
  copper: "#c0703f",
  glass: "#cfe2d6",
  wood: "#d8ab74",
  white: "#fffaf0",
} as const;

export type Drawing = { file: string; title: string; pixelsPerCm: number; body: string };
type Look = { width?: number; stroke?: string; opacity?: number };

/** A filled shape with its outline; the fill sits a little off, as in a cheap print. */
export const shape = (d: string, fill: string, look: Look = {}): string =>
  `<path d="${d}" fill="${fill}" fill-opacity="${look.opacity ?? 1}" transform="translate(4 3)"/>` +
  `<path d="${d}" fill="none" stroke="${look.stroke ?? tint.ink}" stroke-width="${look.width ?? 4}"/>`;
/** Colour without an outline. */
export const patch = (d: string, fill: string, opacity = 1): string =>
  `<path d="${d}" fill="${fill}" fill-opacity="${opacity}"/>`;
/** Ink without a fill. */
export const line = (d: string, width = 3, stroke: string = tint.ink): string =>
  `<path d="${d}" fill="none" stroke="${stroke}" stroke-width="${width}"/>`;
/** Hatched shade over a region. */
export const shade = (d: string): string => `<path d="${d}" fill="url(#hatch)"/>`;

export const oval = (x: number, y: number, rx: number, ry: number): string =>
  `M${x - rx},${y} a${rx},${ry} 0 1,0 ${2 * rx},0 a${rx},${ry} 0 1,0 ${-2 * rx},0 Z`;
export const disc = (x: number, y: number, r: number): string => oval(x, y, r, r);
export const box = (x: number, y: number, w: number, h: number, r = 6): string =>
  `M${x + r},${y} h${w - 2 * r} q${r},0 ${r},${r} v${h - 2 * r} q0,${r} ${-r},${r} h${2 * r - w} q${-r},0 ${-r},${-r} v${2 * r - h} q0,${-r} ${r},${-r} Z`;
export const polygon = (points: [number, number][]): string =>
  `M${points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(" L")} Z`;
/** Points on a circle, the first at the top. */
export const around = (x: number, y: number, r: number, n: number, turn = 0): [number, number][] =>
  Array.from({ length: n }, (_, i) => {
    const a = ((i + turn) / n) * 2 * Math.PI - Math.PI / 2;
    return [x + r * Math.cos(a), y + r * Math.sin(a)];
  });
export const moved = (x: number, y: number, body: string, turn = 0, scale = 1): string =>
  `<g transform="translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turn.toFixed(1)}) scale(${scale})">${body}</g>`;
export const words = (x: number, y: number, size: number, text: string, fill: string = tint.ink): string =>
  `<text x="${x}" y="${y}" font-size="${size}" fill="${fill}" font-style="italic">${text}</text>`;
/** The shadow an object throws on the page. */
export const ground = (x: number, y: number, rx: number, ry = 22): string =>
  `<path d="${oval(x, y, rx, ry)}" fill="${tint.ink}" fill-opacity="0.13"/>${shade(oval(x + 14, y + 4, rx, ry))}`;

function ruler(pixelsPerCm: number): string {
  const left = 150;
  const room = 900;
  const cm = Math.max(1, Math.min(20, Math.floor(room / pixelsPerCm)));
  const step = pixelsPerCm < 28 ? 5 : 1;
  const marks = Array.from({ length: cm + 1 }, (_, i) => {
    const x = left + i * pixelsPerCm;
    const long = i % 5 === 0;
    const number =
      i % step === 0 ? `<text x="${x}" y="836" font-size="22" text-anchor="middle" fill="${tint.ink}">${i}</text>` : "";
    return `${line(`M${x},782 v${long ? 28 : 16}`, 2.5)}${number}`;
  });
  const end = left + cm * pixelsPerCm;
  return (
    patch(box(left - 16, 780, end - left + 32, 66, 4), tint.straw, 0.75) +
    line(`M${left - 16},781 H${end + 16}`, 2.5) +
    marks.join("") +
    `<text x="${end + 30}" y="836" font-size="22" fill="${tint.ink}">cm</text>`
  );
}

/** The whole page: ruled paper, margin, the object, its scale, and a line that says it is a drawing. */
export function page({ title, pixelsPerCm, body }: Drawing): string {
  const rules = Array.from({ length: 13 }, (_, i) => line(`M0,${96 + i * 56} H1200`, 1.5, tint.rule)).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="900" viewBox="0 0 1200 900">
<desc>Drawing of an invented object; no photograph.</desc>
<defs>
<filter id="hand" filterUnits="userSpaceOnUse" x="0" y="0" width="1200" height="900">
<feTurbulence type="fractalNoise" baseFrequency="0.011" numOctaves="2" seed="7" result="n"/>
<feDisplacementMap in="SourceGraphic" in2="n" scale="11" xChannelSelector="R" yChannelSelector="G"/>
</filter>
<filter id="wash" filterUnits="userSpaceOnUse" x="0" y="0" width="1200" height="900">
<feTurbulence type="fractalNoise" baseFrequency="0.006 0.009" numOctaves="3" seed="21"/>
<feColorMatrix type="matrix" values="0 0 0 0 0.45  0 0 0 0 0.30  0 0 0 0 0.16  0.55 0 0 0 -0.17"/>
</filter>
<pattern id="hatch" width="11" height="11" patternUnits="userSpaceOnUse" patternTransform="rotate(38)">
<path d="M0,5.5 H11" stroke="${tint.ink}" stroke-opacity="0.42" stroke-width="1.7"/>
</pattern>
</defs>
<rect width="1200" height="900" fill="${tint.paper}"/>
${rules}
${line("M92,0 V900 M99,0 V900", 1.8, tint.margin)}
<g filter="url(#hand)" stroke-linecap="round" stroke-linejoin="round" font-family="Liberation Serif, Georgia, serif">
${body}
${ruler(pixelsPerCm)}
</g>
<rect width="1200" height="900" filter="url(#wash)" opacity="0.5"/>
<g font-family="Liberation Serif, Georgia, serif" font-style="italic" fill="${tint.ink}">
<text x="128" y="66" font-size="34">${title}</text>
<text x="1172" y="66" font-size="24" text-anchor="end" fill="${tint.margin}">drawing of an invented object</text>
</g>
</svg>`;
}
