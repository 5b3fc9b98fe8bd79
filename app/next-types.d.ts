// next-env.d.ts is written by Next itself and not kept; this lets the type check run before the first build.
/// <reference types="next" />
/// <reference types="next/image-types/global" />
