/** The board's own rules, apart from the screen. Places are shares of the photo's width and height, from the top left. */
export type Place = { x: number; y: number };

const fine = 0.002;
const coarse = 0.02;
const steps: Record<string, Place> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const within = (share: number): number => Math.min(1, Math.max(0, Math.round(share * 1e4) / 1e4));
export const placeWithin = ({ x, y }: Place): Place => ({ x: within(x), y: within(y) });

/** Where an arrow key leads from a place; with Shift ten times as far. Null for any other key. */
export function stepFrom(at: Place, key: string, shift: boolean): Place | null {
  const step = steps[key];
  if (!step) return null;
  const by = shift ? coarse : fine;
  return placeWithin({ x: at.x + step.x * by, y: at.y + step.y * by });
}

/** The place under a pointer, in a picture that lies so in the window. */
export const placeUnder = (
  pointer: { clientX: number; clientY: number },
  picture: { left: number; top: number; width: number; height: number },
): Place =>
  placeWithin({
    x: (pointer.clientX - picture.left) / picture.width,
    y: (pointer.clientY - picture.top) / picture.height,
  });

/** The name of the next spot of a part: the first that waits for its place, else the next free number. */
export function nextLabel(waiting: readonly string[], used: readonly string[]): string {
  const [first] = waiting;
  if (first !== undefined) return first;
  let n = 1;
  while (used.includes(String(n))) n += 1;
  return String(n);
}
