import type { ScenarioItem } from "./scenario-types.ts";
import { shotsOf } from "./shots-of.ts";

/** Invented items of painted wood. No such objects, makers or marks exist. */
const second = "shelf-a-2026-09-19.csv";
const french = "carnet-c-2026-10-17.tsv";
const film = "carnet-c-2026-10-24.tsv";

export const wood: ScenarioItem[] = [
  {
    slug: "wooden-stacking-rings",
    name: "Wooden stacking rings, red, yellow and blue",
    aliases: ["ring stacker", "stacking tower", "painted rings on a post"],
    marks:
      "A whale burnt into the underside of the base. Five rings, two blue, two yellow, one red, on a bare post with a round top.",
    maker: null,
    gtin: "2500004170115",
    category: "toy",
    ageGroup: "child-under-3",
    materials: ["paint", "wood"],
    foodContact: false,
    mouthable: true,
    description:
      "Painted rings on a post. The red paint reads so near 90 mg/kg of lead that it is too close to call; the yellow paint holds much more, and unevenly. A reading of a thin coat takes in some of the wood. (Invented for the demonstration.)",
    state: "published",
    stateAt: "2026-10-28T17:20:00+01:00",
    review: {
      by: "reviewer",
      on: "2026-10-27",
      note: "Ten shots of 90 s on the red ring and still no side. Only a laboratory can tell. Film readings added.",
    },
    specimens: [
      {
        label: "tower 1",
        howGot: "bought second-hand for the shelf",
        whoPaid: "the shelf, 5.00 from the donation jar",
        gotOn: "2026-09-10",
        dateCode: null,
        condition: "used, toothmarks on two rings",
        components: [
          {
            key: "red",
            name: "red paint",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.05,
            areaCm2: 96,
            massG: null,
            readings: [
              shotsOf(second, "S06 stacking rings, red paint", "abcde"),
              shotsOf(film, "S06 anneaux, peinture rouge", "123"),
            ],
          },
          {
            key: "yellow",
            name: "yellow paint",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.05,
            areaCm2: 96,
            massG: null,
            readings: [
              shotsOf(second, "S06 stacking rings, yellow paint", "abcdefgh"),
              shotsOf(film, "S06 anneaux, peinture jaune", "1234"),
            ],
          },
          {
            key: "blue",
            name: "blue paint",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.05,
            areaCm2: 96,
            massG: null,
            readings: [shotsOf(second, "S06 stacking rings, blue paint", "abc")],
          },
          {
            key: "post",
            name: "bare wooden post",
            material: "wood",
            form: "bulk",
            accessible: true,
            thicknessMm: 18,
            areaCm2: 90,
            massG: 40,
            readings: [shotsOf(second, "S06 stacking rings, bare post", "ab")],
          },
        ],
      },
    ],
    setAside: [],
    photos: [
      {
        file: "wooden-stacking-rings-1.jpg",
        alt: "Drawing of a tower of red, yellow and blue wooden rings on a post, a ruler below",
      },
      {
        file: "wooden-stacking-rings-2.jpg",
        alt: "Drawing of one red ring from above with five lettered places where it was shot",
      },
    ],
  },
  {
    slug: "farmyard-peg-puzzle",
    name: "Farmyard peg puzzle",
    aliases: ["animal knob puzzle", "wooden tray puzzle", "duck and barn puzzle"],
    marks:
      "A wheelbarrow stamped on the back of the tray, and 5 PCS. Duck, barn, tree, sun and cloud with wooden pegs.",
    maker: null,
    gtin: "0220417000466",
    category: "puzzle-or-blocks",
    ageGroup: "child-under-3",
    materials: ["paint", "wood"],
    foodContact: false,
    mouthable: true,
    description:
      "Tray puzzle of five painted pieces. The green of the tree holds lead and chromium together; the red of the barn holds some lead. (Invented for the demonstration.)",
    state: "submitted",
    stateAt: "2026-11-14T16:50:00+01:00",
    review: null,
    specimens: [
      {
        label: "puzzle 1",
        howGot: "given by a grandparent",
        whoPaid: "nobody: a gift",
        gotOn: "2026-10-11",
        dateCode: null,
        condition: "used, paint rubbed off at the edges",
        components: [
          {
            key: "red",
            name: "red paint, barn",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.04,
            areaCm2: 34,
            massG: null,
            readings: [shotsOf(french, "T14 puzzle, peinture rouge", "1234")],
          },
          {
            key: "green",
            name: "green paint, tree",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.04,
            areaCm2: 41,
            massG: null,
            readings: [
              shotsOf(french, "T14 puzzle, peinture verte", "12345"),
              shotsOf(film, "T14 puzzle, peinture verte", "1234"),
            ],
          },
          {
            key: "tray",
            name: "bare wood, tray",
            material: "wood",
            form: "bulk",
            accessible: true,
            thicknessMm: 8,
            areaCm2: 560,
            massG: 310,
            readings: [shotsOf(french, "T14 puzzle, bois nu", "12")],
          },
        ],
      },
    ],
    setAside: [],
    photos: [
      {
        file: "farmyard-peg-puzzle-1.jpg",
        alt: "Drawing of a wooden tray puzzle with a duck, a red barn, a green tree, a sun and a cloud",
      },
    ],
  },
  {
    slug: "pull-along-blue-train",
    name: "Pull-along train, blue engine",
    aliases: ["wooden train", "blue locomotive on a string", "toy engine"],
    marks:
      "A teapot stencilled in white on the cab side, number 12 on the front. Blue engine, yellow wheels, red string.",
    maker: "Quimbleyard Toys (invented)",
    gtin: "2800004170086",
    category: "toy",
    ageGroup: "child-3-to-12",
    materials: ["paint", "wood", "steel"],
    foodContact: false,
    mouthable: true,
    description:
      "Wooden engine with a pull string. Its blue paint was also read as a film, by area, which needs no guess about the wood below. (Invented for the demonstration.)",
    state: "published",
    stateAt: "2026-10-28T17:48:00+01:00",
    review: { by: "reviewer", on: "2026-10-27", note: "Content and film readings kept apart, as they must be." },
    specimens: [
      {
        label: "train 1",
        howGot: "bought from a jumble table",
        whoPaid: "the shelf, 6.00 from the donation jar",
        gotOn: "2026-10-10",
        dateCode: "12",
        condition: "used, paint chipped at the buffers",
        components: [
          {
            key: "blue",
            name: "blue paint, engine",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.06,
            areaCm2: 145,
            massG: null,
            readings: [
              shotsOf(french, "T16 train, peinture bleue", "123"),
              shotsOf(film, "T16 train, peinture bleue", "1234"),
            ],
          },
          {
            key: "wheel",
            name: "yellow paint, wheels",
            material: "paint",
            form: "coating",
            accessible: true,
            thicknessMm: 0.04,
            areaCm2: 40,
            massG: null,
            readings: [shotsOf(french, "T16 train, roue jaune", "123")],
          },
          {
            key: "axle",
            name: "axles",
            material: "steel",
            form: "bulk",
            accessible: true,
            thicknessMm: 4,
            areaCm2: 14,
            massG: 16,
            readings: [shotsOf(french, "T16 train, essieu", "12")],
          },
        ],
      },
    ],
    setAside: [],
    photos: [
      {
        file: "pull-along-blue-train-1.jpg",
        alt: "Drawing of a blue wooden engine with yellow wheels and a red pull string",
      },
    ],
  },
];
