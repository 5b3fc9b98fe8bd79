import type { ReactNode } from "react";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { ScaleDrawing } from "@/app/_components/scale-drawing.tsx";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import {
  areaLabel,
  areaNote,
  areaTableCaption,
  areaTitle,
  ballRow,
  ballSource,
  comparatorArea,
  grainScaleNote,
  grainTableCaption,
  grainTitle,
} from "@/lib/wording/amount-figures.ts";
import { coinSentence, comparatorSource, estimateText, massText } from "@/lib/wording/amounts.ts";
import { significant, withUnit } from "@/lib/wording/formats.ts";
import { areaOf, drawnCoins, grainOf } from "./amount-drawings.ts";

/** `folded`: the table behind the drawing is there to open, where a page has much else to say. */
type FigureProps = { result: AmountsResult; folded?: boolean };

function Behind({ caption, folded, children }: { caption: string; folded: boolean; children: ReactNode }) {
  return folded ? <Disclosure summary={caption}>{children}</Disclosure> : children;
}

/** The ball of an amount beside coins on a ruler, and the sizes drawn. Nothing where the metal's density is not known. */
export function GrainFigure({ result, folded = false }: FigureProps) {
  const [narrow, wide] = [grainOf(result, "narrow"), grainOf(result, "wide")];
  const { grain, amount, element } = result;
  if (!narrow || !wide || !grain || !amount) return null;
  const rows = [
    {
      id: "grain",
      name: ballRow(element),
      across: grain.diameterMm,
      mass: massText(grain.massMg),
      source: ballSource(grain.density),
    },
    ...drawnCoins.map((one) => ({
      id: one.id,
      name: one.name,
      across: one.coin.diameter,
      mass: massText(one.mass, 4),
      source: comparatorSource(one),
    })),
  ];
  return (
    <ScaleDrawing
      drawings={{ narrow, wide }}
      title={grainTitle(amount, grain, element)}
      note={`${grainScaleNote([narrow.scale, wide.scale])} ${coinSentence}`}
      table={
        <Behind caption={grainTableCaption} folded={folded}>
          <DataTable
            caption={grainTableCaption}
            hideCaption={folded}
            rows={rows}
            rowKey={(row) => row.id}
            columns={[
              { key: "name", head: "What", cell: (row) => row.name },
              {
                key: "across",
                head: "Across",
                numeric: true,
                cell: (row) => withUnit(significant(row.across, row.id === "grain" ? 2 : 4), "mm"),
              },
              { key: "mass", head: "Weight", numeric: true, cell: (row) => row.mass },
              { key: "source", head: "Size from", roomy: true, cell: (row) => row.source },
            ]}
          />
        </Behind>
      }
    />
  );
}

/** The area of an amount at the loading picked beside things of known size, and the areas drawn. */
export function AreaFigure({ result, folded = false }: FigureProps) {
  const [narrow, wide] = [areaOf(result, "narrow"), areaOf(result, "wide")];
  const { spread, nearestArea } = result;
  if (!narrow || !wide || !spread) return null;
  const rows = [
    { id: "area", name: areaLabel(spread), area: estimateText(spread.area), times: "1", source: "worked out" },
    ...nearestArea.map(({ comparator, times }) => ({
      id: comparator.id,
      name: comparator.name,
      area: comparatorArea(comparator),
      times: significant(times, 2),
      source: comparatorSource(comparator),
    })),
  ];
  const certain = spread.area.atMost || spread.area.interval[0] === spread.area.interval[1];
  return (
    <ScaleDrawing
      drawings={{ narrow, wide }}
      title={areaTitle(spread, nearestArea)}
      note={areaNote(!certain)}
      table={
        <Behind caption={areaTableCaption} folded={folded}>
          <DataTable
            caption={areaTableCaption}
            hideCaption={folded}
            rows={rows}
            rowKey={(row) => row.id}
            columns={[
              { key: "name", head: "What", roomy: true, cell: (row) => row.name },
              { key: "area", head: "Area", numeric: true, cell: (row) => row.area },
              { key: "times", head: "How many of it", numeric: true, cell: (row) => row.times },
              { key: "source", head: "Size from", roomy: true, cell: (row) => row.source },
            ]}
          />
        </Behind>
      }
    />
  );
}
