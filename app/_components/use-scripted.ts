"use client";

import { useSyncExternalStore } from "react";

const never = () => () => {};

/**
 * False on the server and while the page wakes up, true afterwards. A control that needs scripts shows its native form
 * until then, so that nobody is left with a dead box.
 */
export const useScripted = (): boolean =>
  useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
