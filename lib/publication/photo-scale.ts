/** A known length marked on a photo: its ends as shares of width and height, and the length between them. */
export type PhotoScale = { x1: number; y1: number; x2: number; y2: number; lengthMm: number };

/**
 * The diameter of an analyser's window as a share of the photo's width, by the length that is marked on it; null where
 * the marked ends are one point. True for what lies as far from the camera as the marked length, and square to it.
 *
 * mm a pixel = length / √(Δx² + Δy²), with Δx and Δy in pixels.
 *
 * @example windowShare({ x1: 0.1, y1: 0.9, x2: 0.6, y2: 0.9, lengthMm: 100 }, { width: 1000, height: 800 }, 8)
 * // 0.04
 */
export function windowShare(
  scale: PhotoScale,
  photo: { width: number; height: number },
  windowMm: number,
): number | null {
  const pixels = Math.hypot((scale.x2 - scale.x1) * photo.width, (scale.y2 - scale.y1) * photo.height);
  return pixels > 0 ? ((windowMm / scale.lengthMm) * pixels) / photo.width : null;
}
