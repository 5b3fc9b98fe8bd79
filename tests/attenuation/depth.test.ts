import { describe, expect, it } from "vitest";
import { infiniteThickness, informationDepth, limitingArealDensity, signalShare } from "@/lib/attenuation/depth.ts";
import { geometryFor, incidentEnergy, pathAttenuation } from "@/lib/attenuation/geometry.ts";
import { lineNames, lineOf, massAttenuation, massAttenuationAt } from "@/lib/attenuation/mass-attenuation.ts";
import { infiniteThicknessMm, readingDepth, shareOfThick } from "@/lib/attenuation/reading-depth.ts";
import { materials } from "@/lib/quantity/item-words.ts";

describe("depth, by arithmetic on the exponential law", () => {
  it("the way out alone: straight out is √2 deeper than at 45°, and each share its own logarithm", () => {
    const straight = informationDepth("glaze", "Pb Lα", { takeOffDegrees: 90 });
    expect(informationDepth("glaze", "Pb Lα")).toBeCloseTo(straight / Math.SQRT2, 12);
    expect(informationDepth("glaze", "Pb Lα", { takeOffDegrees: 90, share: 0.9 })).toBeCloseTo(straight / 2, 12);
    expect(straight).toBeCloseTo((10 * Math.log(100)) / (massAttenuation("glaze", "Pb Lα") * 2.5), 12);
  });

  it("the way in makes it less deep than the way out alone", () => {
    for (const line of lineNames)
      expect(infiniteThickness("glaze", line)).toBeLessThan(informationDepth("glaze", line));
  });

  it("χ is the sum of both ways, each over its sine", () => {
    const chi = pathAttenuation("copper", "Pb Lβ", { incidentDegrees: 30, takeOffDegrees: 90, incidentKeV: 25 });
    expect(chi).toBeCloseTo(2 * massAttenuationAt("copper", 25) + massAttenuation("copper", "Pb Lβ"), 10);
  });

  it("the share of a layer agrees with the integral of its signal over the depth, summed slice by slice", () => {
    const chi = pathAttenuation("pvc", "Cd Kα") * 1.4;
    const signalTo = (cm: number) => {
      const slices = 20_000;
      let sum = 0;
      for (let i = 0; i < slices; i++) sum += Math.exp((-chi * (i + 0.5) * cm) / slices) * (cm / slices);
      return sum;
    };
    expect(signalShare(2, "pvc", "Cd Kα")).toBeCloseTo(signalTo(0.2) / signalTo(60 / chi), 5);
  });

  it("share and thickness undo each other; nothing gives nothing, and a thick part all", () => {
    for (const share of [0.1, 0.5, 0.95, 0.99]) {
      const mm = infiniteThickness("paint", "Pb Lβ", { share });
      expect(signalShare(mm, "paint", "Pb Lβ")).toBeCloseTo(share, 12);
    }
    expect(signalShare(0, "paint", "Pb Lβ")).toBe(0);
    expect(signalShare(1000, "paint", "Pb Lβ")).toBe(1);
    expect(signalShare(Number.POSITIVE_INFINITY, "paint", "Pb Lβ")).toBe(1);
  });

  it("areal density is thickness times density, and does not ask for the density", () => {
    expect(limitingArealDensity("glass", "Pb Lα")).toBeCloseTo((infiniteThickness("glass", "Pb Lα") / 10) * 2.5, 12);
    const light = { fractions: { Al: 1 }, density: 1 };
    expect(limitingArealDensity(light, "Pb Lα")).toBe(limitingArealDensity("aluminium", "Pb Lα"));
  });

  it.each([
    ["a share of 1", () => informationDepth("glaze", "Pb Lα", { share: 1 }), "bad-level"],
    ["a take-off angle of zero", () => informationDepth("glaze", "Pb Lα", { takeOffDegrees: 0 }), "angle-out-of-range"],
    ["an angle past straight", () => signalShare(1, "glaze", "Pb Lα", { incidentDegrees: 91 }), "angle-out-of-range"],
    ["a thickness below zero", () => signalShare(-1, "glaze", "Pb Lα"), "negative-thickness"],
    ["no thickness", () => signalShare(Number.NaN, "glaze", "Pb Lα"), "negative-thickness"],
    ["X-rays too weak", () => signalShare(1, "glaze", "Pb Lα", { incidentKeV: 13 }), "incident-below-edge"],
  ])("refuses %s", (_, call, code) => {
    expect(call).toThrow(expect.objectContaining({ code }));
  });
});

describe("incident energy", () => {
  it("is 1.5 times the edge (Bertin, from memory), within the tube's 50 keV for every line", () => {
    expect(incidentEnergy("Pb Lα")).toBeCloseTo(19.55, 2);
    expect(geometryFor("Pb Lα")).toEqual({
      incidentDegrees: 45,
      takeOffDegrees: 45,
      incidentKeV: incidentEnergy("Pb Lα"),
    });
    for (const line of lineNames) {
      expect(incidentEnergy(line)).toBeGreaterThan(lineOf(line).edgeKeV);
      expect(incidentEnergy(line)).toBeLessThan(50);
    }
  });
});

describe("reading depth", () => {
  it("takes the line that is seen deepest", () => {
    expect(readingDepth("glaze", "Pb")).toMatchObject({ material: "glaze", line: "Pb Lβ", share: 0.99 });
    expect(readingDepth("pvc", "Ba")?.line).toBe("Ba Kα");
    for (const line of lineNames)
      expect(readingDepth("pvc", lineOf(line).element)!.mm).toBeGreaterThanOrEqual(infiniteThickness("pvc", line));
  });

  it("is known for every listed material but “other”, and for listed elements only", () => {
    for (const material of materials) expect(infiniteThicknessMm(material, "Pb") === null).toBe(material === "other");
    expect(infiniteThicknessMm("glaze", "U")).toBeNull();
    expect(infiniteThicknessMm("constructor", "Pb")).toBeNull();
  });

  it("a part as thick as the depth gives the share the depth is named for", () => {
    const depth = readingDepth("abs", "Cd")!;
    expect(shareOfThick(depth, depth.mm)).toBeCloseTo(0.99, 12);
  });
});
