/** Invented: a long instrument export of 40 columns, a third of its results not detected. */
export function longFile(rows: number): string {
  const symbols = "Pb Cd As Hg Cr Sb Ba Se Zn Cu Ni Sn".split(" ");
  const columns = symbols.flatMap((symbol) => [`${symbol} (ppm)`, `${symbol} ±2σ`, `${symbol} LOD`]);
  const lines = [["Reading No", "Date", "Time", "Sample", ...columns].join(",")];
  for (let row = 0; row < rows; row++) {
    const moment = new Date(Date.UTC(2025, 0, 1) + row * 60_000).toISOString();
    const results = symbols.flatMap((_, n) =>
      (row + n * 7) % 3 === 0 ? ["<LOD", "", "4.25"] : [`${((row * 31 + n * 17) % 9999) / 10 + 1.1}`, "2.75", "4.25"],
    );
    lines.push([row + 1, moment.slice(0, 10), moment.slice(11, 19), `"Mug ${row % 500}"`, ...results].join(","));
  }
  return `${lines.join("\n")}\n`;
}
