import {
  around,
  box,
  type Drawing,
  disc,
  ground,
  line,
  moved,
  oval,
  patch,
  polygon,
  shade,
  shape,
  tint,
  words,
} from "./drawing-kit.ts";

/** Drawings of the invented toys and other things for children. Coordinates are of a page of 1200 × 900. */

const bell: Drawing = {
  file: "brass-hand-bell-1.jpg",
  title: "Brass hand bell with turned handle",
  pixelsPerCm: 53,
  body:
    ground(596, 702, 210) +
    shape(
      "M560,300 C548,250 572,236 564,200 C552,150 570,112 590,112 C610,112 630,150 618,200 C610,236 634,250 622,300 Z",
      tint.wood,
    ) +
    line("M562,204 H620 M558,262 H624", 3) +
    shade("M606,118 C622,140 628,170 618,200 C610,236 634,250 622,300 H602 C612,250 596,236 602,200 Z") +
    shape(box(552, 292, 78, 26, 8), tint.brass) +
    shape(
      "M500,352 C510,326 540,316 591,316 C642,316 672,326 682,352 C692,440 700,540 740,610 Q768,652 776,672 L406,672 Q414,652 442,610 C482,540 490,440 500,352 Z",
      tint.brass,
    ) +
    shade(
      "M650,330 C672,336 680,344 682,352 C692,440 700,540 740,610 Q768,652 776,672 L690,672 C676,560 664,440 650,330 Z",
    ) +
    line("M498,372 Q591,394 684,372 M494,396 Q591,418 688,396", 3) +
    shape(oval(591, 672, 186, 34), "#8d6a2c") +
    shape(disc(596, 690, 24), tint.grey) +
    shade(disc(600, 694, 24)) +
    line("M530,420 q-6,110 -44,190", 8, "#f0d592"),
};

const starPoints = around(610, 470, 232, 10).map(([x, y], i): [number, number] =>
  i % 2 === 0 ? [x, y] : [610 + (x - 610) * 0.44, 470 + (y - 470) * 0.44],
);
const star: Drawing = {
  file: "zinc-star-key-ring-1.jpg",
  title: "Star key ring, grey metal",
  pixelsPerCm: 170,
  body:
    ground(640, 640, 190, 30) +
    line(disc(452, 238, 92), 17, "#7b7870") +
    line(disc(452, 238, 92), 3, tint.pale) +
    line("M452,146 a92,92 0 0 1 80,46", 4) +
    line(oval(572, 262, 44, 15), 9, "#7b7870") +
    shape(polygon(starPoints), tint.grey, { width: 5 }) +
    starPoints.map(([x, y]) => line(`M610,470 L${x.toFixed(1)},${y.toFixed(1)}`, 2)).join("") +
    [1, 3, 5, 7, 9]
      .map((i) => {
        const [ax, ay] = starPoints[i]!;
        const [bx, by] = starPoints[(i + 1) % 10]!;
        return shade(`M610,470 L${ax},${ay} L${bx},${by} Z`);
      })
      .join("") +
    shape(disc(610, 284, 15), tint.paper) +
    [2, 4, 6]
      .map((i) => {
        const at = starPoints[i]!;
        const towards = (to: [number, number]): [number, number] => [
          at[0] + (to[0] - at[0]) * 0.2,
          at[1] + (to[1] - at[1]) * 0.2,
        ];
        return patch(
          polygon([
            at,
            towards(starPoints[i - 1]!),
            [610 + (at[0] - 610) * 0.86, 470 + (at[1] - 470) * 0.86],
            towards(starPoints[i + 1]!),
          ]),
          tint.copper,
          0.8,
        );
      })
      .join(""),
};

const pear = (): string =>
  shape("M0,-44 C18,-44 22,-14 36,6 C52,36 28,62 0,62 C-28,62 -52,36 -36,6 C-22,-14 -18,-44 0,-44 Z", "#a8b45c", {
    width: 2.5,
  }) +
  line("M0,-44 q2,-20 12,-26", 4, tint.brick) +
  shape("M4,-56 q26,-22 44,-4 q-22,20 -44,4 Z", tint.leaf, { width: 2 }) +
  line("M-18,20 q4,18 16,24", 4, tint.cream);

const bib: Drawing = {
  file: "wipe-clean-bib-with-pears-1.jpg",
  title: "Wipe-clean bib with pears",
  pixelsPerCm: 21,
  body:
    ground(604, 718, 250, 16) +
    shape(
      "M500,118 C400,130 390,240 356,310 C330,400 340,560 356,640 Q366,712 440,714 L750,714 Q820,712 830,640 C846,560 856,400 830,310 C796,240 786,130 686,118 C664,114 656,138 672,150 C724,196 722,306 593,310 C464,306 462,196 514,150 C530,138 522,114 500,118 Z",
      "#f3e3c4",
      { width: 14, stroke: tint.sage },
    ) +
    line(
      "M500,118 C400,130 390,240 356,310 C330,400 340,560 356,640 Q366,712 440,714 L750,714 Q820,712 830,640 C846,560 856,400 830,310 C796,240 786,130 686,118",
      3,
    ) +
    moved(440, 430, pear(), -8) +
    moved(546, 456, pear(), 6) +
    moved(650, 448, pear(), -4) +
    moved(752, 424, pear(), 10) +
    shape("M372,590 Q593,640 816,590 L812,660 Q806,698 750,698 L440,698 Q384,698 376,660 Z", "#fbf1da", { width: 3 }) +
    shade("M372,590 Q593,640 816,590 L816,606 Q593,658 373,606 Z") +
    shade("M786,230 C830,300 856,400 830,640 Q820,700 780,712 C810,560 816,400 770,280 Z") +
    shape(disc(510, 140, 17), tint.brass, { width: 3 }) +
    shape(disc(676, 140, 17), tint.brass, { width: 3 }) +
    line(disc(510, 140, 8), 2) +
    line(disc(676, 140, 8), 2) +
    shape(box(806, 360, 64, 40, 4), tint.white, { width: 2.5 }) +
    line("M822,388 h32 l-6,8 h-20 Z M838,370 v18 l12,-2 Z", 2),
};

const leafPrint = (x: number, y: number, turn: number): string =>
  moved(
    x,
    y,
    shape("M0,-22 C16,-10 14,14 0,24 C-14,14 -16,-10 0,-22 Z", tint.blue, { width: 1.5 }) +
      line("M0,-16 V20", 1.5, tint.cream),
    turn,
  );

const ear = (flip: number): string =>
  `<g transform="scale(${flip} 1)">` +
  shape("M16,0 C6,-90 20,-230 78,-238 C136,-232 120,-80 76,8 Z", "#e6d3b5") +
  shape("M34,-20 C30,-100 40,-196 78,-204 C112,-196 98,-80 72,-10 Z", tint.cream, { width: 2.5 }) +
  [
    [66, -170, 10],
    [82, -130, -20],
    [56, -112, 24],
    [78, -78, 8],
    [56, -50, -18],
  ]
    .map(([x, y, t]) => leafPrint(x!, y!, t!))
    .join("") +
  "</g>";

const rabbit: Drawing = {
  file: "floppy-printed-rabbit-1.jpg",
  title: "Floppy rabbit with printed ears",
  pixelsPerCm: 18,
  body:
    ground(596, 708, 250) +
    moved(600, 300, ear(1), 14) +
    moved(580, 300, ear(-1), -22) +
    shape("M480,690 C440,590 470,470 590,462 C710,470 740,590 700,690 Z", "#e6d3b5") +
    shade("M650,480 C716,520 730,610 700,690 H650 C690,620 690,540 650,480 Z") +
    shape("M474,540 C420,560 400,620 424,650 C450,660 480,620 500,580 Z", "#e6d3b5") +
    shape("M706,540 C760,560 780,620 756,650 C730,660 700,620 680,580 Z", "#e6d3b5") +
    shape("M430,690 C420,640 500,626 530,660 C556,692 530,712 490,712 C450,712 434,708 430,690 Z", "#dcc6a4") +
    shape("M750,690 C760,640 680,626 650,660 C624,692 650,712 690,712 C730,712 746,708 750,690 Z", "#dcc6a4") +
    shape(
      "M480,380 C476,300 530,262 590,262 C650,262 704,300 700,380 C696,450 650,482 590,482 C530,482 484,450 480,380 Z",
      "#e6d3b5",
    ) +
    shade("M660,290 C700,320 710,380 690,420 C670,462 640,480 600,482 C660,440 676,360 660,290 Z") +
    patch(oval(520, 408, 26, 18), tint.red, 0.3) +
    patch(oval(660, 408, 26, 18), tint.red, 0.3) +
    patch(disc(548, 362, 15), tint.ink) +
    patch(disc(632, 362, 15), tint.ink) +
    patch(disc(553, 357, 4), tint.white) +
    patch(disc(637, 357, 4), tint.white) +
    shape("M574,400 H606 Q590,424 574,400 Z", tint.plum, { width: 2.5 }) +
    line("M590,416 v16 q-18,20 -34,6 M590,432 q18,20 34,6", 3) +
    line("M590,500 v150 M576,520 h28 M576,550 h28 M576,580 h28 M576,610 h28", 2, tint.brick),
};

const boat: Drawing = {
  file: "bath-boat-yellow-funnel-1.jpg",
  title: "Bath boat with yellow funnel",
  pixelsPerCm: 52,
  body:
    line("M180,700 q40,-30 80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0", 5, tint.blue) +
    shape("M524,300 L534,190 Q590,172 646,190 L656,300 Z", tint.ochre) +
    shape("M530,232 Q590,216 650,232 L652,262 Q590,246 527,262 Z", tint.red, { width: 3 }) +
    shape(oval(590, 188, 56, 13), "#7a5a22") +
    line("M600,160 q20,-30 -6,-46 q-20,-20 10,-34", 5, tint.grey) +
    shape("M396,420 L410,320 Q420,296 450,296 L730,296 Q760,296 770,320 L784,420 Z", tint.white) +
    shade("M700,296 H730 Q760,296 770,320 L784,420 H720 Z") +
    shape(disc(480, 360, 28), tint.sky) +
    shape(disc(590, 360, 28), tint.sky) +
    shape(disc(700, 360, 28), tint.sky) +
    shape("M250,410 Q590,452 930,410 C920,540 880,664 780,676 L400,676 C300,664 262,540 250,410 Z", tint.red) +
    shade("M930,410 C920,540 880,664 780,676 L690,676 C800,640 850,540 860,420 Z") +
    line("M258,462 Q590,506 922,462", 7, tint.cream) +
    line("M300,520 q14,60 50,100", 8, "#e59a83") +
    shape(disc(590, 580, 46), tint.white, { width: 3 }) +
    line("M590,550 v54 m-24,-20 q4,26 24,26 q20,0 24,-26 M576,562 h28", 4) +
    line("M200,726 q40,-30 80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0 t80,0", 4, tint.sky),
};

const cube = (fill: string, top: string): string =>
  shape("M-36,-118 C-36,-140 36,-140 36,-118 L36,-84 C36,-64 -36,-64 -36,-84 Z", top) +
  shape(oval(0, -120, 36, 13), top) +
  shape("M-120,-60 L0,-112 L120,-60 L0,-6 Z", top) +
  shape("M-36,-118 L-36,-74 C-30,-56 30,-56 36,-74 L36,-118 C36,-102 -36,-102 -36,-118 Z", top, { width: 3 }) +
  shape(oval(0, -119, 36, 13), top, { width: 3 }) +
  shape("M-120,-60 L0,-6 V140 L-120,84 Z", fill) +
  shape("M120,-60 L0,-6 V140 L120,84 Z", fill) +
  shade("M120,-60 L0,-6 V140 L120,84 Z") +
  line("M-102,-36 v70", 6, tint.white);

const blocks: Drawing = {
  file: "click-blocks-three-colours-1.jpg",
  title: "Click blocks in three colours",
  pixelsPerCm: 56,
  body:
    ground(470, 688, 220) +
    ground(800, 700, 160) +
    moved(440, 520, cube(tint.red, "#cd5a41"), 0, 1.28) +
    moved(440, 266, cube(tint.blue, "#5a83a8"), 0, 1.28) +
    moved(790, 530, cube(tint.ochre, "#ebc269"), 8, 1.28),
};

const torus = (y: number, w: number, fill: string): string =>
  shape(`M${590 - w},${y} q-8,-44 36,-44 H${554 + w} q44,0 36,44 q8,44 -36,44 H${626 - w} q-44,0 -36,-44 Z`, fill) +
  shade(`M${500 + w},${y - 44} H${554 + w} q44,0 36,44 q8,44 -36,44 H${500 + w} q30,-44 0,-88 Z`) +
  line(`M${610 - w},${y - 10} q2,-18 24,-20`, 6, tint.cream);

const rings: Drawing = {
  file: "wooden-stacking-rings-1.jpg",
  title: "Wooden stacking rings",
  pixelsPerCm: 36,
  body:
    ground(596, 716, 280) +
    shape(box(556, 150, 68, 520, 20), tint.wood) +
    shape(disc(590, 136, 44), tint.wood) +
    line("M574,180 v30 M600,176 v40", 2) +
    torus(260, 104, tint.blue) +
    torus(346, 128, tint.ochre) +
    torus(432, 150, tint.red) +
    torus(518, 172, tint.blue) +
    torus(604, 196, tint.ochre) +
    shape(box(350, 650, 480, 60, 16), tint.wood) +
    line("M380,676 q110,-14 210,0 t200,-4 M400,694 q90,-8 160,0", 2, "#a87b46") +
    shade(box(690, 652, 138, 56, 16)) +
    patch(oval(462, 446, 12, 6), tint.brick, 0.7) +
    patch(oval(484, 450, 10, 6), tint.brick, 0.7),
};

const spotNames = ["a", "b", "c", "d", "e"];
const ringSpots: Drawing = {
  file: "wooden-stacking-rings-2.jpg",
  title: "Stacking rings, red ring: where it was shot",
  pixelsPerCm: 66,
  body:
    ground(612, 444, 318, 300) +
    shape(disc(590, 425, 306), tint.red) +
    shade("M590,119 A306,306 0 0 1 590,731 A330,330 0 0 0 590,119 Z") +
    shape(disc(590, 425, 116), tint.paper) +
    shape(disc(590, 425, 96), tint.wood, { width: 3 }) +
    line("M540,400 q50,-20 100,4 M532,440 q60,-16 116,4", 2, "#a87b46") +
    line("M352,330 q60,-130 190,-158", 9, "#e59a83") +
    around(590, 425, 214, 5, 0.4)
      .map(
        ([x, y], i) =>
          line(disc(x, y, 26), 4, tint.cream) +
          line(`M${x - 36},${y} h16 M${x + 20},${y} h16 M${x},${y - 36} v16 M${x},${y + 20} v16`, 3, tint.cream) +
          words(x + 34, y - 24, 44, spotNames[i]!, tint.cream),
      )
      .join(""),
};

const peg = (x: number, y: number): string =>
  shape(disc(x, y, 15), tint.wood, { width: 3 }) + shade(disc(x + 2, y + 2, 15));

const puzzle: Drawing = {
  file: "farmyard-peg-puzzle-1.jpg",
  title: "Farmyard peg puzzle",
  pixelsPerCm: 30,
  body:
    ground(606, 430, 406, 318) +
    shape(box(196, 112, 790, 630, 26), tint.wood) +
    line(
      "M214,180 q200,-14 380,0 t370,-8 M214,690 q180,14 390,0 t360,6 M214,420 q120,10 200,0 M760,430 q110,-12 206,0",
      2,
      "#b98c56",
    ) +
    shape(box(236, 150, 710, 554, 18), "#e6c493", { width: 3 }) +
    shape("M290,470 V350 L390,270 L490,350 V470 Z", tint.red) +
    shape("M360,470 V400 H420 V470 Z", tint.cream, { width: 3 }) +
    line("M360,400 L420,470 M420,400 L360,470", 3) +
    peg(390, 340) +
    shape(
      "M700,500 V440 C620,440 600,360 650,330 C640,260 720,220 760,260 C820,230 880,290 850,340 C890,390 840,450 750,440 V500 Z",
      tint.leaf,
    ) +
    shade("M790,260 C840,260 880,300 850,340 C890,390 840,450 770,440 C830,400 830,330 790,260 Z") +
    shape("M704,500 V442 H746 V500 Z", "#8a623a", { width: 3 }) +
    peg(740, 350) +
    shape(
      "M380,620 C390,580 450,570 490,590 C500,560 510,530 546,530 C580,532 590,566 566,590 C600,640 560,680 480,680 C420,680 380,660 380,620 Z",
      tint.ochre,
    ) +
    shape("M576,552 l34,8 l-30,16 Z", "#d9803b", { width: 3 }) +
    patch(disc(552, 554, 6), tint.ink) +
    line("M430,626 q40,34 84,4", 3) +
    peg(474, 634) +
    shape(
      polygon(
        around(560, 262, 74, 24).map(([x, y], i): [number, number] =>
          i % 2 ? [560 + (x - 560) * 0.78, 262 + (y - 262) * 0.78] : [x, y],
        ),
      ),
      "#ecc65a",
    ) +
    peg(560, 262) +
    shape(
      "M660,650 C620,650 620,600 664,602 C670,560 740,556 752,590 C790,566 836,600 820,630 C850,640 840,668 810,668 H680 C664,668 658,660 660,650 Z",
      tint.sky,
    ) +
    peg(742, 626),
};

const wheel = (x: number, y: number, r: number): string =>
  shape(disc(x, y, r), tint.ochre) +
  shade(`M${x},${y - r} A${r},${r} 0 0 1 ${x},${y + r} A${r * 1.4},${r * 1.4} 0 0 0 ${x},${y - r} Z`) +
  line(disc(x, y, r * 0.66), 3) +
  shape(disc(x, y, r * 0.2), tint.grey, { width: 3 });

const train: Drawing = {
  file: "pull-along-blue-train-1.jpg",
  title: "Pull-along train, blue engine",
  pixelsPerCm: 44,
  body:
    ground(620, 700, 350) +
    line("M300,590 C220,600 190,640 210,690 C226,730 170,730 150,700", 6, tint.red) +
    shape(disc(146, 694, 17), tint.wood) +
    shape(box(290, 540, 660, 64, 10), tint.wood) +
    shape("M402,250 L412,340 H488 L498,250 Z", tint.red) +
    shape(oval(450, 250, 50, 14), tint.brick) +
    shape("M330,340 H690 V540 H330 C300,540 296,340 330,340 Z", tint.blue) +
    shape(oval(330, 440, 34, 100), "#5a83a8") +
    words(312, 462, 54, "12", tint.cream) +
    line("M470,342 V538 M580,342 V538", 6, tint.ochre) +
    shape("M540,340 q0,-52 40,-52 q40,0 40,52 Z", tint.ochre) +
    shape("M680,240 H900 V540 H680 Z", tint.blue) +
    shape(box(656, 206, 268, 40, 12), tint.red) +
    shape(box(716, 282, 148, 96, 10), tint.cream) +
    shade("M852,250 H900 V540 H840 Z") +
    shade("M330,500 H690 V540 H330 Z") +
    moved(
      790,
      450,
      shape(
        "M-40,-14 H36 Q34,34 0,36 Q-36,34 -40,-14 Z M36,-6 q26,-2 22,16 q-4,14 -26,10 M-40,4 l-24,-14 l2,-10",
        tint.white,
        { width: 3 },
      ) + line("M-18,-16 q18,-16 36,0", 3),
    ) +
    wheel(400, 624, 74) +
    wheel(580, 640, 58) +
    wheel(800, 610, 88) +
    line("M350,372 q60,-12 110,-8", 7, tint.sky) +
    patch(
      polygon([
        [944, 540],
        [950, 552],
        [940, 566],
        [950, 584],
        [950, 540],
      ]),
      tint.cream,
    ),
};

export const nurseryDrawings: Drawing[] = [bell, star, bib, rabbit, boat, blocks, rings, ringSpots, puzzle, train];
