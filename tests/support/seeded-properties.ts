import fc from "fast-check";

/**
 * Property tests draw from one stated seed, so that a run can be repeated and a landing does not hang on luck.
 * PROPERTY_SEED=any draws afresh; PROPERTY_SEED=N repeats a run.
 */
const asked = process.env["PROPERTY_SEED"];
if (asked !== "any") fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: asked ? Number(asked) : 20261124 });
