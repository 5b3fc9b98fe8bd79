import type { Checked, Criteria, LimitRow } from "../types.ts";
import { limit, limits, percent } from "./define.ts";
import {
  ceramic,
  cookware,
  jewellery,
  jewelleryUnsure,
  metals,
  packagingCriteria,
  plainToys,
  plastics,
  softToyUnsure,
  teenUnsure,
  upTo12,
} from "./scopes.ts";

/** European Union. (84/500/EEC test: 4 % acetic acid by volume, 22 ± 2 °C, 24 ± 0.5 h; ceramics only, not glass or enamel.) */
const EU = "European Union";

const entry63 = {
  jurisdiction: EU,
  substances: ["Pb"],
  nature: "binding",
  checked: "second-hand",
  target: "object",
} as const;

const mouthScope =
  "In: accessible parts of articles for the general public that a child can put in the mouth (under 5 cm in one dimension, or a detachable or protruding part of that size; children of 6 to 36 months in view). " +
  "Out: keys, locks, musical instruments, brass with no more than 0.5 % lead, pen tips, articles under other EU acts (toys, electrical, food contact, packaging).";
const mouthable: Criteria[] = [
  {
    mouthable: true,
    accessible: true,
    foodContact: false,
    categories: ["bib-or-baby-gear", "ornament"],
    categoriesUnsure: {
      categories: ["jewellery-or-key-ring", "soft-toy-or-textile"],
      why: "keys and locks are out, jewellery and toys have rules of their own, and other things in the record's class are in",
    },
    materialsUnsure: { materials: ["brass"], why: "brass with no more than 0.5 % lead is out (from memory)" },
    market: { from: "2016-06-01" },
  },
];

const cadmium = {
  jurisdiction: EU,
  substances: ["Cd"],
  failsAt: ">=",
  nature: "binding",
  checked: "verified",
} as const;

const rohs = {
  jurisdiction: EU,
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  nature: "binding",
  target: "electrical",
} as const;
const rohsScope =
  "In: any homogeneous material in electrical and electronic equipment. Many exemptions, among them copper alloy up to 4 % lead, steel up to 0.35 %, aluminium up to 0.4 %.";
const rohsExemptions =
  "Exemptions re-set by three delegated directives of 21 November 2025 (national law by 30 June 2026, applied from 1 July 2026): steel 0.35 % and galvanised steel 0.2 % to 30 June 2027; recycled aluminium 0.3 %, dates between December 2026 and June 2027; aluminium for machining ends; copper alloy 4 % to 30 June 2027; high-melting solder and glass or ceramic entries to 31 December 2027 (read second-hand).";
const rohsMetals: [string, string, number][] = [
  ["PB", "Pb", percent(0.1)],
  ["HG", "Hg", percent(0.1)],
  ["CRVI", "Cr(VI)", percent(0.1)],
  ["PBB", "PBB", percent(0.1)],
  ["PBDE", "PBDE", percent(0.1)],
  ["CD", "Cd", percent(0.01)],
];

const toy = {
  jurisdiction: EU,
  title: "Toy directive, migration of elements",
  quantity: "migration",
  failsAt: ">",
  nature: "binding",
  target: "object",
} as const;
const toyParts = ["DRY", "LIQUID", "SCRAPED"] as const;
const toyWords = {
  DRY: "dry, brittle, powder-like or pliable material",
  LIQUID: "liquid or sticky material",
  SCRAPED: "material that is scraped off",
} as const;
const toyCriteria = (part: (typeof toyParts)[number]): Criteria[] => [
  {
    categories: plainToys,
    categoriesUnsure: softToyUnsure,
    ages: upTo12,
    agesUnsure: teenUnsure,
    accessible: true,
    ...(part === "SCRAPED" ? {} : { onlyIf: `the part is ${toyWords[part]}` }),
  },
];
/** The three figures of one element, in the order of the directive: dry, liquid, scraped off. */
const three = (figures: readonly [number, number, number], element: string) =>
  toyParts.map((part, i) => ({
    part,
    value: figures[i] as number,
    family: `eu-toy-${element.toLowerCase().replace(/[()]/g, "")}-${part.toLowerCase()}`,
    scope: `In: toys for children under 14; ${toyWords[part]}.`,
    criteria: toyCriteria(part),
  }));

type Figures = readonly [string, readonly [number, number, number], readonly [Checked, Checked, Checked]];
const memory = ["from memory", "from memory", "from memory"] as const;
const second = ["second-hand", "second-hand", "second-hand"] as const;
const otherElements: Figures[] = [
  ["Cd", [1.3, 0.3, 17], ["from memory", "from memory", "second-hand"]],
  ["As", [3.8, 0.9, 47], second],
  ["Hg", [7.5, 1.9, 94], ["verified", "second-hand", "second-hand"]],
  ["Sb", [45, 11.3, 560], second],
  ["Se", [37.5, 9.4, 460], memory],
  ["Ni", [75, 18.8, 930], memory],
  ["Ba", [1500, 375, 18750], second],
];
const readAs = {
  verified: "The figure was read in an official list.",
  "second-hand": "The figure was read in a secondary text.",
  "from memory": "The figure is from memory (medium); nobody has checked it against the directive yet.",
} as const;

const packaging = {
  jurisdiction: EU,
  family: "eu-packaging-sum",
  substances: ["Pb", "Cd", "Hg", "Cr(VI)"],
  sum: true,
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  nature: "binding",
  checked: "second-hand",
  target: "packaging",
  criteria: packagingCriteria,
} as const;
const packaging94 = {
  ...packaging,
  title: "Heavy metals in packaging (directive of 1994)",
  scope:
    "In: packaging, as the sum of lead, cadmium, mercury and hexavalent chromium. Glass and crates have derogations (glass: Decision 2001/171/EC); lead crystal is exempt.",
  citation: "Directive 94/62/EC Art. 11",
  checkedNote: "The number and the step dates were read second-hand (250 and 100 also in a national agency's report).",
} as const;

const ceramicWare = {
  jurisdiction: EU,
  title: "Ceramic ware in contact with food",
  quantity: "leachate",
  failsAt: ">",
  citation: "Directive 84/500/EEC Art. 2(4); 2005/31/EC (declaration, methods)",
  from: "1988-01-01",
  fromKnown: "year",
  nature: "binding",
  checked: "verified",
  checkedNote:
    "Values read in the directive; the first year (1984 as an act, 1988 in national law) is known to the year.",
  target: "object",
} as const;
const foodCeramic: Criteria = { foodContact: true, materials: ceramic };
const flatCeramic: Criteria[] = [
  {
    ...foodCeramic,
    categories: [],
    categoriesUnsure: {
      categories: ["plate-or-bowl"],
      why: "only pieces that cannot be filled or are at most 25 mm deep",
    },
  },
];
const fillable: Criteria[] = [
  {
    ...foodCeramic,
    categories: ["mug-or-cup"],
    categoriesUnsure: {
      categories: ["plate-or-bowl", "food-storage"],
      why: "only pieces deeper than 25 mm that hold no more than 3 L",
    },
  },
];
const cooking: Criteria[] = [
  {
    ...foodCeramic,
    categories: cookware,
    categoriesUnsure: { categories: ["food-storage"], why: "only vessels that hold more than 3 L" },
  },
];

export const europeanUnion: LimitRow[] = [
  limit({
    ...entry63,
    id: "EU-63-JEWEL",
    family: "eu-jewellery-pb",
    title: "Lead in jewellery (REACH entry 63)",
    quantity: "bulk-mass-fraction",
    value: percent(0.05),
    failsAt: ">=",
    scope:
      "In: each individual part of jewellery, imitation jewellery, hair accessories, watches, cuff-links and piercing pieces. " +
      "Out: crystal glass (categories 1 to 4), internal watch parts, natural stones not treated with lead, vitreous enamels fused at 500 °C or more; goods put on the market before 9 October 2013; antiques from before 10 December 1961.",
    citation: "REACH Annex XVII entry 63 paragraphs 1–5; Reg. (EC) 1907/2006; Reg. (EU) 836/2012",
    from: "2013-10-09",
    checkedNote:
      "0.05 %, which side fails, the exemptions and both dates were read in summaries, not in the regulation.",
    criteria: [
      {
        categories: [],
        categoriesUnsure: jewelleryUnsure,
        materialsOut: {
          materials: ["crystal", "enamel"],
          why: "crystal glass and vitreous enamel are out of its scope",
        },
        market: { from: "2013-10-09" },
      },
    ],
  }),
  limit({
    ...entry63,
    id: "EU-63-MOUTH",
    family: "eu-mouthable-pb",
    title: "Lead in articles a child can mouth (REACH entry 63)",
    quantity: "bulk-mass-fraction",
    value: percent(0.05),
    failsAt: ">=",
    scope: mouthScope,
    citation: "REACH Annex XVII entry 63 paragraphs 7–10; Reg. (EU) 2015/628; ECHA guideline of 25 May 2016",
    from: "2016-06-01",
    checkedNote:
      "The 5 cm rule, keys, locks, instruments, pen tips and other EU acts were read second-hand; the 0.5 % for brass is from memory.",
    criteria: mouthable,
  }),
  limit({
    ...entry63,
    id: "EU-63-MIGR",
    family: "eu-mouthable-pb-migration",
    title: "Lead release that lets an article above 0.05 % stay (REACH entry 63)",
    quantity: "migration",
    value: 0.05,
    unit: "µg/cm²/h",
    failsAt: ">",
    scope: `${mouthScope} An article above 0.05 % may stay if it releases no more than this (also 0.05 µg/g/h), and its coat holds that for two years.`,
    citation: "REACH Annex XVII entry 63 paragraph 8; Reg. (EU) 2015/628",
    from: "2016-06-01",
    checkedNote: "Read second-hand.",
    criteria: mouthable,
  }),
  limit({
    ...entry63,
    id: "EU-63-PVC",
    family: "eu-pvc-pb",
    title: "Lead in PVC (REACH entry 63)",
    quantity: "bulk-mass-fraction",
    value: percent(0.1),
    failsAt: ">=",
    scope:
      "In: articles of PVC, by mass of the PVC. Out: recovered flexible PVC until 28 May 2025; recovered rigid building PVC under 1.5 % until 28 May 2033; toys, electrical equipment, food contact and packaging.",
    citation: "REACH Annex XVII entry 63 paragraph 11 and following; Reg. (EU) 2023/923, OJ L 123, 8.5.2023",
    from: "2024-11-29",
    checked: "verified",
    checkedNote: "Read in the regulation.",
    criteria: [
      {
        materials: ["pvc"],
        foodContact: false,
        categories: ["bib-or-baby-gear", "jewellery-or-key-ring", "ornament"],
        categoriesUnsure: {
          categories: ["soft-toy-or-textile"],
          why: "toys have rules of their own; a textile that is not a toy is covered",
        },
        market: { from: "2024-11-29" },
      },
    ],
  }),
  ...limits(
    { ...cadmium, quantity: "bulk-mass-fraction", value: percent(0.01), from: "2011-12-10", target: "object" as const },
    [
      {
        id: "EU-23-PLASTIC",
        family: "eu-plastic-cd",
        title: "Cadmium in plastics (REACH entry 23)",
        scope: "In: the plastics listed in the entry.",
        citation: "REACH Annex XVII entry 23; Reg. (EU) 494/2011 and corrigendum",
        checkedNote: "Read in Reg. (EU) 494/2011 and in the agency's answers.",
        criteria: [{ materials: plastics, onlyIf: "the plastic is one of those the entry lists" }],
      },
      {
        id: "EU-23-PLASTIC-JEWELLERY",
        family: "eu-jewellery-cd",
        title: "Cadmium in metal parts of jewellery (REACH entry 23)",
        scope: "In: each metal part of jewellery, with its coat layers counted in.",
        citation: "REACH Annex XVII entry 23; Reg. (EU) 494/2011 and corrigendum",
        checkedNote: "Read in Reg. (EU) 494/2011 and in the agency's answers.",
        criteria: [{ categories: [], categoriesUnsure: jewelleryUnsure, materials: metals }],
      },
      {
        id: "EU-23-PLASTIC-BRAZING",
        family: "eu-brazing-cd",
        title: "Cadmium in brazing fillers (REACH entry 23)",
        scope: "In: brazing fillers.",
        citation: "REACH Annex XVII entry 23; Reg. (EU) 494/2011 and corrigendum",
        checkedNote: "Read in Reg. (EU) 494/2011 and in the agency's answers.",
        criteria: [{ materials: ["solder"], onlyIf: "it is a brazing filler" }],
      },
    ],
  ),
  ...limits(
    {
      ...cadmium,
      quantity: "coating-mass-fraction",
      citation: "REACH Annex XVII entry 23 paragraph 2; Reg. (EU) 2016/217, OJ L 40, 17.2.2016",
      checkedNote: "Read in Reg. (EU) 2016/217.",
    },
    [
      {
        id: "EU-23-PAINT",
        family: "eu-paint-cd",
        title: "Cadmium in paints (REACH entry 23)",
        value: percent(0.01),
        scope: "In: paints as sold (codes 3208, 3209).",
        from: "2016-03-01",
        fromKnown: "month",
        checkedNote: "Read in Reg. (EU) 2016/217, in force in March 2016 (to the month).",
        target: "paint-as-sold",
      },
      {
        id: "EU-23-PAINT-ZINC",
        family: "eu-paint-zinc-cd",
        title: "Cadmium in paints rich in zinc (REACH entry 23)",
        value: percent(0.1),
        scope: "In: paints as sold with more than 10 % zinc.",
        from: "2011-12-10",
        target: "paint-as-sold",
      },
      {
        id: "EU-23-PAINT-ARTICLE",
        family: "eu-painted-article-cd",
        title: "Cadmium in the paint of painted articles (REACH entry 23)",
        value: percent(0.1),
        scope: "In: painted articles, by mass of the paint on them.",
        from: "2011-12-10",
        target: "object",
        criteria: [{ layer: "paint" }],
      },
    ],
  ),
  ...limits(
    {
      jurisdiction: EU,
      title: "Nickel release on the skin (REACH entry 27)",
      substances: ["Ni"],
      quantity: "migration",
      unit: "µg/cm²/week",
      citation: "REACH Annex XVII entry 27; EN 1811, EN 12472",
      from: "2000-01-01",
      fromKnown: "year",
      nature: "binding",
      checked: "verified",
      checkedNote: "Read in the agency's drafts and a public text; in effect since 2000, under REACH since 2009.",
      note: "XRF cannot test this. Coated articles must hold it for two years.",
      target: "object",
    },
    [
      {
        id: "EU-27-NI",
        family: "eu-skin-ni",
        value: 0.5,
        failsAt: ">",
        scope: "In: articles in prolonged contact with the skin: jewellery, watch parts, zips, rivets.",
        criteria: [{ categories: [], categoriesUnsure: jewelleryUnsure, materials: metals }],
      },
      {
        id: "EU-27-NI-POST",
        family: "eu-post-ni",
        value: 0.2,
        failsAt: ">=",
        scope: "In: post assemblies put into pierced parts of the body; must be below the number.",
        criteria: [{ categories: jewellery, materials: metals, onlyIf: "it is a post for a pierced part of the body" }],
      },
    ],
  ),
  ...limits(
    {
      ...rohs,
      title: "Restricted substances in electrical equipment (RoHS)",
      scope: rohsScope,
      citation: "2011/65/EU Annex II (before it 2002/95/EC)",
      from: "2006-07-01",
      checked: "second-hand",
      checkedNote:
        "Values and the start in 2006 were read second-hand; the recast's date (3 January 2013) is from memory (high).",
      note: rohsExemptions,
    },
    rohsMetals.map(([suffix, substance, value]) => ({
      id: `EU-ROHS-${suffix}`,
      family: `eu-electrical-${suffix.toLowerCase()}`,
      substances: [substance],
      value,
    })),
  ),
  limit({
    ...rohs,
    id: "EU-ROHS-PHTHALATES",
    family: "eu-electrical-phthalates",
    title: "Four phthalates in electrical equipment (RoHS), each",
    substances: ["DEHP", "BBP", "DBP", "DIBP"],
    value: percent(0.1),
    scope: "In: any homogeneous material in electrical and electronic equipment; each of the four by itself.",
    citation: "2011/65/EU Annex II",
    from: "2019-07-22",
    checked: "second-hand",
    checkedNote: "The value was read second-hand; the date and the four names are from memory (high).",
  }),
  ...three([13.5, 3.4, 160], "Pb").map(({ part, ...row }) =>
    limit({
      ...toy,
      ...row,
      id: `EU-TOY-PB-OLD-${part}`,
      substances: ["Pb"],
      citation: "2009/48/EC Annex II part III 13",
      from: "2013-07-20",
      until: "2018-10-27",
      checked: "verified",
      checkedNote: "Read in Dir. (EU) 2017/738. Before it, 88/378/EEC had 90 mg/kg (from memory).",
    }),
  ),
  ...three([2.0, 0.5, 23], "Pb").map(({ part, ...row }) =>
    limit({
      ...toy,
      ...row,
      id: `EU-TOY-PB-${part}`,
      substances: ["Pb"],
      citation: "2009/48/EC Annex II part III 13 as amended by Dir. (EU) 2017/738, OJ L 110, 27.4.2017",
      from: "2018-10-28",
      checked: "verified",
      checkedNote: "Read in Dir. (EU) 2017/738.",
      note: "2017/738 is lead, 2018/725 is hexavalent chromium: easily confused. Regulation (EU) 2025/2509 replaces the directive from 1 August 2030.",
    }),
  ),
  limit({
    ...toy,
    ...three([0, 0, 0.2], "Cr(VI)").map(({ part: _part, ...row }) => row)[2]!,
    id: "EU-TOY-CRVI-OLD-SCRAPED",
    substances: ["Cr(VI)"],
    citation: "2009/48/EC Annex II part III 13",
    from: "2013-07-20",
    until: "2019-11-17",
    checked: "verified",
    checkedNote: "The earlier figure was read in Dir. (EU) 2018/725.",
  }),
  ...three([0.02, 0.005, 0.053], "Cr(VI)").map(({ part, ...row }) =>
    limit({
      ...toy,
      ...row,
      id: `EU-TOY-CRVI-${part}`,
      substances: ["Cr(VI)"],
      citation: "2009/48/EC Annex II part III 13 as amended by Dir. (EU) 2018/725",
      from: "2019-11-18",
      checked: "verified",
      checkedNote: "Read in Dir. (EU) 2018/725.",
      note: "2018/725 is hexavalent chromium, 2017/738 is lead: easily confused.",
    }),
  ),
  ...otherElements.flatMap(([element, figures, checks]) =>
    three(figures, element).map(({ part, ...row }, i) => {
      const checked = checks[i]!;
      return limit({
        ...toy,
        ...row,
        id: `EU-TOY-OTHER-${element.toUpperCase()}-${part}`,
        substances: [element],
        citation: "2009/48/EC Annex II part III 13, as amended",
        from: "2013-07-20",
        checked,
        checkedNote: readAs[checked],
      });
    }),
  ),
  limit({
    ...toy,
    ...three([2, 0, 0], "Pb").map(({ part: _part, ...row }) => row)[0]!,
    id: "EU-TOY-2030-PB-DRY",
    title: "Toy regulation of 2025, migration of lead",
    substances: ["Pb"],
    citation: "Reg. (EU) 2025/2509 of 26 Nov 2025, OJ 12 Dec 2025",
    from: "2030-08-01",
    checked: "second-hand",
    checkedNote:
      "The act and its day in the Official Journal were read; its other dates and lead 2 (dry) second-hand. Its full tables were not read, and notes on them disagree.",
    note: "In force from 1 January 2026, applies from 1 August 2030 (three bulletins wrongly print 2026). Replaces 2009/48/EC; older stock may be sold on.",
  }),
  ...limits(packaging94, [
    { id: "EU-PACK-94-600", value: 600, from: "1998-06-30", until: "1999-06-29" },
    { id: "EU-PACK-94-250", value: 250, from: "1999-06-30", until: "2001-06-29" },
    { id: "EU-PACK-94", value: 100, from: "2001-06-30", until: "2026-08-11" },
  ]),
  limit({
    ...packaging,
    id: "EU-PACK-PPWR",
    title: "Heavy metals in packaging (regulation of 2025)",
    value: 100,
    scope: "In: all packaging, as the sum of lead, cadmium, mercury and hexavalent chromium.",
    citation: "Reg. (EU) 2025/40 Art. 5(4)",
    from: "2026-08-12",
    checkedNote: "Read in trade notes; in force as an act since 11 February 2025.",
  }),
  ...limits(
    {
      ...ceramicWare,
      scope: "In: ceramic ware that cannot be filled, or is at most 25 mm deep.",
      criteria: flatCeramic,
      unit: "mg/dm²",
    },
    [
      { id: "EU-CER-1-PB", family: "eu-ceramic-flat-pb", substances: ["Pb"], value: 0.8 },
      { id: "EU-CER-1-CD", family: "eu-ceramic-flat-cd", substances: ["Cd"], value: 0.07 },
    ],
  ),
  ...limits({ ...ceramicWare, scope: "In: other ceramic ware that can be filled.", criteria: fillable }, [
    { id: "EU-CER-2-PB", family: "eu-ceramic-fillable-pb", substances: ["Pb"], value: 4.0 },
    { id: "EU-CER-2-CD", family: "eu-ceramic-fillable-cd", substances: ["Cd"], value: 0.3 },
  ]),
  ...limits(
    {
      ...ceramicWare,
      scope: "In: ceramic cooking ware; packaging and storage vessels of more than 3 L.",
      criteria: cooking,
    },
    [
      { id: "EU-CER-3-PB", family: "eu-ceramic-cooking-pb", substances: ["Pb"], value: 1.5 },
      { id: "EU-CER-3-CD", family: "eu-ceramic-cooking-cd", substances: ["Cd"], value: 0.1 },
    ],
  ),
  ...limits(
    {
      jurisdiction: EU,
      title: "Lead in drinking water",
      family: "eu-drinking-water",
      substances: ["Pb"],
      quantity: "water-concentration",
      failsAt: ">",
      scope: "In: drinking water.",
      citation: "Directive (EU) 2020/2184 Annex I, OJ L 435, 23.12.2020",
      nature: "binding",
      checked: "verified",
      checkedNote: "Read in the agency's list and the directive.",
      target: "water",
    },
    [
      {
        id: "EU-DWD-10",
        value: 0.01,
        from: "2023-01-01",
        fromKnown: "year",
        until: "2036-01-11",
        note: "An act of 2020, in national law by 2023 (to the year).",
      },
      { id: "EU-DWD-5", value: 0.005, from: "2036-01-12", note: "To be met by 12 January 2036." },
    ],
  ),
];
