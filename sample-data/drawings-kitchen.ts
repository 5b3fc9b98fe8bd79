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

/** Drawings of the invented kitchenware. Coordinates are of a page of 1200 × 900. */

const poppy = (size: number): string =>
  line(`M0,${size * 0.5} q${-size * 0.3},${size} ${size * 0.05},${size * 2}`, 4, tint.leaf) +
  patch(
    `M${size * 0.02},${size * 1.5} q${size * 0.5},${-size * 0.5} ${size * 0.8},${-size * 0.1} q${-size * 0.4},${size * 0.3} ${-size * 0.8},${size * 0.1} Z`,
    tint.leaf,
  ) +
  [0, 90, 180, 270]
    .map((a) => moved(0, 0, shape(oval(0, -size * 0.52, size * 0.52, size * 0.5), tint.red, { width: 2.5 }), a))
    .join("") +
  patch(disc(0, 0, size * 0.24), tint.ink) +
  around(0, 0, size * 0.38, 9)
    .map(([x, y]) => patch(disc(x, y, 3), tint.ink))
    .join("");

const mug: Drawing = {
  file: "red-band-poppy-mug-1.jpg",
  title: "Poppy mug with red band",
  pixelsPerCm: 47,
  body:
    ground(590, 706, 260) +
    shape(
      "M770,330 C900,290 950,400 905,500 C880,560 820,590 762,590 L768,540 C820,535 850,500 860,450 C872,390 840,365 776,388 Z",
      tint.cream,
    ) +
    shape(
      "M382,220 C386,400 396,560 408,640 Q416,700 480,704 L690,704 Q754,700 762,640 C774,560 784,400 788,220 Z",
      tint.cream,
    ) +
    shade("M700,262 C696,420 690,560 660,704 L690,704 Q754,700 762,640 C774,560 782,420 786,250 Z") +
    shape("M382,220 C384,250 384,272 385,290 Q585,352 785,290 C786,272 787,250 788,220 Q585,290 382,220 Z", tint.red) +
    shape(oval(585, 220, 203, 40), tint.straw) +
    patch(oval(585, 230, 170, 26), tint.brick, 0.25) +
    moved(470, 440, poppy(52)) +
    moved(610, 490, poppy(60)) +
    moved(715, 420, poppy(38)) +
    moved(540, 600, poppy(26)) +
    line("M418,672 Q585,716 752,672", 2.5),
};

const hen = (): string =>
  shape(
    "M-70,10 C-60,-50 -10,-20 20,-28 C40,-80 80,-74 78,-40 L98,-30 L76,-20 C70,40 20,60 -20,52 C-60,46 -74,34 -70,10 Z",
    tint.straw,
    { width: 3, stroke: tint.brick },
  ) +
  line("M-10,54 l-6,34 l-14,4 m14,-4 l14,6 M22,50 l4,36 l-14,6 m14,-6 l14,4 M-40,8 q20,24 50,4", 3, tint.brick) +
  patch(disc(62, -48, 4), tint.brick) +
  shape("M44,-72 q6,-26 16,-6 q8,-22 14,2 q12,-10 8,12 Z", tint.red, { width: 2 });

const mugFoot: Drawing = {
  file: "red-band-poppy-mug-2.jpg",
  title: "Poppy mug, marks under the foot",
  pixelsPerCm: 80,
  body:
    ground(606, 436, 322, 312) +
    shape(disc(590, 425, 310), tint.cream) +
    shape(disc(590, 425, 250), tint.clay, { opacity: 0.65 }) +
    shape(disc(590, 425, 214), tint.white) +
    shade("M590,115 A310,310 0 0 1 590,735 A330,340 0 0 0 590,115 Z") +
    line(oval(560, 400, 140, 105), 5, tint.brick) +
    line(oval(560, 400, 128, 94), 2, tint.brick) +
    moved(552, 402, hen()) +
    words(700, 590, 92, "7", tint.brick),
};

const cornflower = (r: number): string =>
  around(0, 0, r * 0.62, 9)
    .map(([x, y], i) =>
      moved(
        x,
        y,
        shape(
          `M0,${r * 0.35} L${-r * 0.22},${-r * 0.35} L${-r * 0.07},${-r * 0.2} L0,${-r * 0.42} L${r * 0.07},${-r * 0.2} L${r * 0.22},${-r * 0.35} Z`,
          tint.blue,
          { width: 1.6 },
        ),
        i * 40,
      ),
    )
    .join("") + patch(disc(0, 0, r * 0.26), tint.plum);

const garland = around(590, 420, 262, 14)
  .map(([x, y], i) => {
    const turn = (i / 14) * 360;
    const sprig = shape("M-4,0 q30,-26 56,-2 q-28,22 -56,2 Z", tint.leaf, { width: 1.6 });
    return moved(x, y, sprig, turn + 8) + moved(x, y, cornflower(i % 3 === 0 ? 46 : 30), turn);
  })
  .join("");

const plate: Drawing = {
  file: "cornflower-transfer-plate-1.jpg",
  title: "Dinner plate with cornflower transfer",
  pixelsPerCm: 25,
  body:
    ground(612, 436, 336, 326) +
    shape(disc(590, 420, 328), tint.white) +
    line(disc(590, 420, 314), 2, tint.blue) +
    garland +
    shape(disc(590, 420, 198), tint.white, { width: 3 }) +
    shade("M590,222 A198,198 0 0 0 590,618 A222,210 0 0 1 590,222 Z") +
    line("M470,330 q40,-60 110,-70", 3, tint.grey),
};

const fan = (x: number, y: number): string =>
  [-34, -17, 0, 17, 34].map((a) => moved(x, y, line("M0,0 V-92", 3), a)).join("") +
  line(`M${x - 52},${y - 76} q52,-40 104,0`, 3);

const tumbler: Drawing = {
  file: "cut-crystal-tumbler-1.jpg",
  title: "Cut crystal tumbler, star base",
  pixelsPerCm: 58,
  body:
    ground(590, 700, 230) +
    shape("M370,170 L408,650 Q412,704 470,704 L710,704 Q768,704 772,650 L810,170 Z", tint.sky, { opacity: 0.55 }) +
    patch("M392,250 L410,640 L770,640 L788,250 Q590,300 392,250 Z", tint.white, 0.4) +
    shade("M716,180 L690,704 L710,704 Q768,704 772,650 L806,180 Z") +
    [0, 1, 2, 3].map((i) => fan(446 + i * 96, 640)).join("") +
    [0, 1, 2, 3, 4]
      .map((i) =>
        shape(
          polygon([
            [432 + i * 80, 352],
            [472 + i * 80, 410],
            [432 + i * 80, 468],
            [392 + i * 80, 410],
          ]),
          tint.white,
          { width: 3, opacity: 0.5 },
        ),
      )
      .join("") +
    [0, 1, 2, 3, 4].map((i) => line(`M${412 + i * 80},381 l40,58 M${452 + i * 80},381 l-40,58`, 2)).join("") +
    line("M388,330 Q590,372 792,330 M398,488 Q590,530 782,488", 3) +
    shape(oval(590, 170, 220, 42), tint.white, { opacity: 0.65 }) +
    line(oval(590, 172, 200, 33), 2.5) +
    line("M420,300 l20,300 M436,250 l4,60", 5, tint.white) +
    line("M424,668 Q590,712 756,668", 3),
};

const jar: Drawing = {
  file: "swing-top-storage-jar-1.jpg",
  title: "Swing-top storage jar, one litre",
  pixelsPerCm: 32,
  body:
    ground(590, 708, 200) +
    shape(
      "M440,290 C420,320 416,340 416,380 L416,650 Q416,708 470,708 L710,708 Q764,708 764,650 L764,380 C764,340 760,320 740,290 Z",
      tint.glass,
      { opacity: 0.85 },
    ) +
    shade("M690,300 L700,708 L710,708 Q764,708 764,650 L764,380 C764,340 760,320 740,290 Z") +
    shape(box(436, 262, 308, 28, 12), "#d9803b") +
    shape("M446,260 C448,190 520,160 590,160 C660,160 732,190 734,260 Z", tint.glass, { opacity: 0.85 }) +
    shape("M560,160 q0,-40 30,-40 q30,0 30,40 Z", tint.glass) +
    line("M430,300 H750 M590,138 C450,140 400,220 428,300 M590,138 C730,140 780,220 752,300", 6, "#6d6a62") +
    shape("M752,296 l44,16 l-6,112 q-20,20 -34,0 Z", tint.pale, { width: 5 }) +
    line("M452,400 V620 M470,360 V440", 6, tint.white) +
    shape(box(500, 440, 180, 130, 8), tint.white, { width: 2.5, opacity: 0.85 }) +
    words(524, 500, 38, "dried") +
    words(524, 546, 38, "peas"),
};

const bowl = (w: number, h: number, fill: string, inside: string): string =>
  ground(0, h + 14, w * 0.62, 16) +
  shape(`M${-w * 0.3},${h} h${w * 0.6} v18 h${-w * 0.6} Z`, tint.clay) +
  shape(
    `M${-w},0 C${-w * 0.94},${h * 0.62} ${-w * 0.5},${h} ${-w * 0.3},${h} H${w * 0.3} C${w * 0.5},${h} ${w * 0.94},${h * 0.62} ${w},0 Z`,
    fill,
  ) +
  shade(
    `M${w * 0.45},20 C${w * 0.42},${h * 0.6} ${w * 0.3},${h * 0.9} ${w * 0.2},${h} H${w * 0.3} C${w * 0.5},${h} ${w * 0.94},${h * 0.62} ${w},6 Z`,
  ) +
  shape(oval(0, 0, w, w * 0.24), inside) +
  shade(
    `M${-w * 0.92},6 A${w},${w * 0.24} 0 0 1 ${w * 0.5},${-w * 0.2} A${w * 1.1},${w * 0.3} 0 0 0 ${-w * 0.92},6 Z`,
  ) +
  line(`M${-w * 0.72},${h * 0.3} q${w * 0.1},${h * 0.25} ${w * 0.22},${h * 0.38}`, 5, tint.white);

const bowls: Drawing = {
  file: "harlequin-nesting-bowls-1.jpg",
  title: "Harlequin nesting bowls, set of three",
  pixelsPerCm: 20,
  body:
    moved(880, 350, bowl(230, 300, tint.sage, "#7f9570")) +
    moved(500, 430, bowl(180, 240, tint.plum, "#6a3853")) +
    moved(262, 530, bowl(130, 150, tint.ochre, "#e8bb55")),
};

const pot: Drawing = {
  file: "red-enamel-stock-pot-1.jpg",
  title: "Red enamel stock pot, white inside",
  pixelsPerCm: 24,
  body:
    ground(590, 700, 300) +
    shape("M330,400 C250,380 240,480 330,478 L330,454 C286,452 288,420 330,428 Z", tint.ink) +
    shape("M850,400 C930,380 940,480 850,478 L850,454 C894,452 892,420 850,428 Z", tint.ink) +
    shape("M326,330 L334,640 Q340,702 404,702 L776,702 Q840,702 846,640 L854,330 Z", tint.red) +
    shade("M740,350 L720,702 L776,702 Q840,702 846,640 L852,350 Z") +
    shape(oval(590, 330, 264, 48), tint.ink) +
    shape(oval(590, 328, 250, 40), tint.white) +
    [
      [470, 330],
      [540, 345],
      [610, 322],
      [690, 340],
      [735, 325],
      [505, 315],
      [655, 352],
    ]
      .map(([x, y]) => patch(disc(x!, y!, 3.5), tint.grey))
      .join("") +
    moved(
      640,
      236,
      shape("M-262,40 C-240,-30 -90,-50 0,-50 C90,-50 240,-30 262,40 Q0,92 -262,40 Z", tint.red) +
        shade("M120,-36 C200,-20 250,0 262,40 Q190,62 130,66 Z") +
        shape(box(-44, -86, 88, 34, 14), tint.ink),
      -9,
    ) +
    patch("M376,600 l26,-8 l8,26 l-20,16 l-22,-14 Z", "#4b4640") +
    line("M372,420 q-6,110 4,170", 7, "#e59a83"),
};

const spoon: Drawing = {
  file: "child-spoon-green-handle-1.jpg",
  title: "Child’s spoon with green handle",
  pixelsPerCm: 64,
  body: moved(
    590,
    430,
    `<path d="M-340,46 C-300,120 420,120 440,40 Z" fill="url(#hatch)"/>` +
      shape("M-120,-22 C-60,-18 -40,-16 20,-14 L20,18 C-40,18 -60,22 -120,26 Z", tint.pale) +
      shape(
        "M-400,0 C-400,-90 -290,-110 -210,-70 C-160,-46 -130,-30 -100,-24 L-100,28 C-130,34 -160,50 -210,72 C-290,112 -400,92 -400,0 Z",
        tint.pale,
      ) +
      line("M-372,0 C-370,-66 -290,-82 -220,-48 M-372,0 C-370,60 -300,84 -226,56", 2.5) +
      shade("M-372,0 C-370,60 -300,84 -226,56 C-200,40 -180,30 -170,10 C-240,60 -330,50 -372,0 Z") +
      line("M-330,-40 q40,-34 80,-18", 6, tint.white) +
      shape("M10,-26 C120,-60 300,-66 390,-50 C440,-40 446,34 394,50 C300,70 120,62 10,30 Z", tint.leaf) +
      shade("M30,22 C140,40 300,44 412,18 C414,30 410,42 394,50 C300,70 120,62 20,32 Z") +
      line(
        "M330,-4 m-36,0 a34,30 0 1,1 50,26 a22,20 0 1,1 -20,-34 a12,11 0 1,0 8,14 M270,30 h92 q20,-4 18,-28",
        3.5,
        tint.cream,
      ),
    -14,
    1.12,
  ),
};

const scallops = Array.from({ length: 8 }, (_, i) => {
  const top = 402 + i * 47.5;
  const foot = 316 + i * 70;
  return shape(
    `M${foot},664 C${foot + 8},580 ${top - 6},500 ${top},440 Q${top + 24},404 ${top + 48},440 C${top + 54},500 ${foot + 62},580 ${foot + 70},664 Q${foot + 35},716 ${foot},664 Z`,
    tint.copper,
  );
}).join("");

const mould: Drawing = {
  file: "tinned-copper-jelly-mould-1.jpg",
  title: "Tinned copper jelly mould, scalloped",
  pixelsPerCm: 38,
  body:
    ground(595, 700, 310) +
    shape("M410,430 C420,330 480,280 590,276 C700,280 760,330 772,430 Z", "#d08750") +
    shape("M500,286 C510,210 540,190 590,188 C640,190 670,210 682,286 Q590,310 500,286 Z", "#d08750") +
    scallops +
    shade("M724,440 C740,520 780,590 800,690 Q850,716 872,664 C858,580 788,500 782,440 Z") +
    shade("M640,200 Q676,226 680,284 Q660,292 640,294 Z") +
    shade("M680,300 C740,330 764,370 770,428 Q740,436 716,440 C716,380 706,340 680,300 Z") +
    shape("M406,424 Q590,462 776,424 L776,444 Q590,482 406,444 Z", tint.pale, { width: 3 }) +
    shape("M300,662 Q590,738 880,662 L880,690 Q590,766 300,690 Z", tint.copper) +
    line("M880,672 q60,-30 60,20 q-4,34 -56,10", 7, tint.brick) +
    line("M416,490 q-16,90 -40,150 M500,324 q-24,22 -36,64 M536,214 q-12,16 -14,40", 6, "#eeb98d"),
};

export const kitchenDrawings: Drawing[] = [mug, mugFoot, plate, tumbler, jar, bowls, pot, spoon, mould];
