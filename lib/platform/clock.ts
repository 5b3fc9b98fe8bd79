/** The one place that asks what time it is. Tests hand in a fixed clock. */
export type Clock = () => Date;
export const systemClock: Clock = () => new Date();
