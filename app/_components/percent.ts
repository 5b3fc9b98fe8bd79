/** A fraction of the width as an SVG attribute: `percent(1 / 3)` is "33.33%", which is a tenth of a pixel at 1,000. */
export const percent = (fraction: number): string => `${Number((fraction * 100).toFixed(2))}%`;
