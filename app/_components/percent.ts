/** A fraction of the width as an SVG attribute: `percent(1 / 3)` is "33.333%". */
export const percent = (fraction: number): string => `${Number((fraction * 100).toFixed(3))}%`;
