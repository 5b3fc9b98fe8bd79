import type { Criteria, LimitRow } from "../types.ts";
import { limit, limits, percent } from "./define.ts";
import { plainToys, softToyUnsure, teenUnsure, toys, upTo12 } from "./scopes.ts";

/** United States: paint on goods, children's products, toys. */
const US = "United States";

const paintScope =
  "In: paint for consumers; toys and other articles for children that bear such paint; furniture for consumers that bears it. " +
  "Out: printing inks, glazes, electroplate and pigment within a plastic (they count as the body itself); appliances; fixtures such as cabinets, windows and doors; boat and car paint; labelled industrial, artist and touch-up uses.";

const paintedForChildren = (from: string, until: string | null): Criteria[] => [
  { ages: upTo12, layer: "paint", made: { from, until } },
];

const paint = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "coating-mass-fraction",
  failsAt: ">",
  family: "us-paint-on-goods-pb",
  nature: "binding",
  target: "object",
} as const;

const childScope =
  "In: accessible parts of products designed or intended mainly for children of 12 or younger. " +
  "Out: inaccessible parts (paint, coating and electroplate are not a barrier); listed electronic components; some metal parts of bicycles, trailers and ride-on vehicles. " +
  "Lead crystal, glass beads and rhinestones are not exempt.";

const child = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  family: "us-childrens-products-pb",
  nature: "binding",
  target: "object",
  scope: childScope,
} as const;
const childCriteria: Criteria = { ages: upTo12, accessible: true, layer: "not-paint" };
const usedGoods = "Used goods sold for charity or by people who had them for use have partial relief.";

const exemption = {
  jurisdiction: US,
  substances: ["Pb"],
  quantity: "bulk-mass-fraction",
  failsAt: ">",
  nature: "binding",
  target: "exemption",
} as const;

const f963 = {
  jurisdiction: US,
  title: "Toy standard ASTM F963, soluble elements",
  quantity: "migration",
  failsAt: ">",
  citation: "ASTM F963-23 section 4.3.5; CPSIA section 106; 16 CFR 1250; 82 FR 8989, 82 FR 57119, 89 FR 3344",
  nature: "binding",
  target: "object",
  statistic: "soluble in dilute acid, after the test method's correction",
  note: "Editions: F963-07 binding from 10 Feb 2009, F963-11 from 12 Jun 2012, F963-16 from 30 Apr 2017, F963-17 from 28 Feb 2018, F963-23 from 20 Apr 2024.",
} as const;
const f963Checked = {
  checked: "second-hand",
  checkedNote:
    "Values and the first two dates read second-hand; the dates of 2017, 2018 and 2024 were read in the Federal Register.",
} as const;
const f963Elements: [string, number][] = [
  ["Sb", 60],
  ["As", 25],
  ["Ba", 1000],
  ["Cd", 75],
  ["Cr", 60],
  ["Pb", 90],
  ["Hg", 60],
  ["Se", 500],
];
const f963Clay: [string, number][] = [
  ["Ba", 250],
  ["Cd", 50],
  ["Cr", 25],
  ["Hg", 25],
];
const toyCriteria = (layer: "paint" | "not-paint"): Criteria => ({
  categories: plainToys,
  categoriesUnsure: softToyUnsure,
  ages: upTo12,
  agesUnsure: teenUnsure,
  layer,
});

export const usGoods: LimitRow[] = [
  limit({
    ...paint,
    id: "FHSA-PAINT-1973",
    title: "Banned paints of 1973",
    value: percent(0.5),
    scope:
      "In: household paint; toys and children's articles bearing paint; solids or dried film. Out: artists' paints.",
    citation: "16 CFR 1500.17(a)(6)(i)(B), (ii)(B)",
    from: "1973-01-01",
    until: "1973-12-31",
    checked: "verified",
    checkedNote: "Read in 16 CFR 1500.17(a)(6). It binds goods shipped after 31 December 1972.",
    criteria: paintedForChildren("1973-01-01", "1973-12-31"),
  }),
  limit({
    ...paint,
    id: "FHSA-PAINT-1974",
    title: "Banned paints of 1974",
    value: percent(0.06),
    scope:
      "In: household paint; toys and children's articles bearing paint; solids or dried film. Out: artists' paints.",
    citation: "16 CFR 1500.17(a)(6)(i)(A), (ii)(A), (iii)",
    from: "1974-01-01",
    until: "1978-02-27",
    checked: "verified",
    checkedNote:
      "Read in 16 CFR 1500.17(a)(6). It binds goods shipped after 31 December 1973 and ends for goods made after 27 February 1978.",
    criteria: paintedForChildren("1974-01-01", "1978-02-27"),
  }),
  limit({
    ...paint,
    id: "CPSC-PAINT-1978",
    title: "Lead in paint and painted goods, 1978",
    value: percent(0.06),
    scope: paintScope,
    citation: "16 CFR 1303; 42 FR 44193/44199 (1 Sep 1977; page from memory)",
    from: "1978-02-28",
    until: "2009-08-13",
    checked: "verified",
    checkedNote:
      "0.06 %, the date, the core scope and that vehicles and boats are out were read in the rule; finer exemptions second-hand; the page of 42 FR is from memory.",
    criteria: paintedForChildren("1978-02-28", "2009-08-13"),
  }),
  limit({
    ...paint,
    id: "CPSC-PAINT-2009",
    title: "Lead in paint and painted goods, 2009",
    value: percent(0.009),
    scope: paintScope,
    citation: "16 CFR 1303.1(a); 73 FR 77492 (19 Dec 2008); CPSIA section 101(f)",
    from: "2009-08-14",
    checked: "verified",
    checkedNote: "Read in the rule and in the Code of Federal Regulations; finer exemptions second-hand.",
    criteria: paintedForChildren("2009-08-14", null),
  }),
  limit({
    ...paint,
    id: "CPSC-PAINT-SMALL",
    family: "us-paint-small-areas-pb",
    title: "Very small painted areas of children's goods",
    quantity: "mass",
    value: 0.002,
    scope:
      "In: painted areas of children's goods with no more than 10 mg of paint or 1 cm²; they may be screened by XRF, and then may hold no more than 2 µg of lead in those 10 mg or that 1 cm².",
    citation: "CPSIA section 101(f)(3); 15 USC 1278a(f)",
    from: "2009-01-01",
    fromKnown: "year",
    checked: "second-hand",
    checkedNote: "Read in a health district's rules, not in the statute.",
    criteria: [{ ages: upTo12, layer: "paint", onlyIf: "the painted area is no more than 1 cm² or 10 mg of paint" }],
  }),
  limit({
    ...child,
    id: "CPSIA-600",
    title: "Total lead in children's products, 600",
    value: 600,
    citation: "CPSIA section 101(a)(2)(A); 15 USC 1278a; Pub. L. 110-314",
    from: "2009-02-10",
    until: "2009-08-13",
    checked: "verified",
    checkedNote: "Read in 15 USC 1278a and in the Federal Register of 2009.",
    criteria: [childCriteria],
  }),
  limit({
    ...child,
    id: "CPSIA-300",
    title: "Total lead in children's products, 300",
    value: 300,
    citation: "CPSIA section 101(a)(2)(B); 15 USC 1278a; Pub. L. 110-314",
    from: "2009-08-14",
    until: "2011-08-13",
    checked: "verified",
    checkedNote: "Read in 15 USC 1278a and in the Federal Register of 2009.",
    note: "The limit of 100 that followed binds only goods made after 14 August 2011, so this one remains the number for older goods.",
    criteria: [{ ...childCriteria, made: { from: null, until: "2011-08-14" }, unless: usedGoods }],
  }),
  limit({
    ...child,
    id: "CPSIA-100",
    title: "Total lead in children's products, 100",
    value: 100,
    citation: "CPSIA section 101(a)(2)(C); 15 USC 1278a; Pub. L. 112-28 section 1; 76 FR 44463 (from memory)",
    from: "2011-08-14",
    checked: "verified",
    checkedNote:
      "Value, date and that it binds only goods made after the effective date were read in the statute and in Pub. L. 112-28; 76 FR 44463 is from memory.",
    criteria: [{ ...childCriteria, made: { from: "2011-08-15", until: null }, unless: usedGoods }],
  }),
  ...limits(
    {
      ...exemption,
      title: "Electronic components of children's products",
      failsAt: ">=",
      citation: "16 CFR 1500.88",
      from: "2009-01-01",
      fromKnown: "year",
      checked: "verified",
      checkedNote:
        "Figures read in 16 CFR 1500.88; the first day was not read (the year is from memory). The text asks for less than the number.",
    },
    [
      {
        id: "CPSIA-EXEMPT-STEEL",
        family: "us-childrens-exempt-steel",
        value: percent(0.35),
        scope:
          "In: steel in listed electronic components of children's products, where the lead is needed for the electronic function.",
      },
      {
        id: "CPSIA-EXEMPT-ALUMINIUM",
        family: "us-childrens-exempt-aluminium",
        value: percent(0.4),
        scope:
          "In: aluminium in listed electronic components of children's products, where the lead is needed for the electronic function.",
      },
      {
        id: "CPSIA-EXEMPT-COPPER",
        family: "us-childrens-exempt-copper",
        value: percent(4),
        scope:
          "In: copper alloy in listed electronic components of children's products, where the lead is needed for the electronic function.",
      },
      {
        id: "CPSIA-EXEMPT-GLASS",
        family: "us-childrens-exempt-glass",
        rule: "lead is allowed where it is needed for the electronic function",
        scope:
          "In: tube and lamp glass, optical glass, leaded-bronze bearings and some connectors in children's electronics.",
      },
    ],
  ),
  ...limits(
    {
      ...exemption,
      title: "Exempt or partly exempt parts of children's products",
      citation: "15 USC 1278a(b); Pub. L. 112-28",
      from: "2011-01-01",
      fromKnown: "year",
      checked: "verified",
      checkedNote:
        "Read in 15 USC 1278a and the agency's guidance; the first day was not read (year of Pub. L. 112-28).",
    },
    [
      {
        id: "CPSIA-EXEMPT-BICYCLE",
        family: "us-childrens-exempt-bicycle",
        value: 300,
        scope: "In: metal parts of bicycles, jogger strollers and trailers for children.",
      },
      {
        id: "CPSIA-EXEMPT-RIDE-ON",
        family: "us-childrens-exempt-ride-on",
        value: 300,
        scope: "In: certain aluminium parts of ride-on tractors.",
      },
      {
        id: "CPSIA-EXEMPT-OFF-HIGHWAY",
        family: "us-childrens-exempt-off-highway",
        rule: "the limits on lead in children's products do not apply",
        scope: "In: off-highway vehicles.",
      },
      {
        id: "CPSIA-EXEMPT-USED",
        family: "us-childrens-exempt-used",
        rule: "partial relief from the limits on lead in children's products",
        scope:
          "In: used children's products that the seller had for use, got from such a person, or was given for charity. Out (from memory): metal jewellery and known violations.",
        checkedNote: "The definition was read in 15 USC 1278a; what is carved out of it is from memory.",
      },
    ],
  ),
  limit({
    ...exemption,
    id: "CPSIA-EXEMPT-INACCESSIBLE",
    family: "us-childrens-exempt-inaccessible",
    title: "Inaccessible parts of children's products",
    rule: "the limits do not apply to a part sealed by a covering that survives use and abuse; paint, coating and electroplate are not such a covering",
    scope: "In: parts of children's products that a child cannot reach.",
    citation: "16 CFR 1500.87; 74 FR 39535 (7 Aug 2009)",
    from: "2009-08-07",
    checked: "verified",
    checkedNote: "Read in the Federal Register and the Code of Federal Regulations.",
  }),
  limit({
    ...exemption,
    id: "CPSIA-EXEMPT-TESTING",
    family: "us-childrens-exempt-testing",
    title: "Materials that need no test",
    rule: "exempt from testing, not from the limit",
    scope: "In: untreated listed materials in children's products.",
    citation: "16 CFR 1500.91",
    from: "2009-01-01",
    fromKnown: "year",
    checked: "verified",
    checkedNote: "Read in the Code of Federal Regulations; the first day was not read.",
  }),
  limit({
    ...exemption,
    id: "CPSIA-EXEMPT-CRYSTAL",
    family: "us-childrens-exempt-crystal",
    title: "Lead crystal, glass beads and rhinestones",
    rule: "no exemption: the limit on children's products applies to them",
    scope: "In: lead crystal, glass beads and rhinestones on children's products.",
    citation: "vote of the Commission of 17 Jul 2009",
    from: "2009-07-17",
    checked: "second-hand",
    checkedNote: "Read in the ballot paper and in press reports of the vote; beads tested then held 900 to 23 000 ppm.",
  }),
  ...limits(
    { ...f963, ...f963Checked, from: "2009-02-10" },
    f963Elements.map(([element, value]) => ({
      id: `ASTM-F963-SOL-${element.toUpperCase()}-COATING`,
      family: `us-toy-soluble-coating-${element.toLowerCase()}`,
      substances: [element],
      value,
      scope: "In: coatings on toys for children under 14.",
      criteria: [toyCriteria("paint")],
    })),
  ),
  ...limits(
    { ...f963, ...f963Checked, from: "2012-06-12" },
    f963Elements.map(([element, value]) => ({
      id: `ASTM-F963-SOL-${element.toUpperCase()}-SUBSTRATE`,
      family: `us-toy-soluble-substrate-${element.toLowerCase()}`,
      substances: [element],
      value,
      scope: "In: accessible bodies (substrates) of toys for children under 14, since the edition of 2011.",
      criteria: [{ ...toyCriteria("not-paint"), accessible: true as const }],
    })),
  ),
  ...limits(
    {
      ...f963,
      from: "2012-06-12",
      checked: "from memory",
      checkedNote:
        "The standard's own row for clay is from memory; the same figures were read second-hand for ISO 8124-3.",
      scope: "In: modelling clay sold as a toy.",
      criteria: [{ categories: toys, ages: upTo12, onlyIf: "it is modelling clay" }] as Criteria[],
    },
    f963Clay.map(([element, value]) => ({
      id: `ASTM-F963-SOL-${element.toUpperCase()}-CLAY`,
      family: `us-toy-soluble-clay-${element.toLowerCase()}`,
      substances: [element],
      value,
    })),
  ),
  limit({
    jurisdiction: US,
    id: "CPSC-CANDLE",
    family: "us-candle-wick-pb",
    title: "Metal-cored candle wicks",
    substances: ["Pb"],
    quantity: "bulk-mass-fraction",
    value: percent(0.06),
    failsAt: ">",
    scope: "In: the metal of a metal-cored wick, in candles and as wicks.",
    citation: "16 CFR 1500.17(a)(13); 68 FR 19142–19148 (18 Apr 2003)",
    from: "2003-10-15",
    nature: "binding",
    checked: "verified",
    checkedNote: "Read in the Federal Register.",
    target: "candle",
  }),
];
