/**
 * What a sample's name seems to say: "red mug / glaze" is the item "red mug" with the part "glaze"; a name without a divider is an
 * item of one part. Only proposed: the tester sees and changes it before anything is made.
 */
export function proposedNames(sample: string): { item: string; part: string } {
  const plain = sample.replace(/\s+/g, " ").trim();
  const divider = /\s*[/;,:|]\s+|\s+[-–—]\s+/.exec(plain);
  const item = divider ? plain.slice(0, divider.index) : "";
  const part = divider ? plain.slice(divider.index + divider[0].length) : "";
  return item !== "" && part !== "" ? { item, part } : { item: plain, part: "whole" };
}
