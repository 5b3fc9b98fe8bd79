/**
 * A camera's picture of an EAN-13 bar code, as a YUV4MPEG2 file that Chromium takes in place of a camera.
 *
 * Symbol: GS1 General Specifications, section 5.2.1 (from memory): number set A and its mirror C, set B as C read backwards, the
 * first digit told by which of A and B the left half uses; guards 101, 01010, 101; nine or more light modules at either side.
 */
const setA = [
  ...["0001101", "0011001", "0010011", "0111101", "0100011"],
  ...["0110001", "0101111", "0111011", "0110111", "0001011"],
];
const parities = [
  ...["AAAAAA", "AABABB", "AABBAB", "AABBBA", "ABAABB"],
  ...["ABBAAB", "ABBBAA", "ABABAB", "ABABBA", "ABBABA"],
];
const setC = setA.map((bars) => bars.replace(/./g, (bar) => (bar === "0" ? "1" : "0")));
const setB = setC.map((bars) => [...bars].reverse().join(""));

/** The modules of a code, 1 dark. */
export function eanModules(code: string): string {
  const digits = [...code].map(Number);
  const parity = parities[digits[0]!]!;
  const left = digits.slice(1, 7).map((digit, i) => (parity[i] === "A" ? setA : setB)[digit]);
  const right = digits.slice(7).map((digit) => setC[digit]);
  return `101${left.join("")}01010${right.join("")}101`;
}

export function eanVideo(code: string): Buffer {
  const [width, height, module] = [640, 480, 4];
  const modules = eanModules(code);
  const from = Math.floor((width - modules.length * module) / 2);
  const luma = Buffer.alloc(width * height, 235);
  for (let x = 0; x < modules.length * module; x++)
    if (modules[Math.floor(x / module)] === "1") for (let y = 120; y < 360; y++) luma[y * width + from + x] = 16;
  const frame = Buffer.concat([Buffer.from("FRAME\n"), luma, Buffer.alloc((width * height) / 2, 128)]);
  return Buffer.concat([Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`), frame, frame]);
}
