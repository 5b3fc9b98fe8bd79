import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { describe, expect, it } from "vitest";
import { ageGroups, itemCategories, materials } from "@/lib/quantity/item-words.ts";
import { quantityKinds } from "@/lib/quantity/kinds.ts";
import { spoilt } from "@/sample-data/file-writers.ts";
import { makeFiles } from "@/sample-data/make-files.ts";
import { scenario } from "@/sample-data/scenario.ts";
import type { FileName, SampleReadings } from "@/sample-data/scenario-types.ts";

/** The invented scenario hangs together: what scenario.ts says of the files is what the files hold. */
const folder = fileURLToPath(new URL("../../sample-data", import.meta.url));
const made = new Map(makeFiles().map((f) => [f.name, f]));
const shotsIn = (file: FileName) => made.get(file)!.shots;
const components = scenario.items.flatMap((item) =>
  item.specimens.flatMap((specimen) => specimen.components.map((component) => ({ item, specimen, component }))),
);
const said: SampleReadings[] = [...components.flatMap((c) => c.component.readings), ...scenario.unassigned];

describe("files", () => {
  it("are the bytes that the script makes", () => {
    expect([...made.keys()].sort()).toEqual(scenario.files.map((f) => f.name).sort());
    for (const { name, bytes } of made.values()) {
      expect(Buffer.compare(readFileSync(join(folder, "files", name)), Buffer.from(bytes)), name).toBe(0);
    }
  });

  it("hold 250 to 320 shots, as many each as scenario.ts says", () => {
    for (const file of scenario.files) {
      const spoiltShots = file.name === "ugly-day.csv" ? spoilt.length : 0;
      expect(shotsIn(file.name).length - spoiltShots, file.name).toBe(file.shots);
    }
    const total = scenario.files.reduce((n, f) => n + shotsIn(f.name).length, 0);
    expect(total).toBeGreaterThanOrEqual(250);
    expect(total).toBeLessThanOrEqual(320);
  });

  it("have header and blank rows as scenario.ts says, and the parts add up", () => {
    for (const { name, rows } of scenario.files) {
      const { header, blank } = made.get(name)!;
      expect({ name, header: rows.header, blank: rows.blank }).toEqual({ name, header, blank });
      expect(rows.accepted + rows.setAside + rows.blank + rows.header, name).toBe(rows.total);
    }
  });

  it("say on their second line that they are invented", () => {
    const decoder = {
      "utf-8": "utf-8",
      "utf-8-bom": "utf-8",
      "windows-1252": "windows-1252",
      "utf-16le": "utf-16le",
    };
    for (const { name, answers } of scenario.files) {
      const text = new TextDecoder(decoder[answers.encoding]).decode(made.get(name)!.bytes);
      expect(text.split(/\r?\n/)[1], name).toMatch(/invented|erfunden|inventée/i);
    }
  });

  it("take no reading outside their session", () => {
    for (const session of scenario.sessions) {
      const local = (iso: string) => Date.parse(`${iso.slice(0, 19)}Z`);
      for (const shot of shotsIn(session.file)) {
        expect(shot.at.getTime(), `${session.key} ${shot.number}`).toBeGreaterThanOrEqual(local(session.start));
        expect(shot.at.getTime() + 1000 * shot.seconds, `${session.key} ${shot.number}`).toBeLessThan(
          local(session.end),
        );
      }
    }
  });

  it("use only modes that their analyser has", () => {
    for (const file of scenario.files) {
      const known = scenario.instruments.find((i) => i.key === file.instrument)!.modes.map((m) => m.name);
      for (const shot of shotsIn(file.name)) expect(known).toContain(shot.mode);
    }
  });
});

describe("items", () => {
  it("find the shots they name, spot by spot", () => {
    for (const { file, sample, spots } of said) {
      const found = new Set(shotsIn(file).flatMap((s) => (s.sample === sample ? [s.spot] : [])));
      expect([...found].sort(), `${file} ${sample}`).toEqual([...spots].sort());
    }
  });

  it("leave no shot of a loaded file without a part, a standard or a place among the unassigned, and none with two", () => {
    for (const file of scenario.files.filter((f) => f.load)) {
      for (const sample of new Set(shotsIn(file.name).map((s) => s.sample))) {
        const owners = [...said, ...scenario.standards.flatMap((s) => s.readings)].filter(
          (r) => r.file === file.name && r.sample === sample,
        );
        expect(owners.length, `${file.name} ${sample}`).toBe(1);
      }
    }
  });

  it("set aside shots that exist and are their own, with a reason", () => {
    for (const item of scenario.items) {
      const own = item.specimens.flatMap((s) => s.components.flatMap((c) => c.readings));
      for (const { file, number, reason } of item.setAside) {
        const shot = shotsIn(file).find((s) => s.number === Number(number))!;
        expect(own.some((r) => r.file === file && r.sample === shot.sample)).toBe(true);
        expect(reason.length).toBeGreaterThan(40);
      }
    }
  });

  it("use the closed lists, unique slugs, and keys unique within a specimen", () => {
    expect(new Set(scenario.items.map((i) => i.slug)).size).toBe(scenario.items.length);
    for (const item of scenario.items) {
      expect(item.slug).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(itemCategories).toContain(item.category);
      expect(ageGroups).toContain(item.ageGroup);
      for (const m of item.materials) expect(materials).toContain(m);
      for (const specimen of item.specimens) {
        const keys = specimen.components.map((c) => c.key);
        expect(new Set(keys).size).toBe(keys.length);
        for (const c of specimen.components) expect(item.materials.concat("other"), item.slug).toContain(c.material);
      }
    }
  });

  it("cover the materials asked for, and say that they are invented", () => {
    const used = new Set(components.map((c) => c.component.material));
    const asked = "glaze enamel paint brass pvc crystal zinc-alloy textile-print glass abs steel solder copper".split(
      " ",
    );
    for (const m of asked) expect(used).toContain(m);
    expect(scenario.items.length).toBeGreaterThanOrEqual(14);
    for (const item of scenario.items) {
      expect(item.description, item.slug).toMatch(/Invented for the demonstration/);
      if (item.maker !== null) expect(item.maker).toMatch(/\(invented\)$/);
    }
  });

  it("carry code numbers with a right check digit, in ranges not given to goods for general sale", () => {
    // Weights 3 and 1 from the right, modulo 10 (GS1 General Specifications 7.9); restricted prefixes 02 and 20–29
    // of thirteen digits, 0 and 2 of eight: from memory.
    for (const { slug, gtin } of scenario.items) {
      if (gtin === null) continue;
      const sum = [...gtin].reverse().reduce((s, d, i) => s + Number(d) * (i % 2 ? 3 : 1), 0);
      expect(sum % 10, slug).toBe(0);
      expect([8, 12, 13]).toContain(gtin.length);
      if (gtin.length === 8) expect(gtin).toMatch(/^[02]/);
      else expect(gtin.padStart(13, "0")).toMatch(/^(02|2)/);
    }
  });

  it("are mostly published, one submitted, one draft with shots that wait", () => {
    const count = (state: string) => scenario.items.filter((i) => i.state === state).length;
    expect([count("submitted"), count("draft")]).toEqual([1, 1]);
    const draft = scenario.items.find((i) => i.state === "draft")!;
    for (const u of scenario.unassigned) {
      expect(u.forItem).toBe(draft.slug);
      expect(draft.specimens[0]!.components.map((c) => c.key)).toContain(u.suggestedComponent);
    }
    for (const item of scenario.items) expect(item.stateAt === null).toBe(item.state === "draft");
  });

  it("are published after they were shot and read, on a day before today's", () => {
    for (const item of scenario.items.filter((i) => i.stateAt)) {
      const at = item.stateAt!;
      for (const r of item.specimens.flatMap((s) => s.components.flatMap((c) => c.readings))) {
        expect(at > r.file.match(/\d{4}-\d{2}-\d{2}/)![0], item.slug).toBe(true);
      }
      if (item.review) expect(item.review.on <= at.slice(0, 10)).toBe(true);
      for (const s of item.specimens) expect(s.gotOn < at.slice(0, 10)).toBe(true);
      expect(Date.parse(at)).toBeLessThan(Date.parse("2026-11-24T00:00:00Z"));
    }
  });
});

describe("photos", () => {
  it("exist, 1200 × 900, under 60 kB, each with words for who cannot see it", async () => {
    for (const photo of scenario.items.flatMap((i) => i.photos)) {
      const path = join(folder, "photos", photo.file);
      expect(existsSync(path), photo.file).toBe(true);
      expect(statSync(path).size, photo.file).toBeLessThan(60_000);
      const { width, height } = await sharp(path).metadata();
      expect([width, height], photo.file).toEqual([1200, 900]);
      expect(photo.alt).toMatch(/^Drawing of /);
    }
  });
});

describe("people, analysers, standards", () => {
  it("have addresses that reach nobody, and one of each role", () => {
    for (const p of scenario.people) expect(p.email).toMatch(/@example\.org$/);
    expect(scenario.people.map((p) => p.role).sort()).toEqual(["owner", "reviewer", "tester"]);
  });

  it("read each standard in the file that names it, in the quantity certified", () => {
    for (const standard of scenario.standards) {
      expect(Object.keys(quantityKinds)).toContain(standard.quantity);
      for (const { file, sample } of standard.readings) {
        const shots = shotsIn(file).filter((s) => s.sample === sample);
        expect(shots.length, `${file} ${sample}`).toBeGreaterThan(0);
        const analyser = scenario.files.find((f) => f.name === file)!.instrument;
        const modes = scenario.instruments.find((i) => i.key === analyser)!.modes;
        for (const shot of shots) expect(modes.find((m) => m.name === shot.mode)!.quantity).toBe(standard.quantity);
      }
    }
  });

  it("fail one check on purpose and no other (within 20 % elsewhere)", () => {
    const failed: string[] = [];
    for (const standard of scenario.standards) {
      const scale = standard.unit === "mg/cm²" ? 1e-3 : 1;
      for (const { file, sample } of standard.readings) {
        for (const shot of shotsIn(file).filter((s) => s.sample === sample)) {
          const lead = shot.results.find((r) => r.element === "Pb")!;
          const { value } = standard.certified.find((c) => c.element === "Pb")!;
          if (value === null) expect(lead.detected).toBe(false);
          else if (Math.abs((lead.value * scale) / value - 1) > 0.2) failed.push(`${file} ${sample} ${shot.spot}`);
        }
      }
    }
    expect(failed).toEqual(["pruefbuch-b-2026-10-03.csv Kontrolle Amber 4"]);
  });
});
