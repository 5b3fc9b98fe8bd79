import type { ReactNode } from "react";

/** A component in one state. The files here fill the style page, the component tests and the accessibility checks. */
export type Example = { id: string; title: string; show: ReactNode };
