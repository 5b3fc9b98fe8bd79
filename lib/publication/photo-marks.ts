import { windowShare } from "./photo-scale.ts";
import type { SnapshotPhoto } from "./snapshot.ts";

/** A spot as it is drawn on its photo. */
export type PhotoMark = {
  /** 1 for the first: the number on the photo */
  number: number;
  spot: string;
  part: string; // its id
  x: number; // shares of width and height, from the top left
  y: number;
  /** diameter of the window as a share of the photo's width; null where length or window is not known */
  share: number | null;
};

/** The marks of a photo in their order; at the window's true size where a known length is marked on the photo. */
export const photoMarks = (photo: Pick<SnapshotPhoto, "width" | "height" | "scale" | "spots">): PhotoMark[] =>
  (photo.spots ?? []).map(({ spot, part, x, y, windowMm }, at) => ({
    number: at + 1,
    spot,
    part,
    x,
    y,
    share: photo.scale && windowMm !== null ? windowShare(photo.scale, photo, windowMm) : null,
  }));
