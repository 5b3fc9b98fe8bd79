import type { ReactNode } from "react";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { ScaleDrawing } from "@/app/_components/scale-drawing.tsx";
import type { AmountsResult } from "@/lib/amounts/types.ts";
import {
  amountFiguresIn,
  areaLabel,
  areaNote,
  areaTitle,
  ballRow,
  ballSource,
  comparatorArea,
  grainScaleNote,
  grainTitle,
} from "@/lib/wording/amount-figures.ts";
import { amountRecord, amountsIn, comparatorSource, estimateText, massText } from "@/lib/wording/amounts.ts";
import { numberText, significant, withUnit } from "@/lib/wording/formats.ts";
import type { Language } from "@/lib/wording/language.ts";
import { areaOf, drawnCoins, grainOf } from "./amount-drawings.ts";

/** `folded`: the table behind the drawing is there to open, where a page has much else to say. */
type FigureProps = { result: AmountsResult; folded?: boolean; language?: Language };

function Behind({ caption, folded, children }: { caption: string; folded: boolean; children: ReactNode }) {
  return folded ? <Disclosure summary={caption}>{children}</Disclosure> : children;
}

/** The ball of an amount beside coins on a ruler, and the sizes drawn. Nothing where the metal's density is not known. */
export function GrainFigure({ result, folded = false, language = "en" }: FigureProps) {
  const { page, figures } = amountFiguresIn[language];
  const [narrow, wide] = [grainOf(result, "narrow", language), grainOf(result, "wide", language)];
  const { grain, amount, element } = result;
  if (!narrow || !wide || !grain || !amount) return null;
  const rows = [
    {
      id: "grain",
      name: ballRow(element, language),
      across: grain.diameterMm,
      mass: massText(grain.massMg, 3, language),
      source: ballSource(grain.density, language),
    },
    ...drawnCoins.map((one) => ({
      id: one.id,
      name: amountRecord(one.name, language),
      across: one.coin.diameter,
      mass: massText(one.mass, 4, language),
      source: comparatorSource(one, language),
    })),
  ];
  return (
    <ScaleDrawing
      drawings={{ narrow, wide }}
      title={grainTitle(amount, grain, element, language)}
      note={`${grainScaleNote([narrow.scale, wide.scale], language)} ${amountsIn[language].coin}`}
      table={
        <Behind caption={figures.sizes} folded={folded}>
          <DataTable
            caption={figures.sizes}
            hideCaption={folded}
            rows={rows}
            rowKey={(row) => row.id}
            columns={[
              { key: "name", head: page.what, cell: (row) => row.name },
              {
                key: "across",
                head: page.across,
                numeric: true,
                cell: (row) => withUnit(significant(row.across, row.id === "grain" ? 2 : 4), "mm", language),
              },
              { key: "mass", head: page.weight, numeric: true, cell: (row) => row.mass },
              { key: "source", head: page.sizeFrom, roomy: true, cell: (row) => row.source },
            ]}
          />
        </Behind>
      }
    />
  );
}

/** The area of an amount at the loading picked beside things of known size, and the areas drawn. */
export function AreaFigure({ result, folded = false, language = "en" }: FigureProps) {
  const { page, figures } = amountFiguresIn[language];
  const [narrow, wide] = [areaOf(result, "narrow", language), areaOf(result, "wide", language)];
  const { spread, nearestArea } = result;
  if (!narrow || !wide || !spread) return null;
  const rows = [
    {
      id: "area",
      name: areaLabel(spread, language),
      area: estimateText(spread.area, language),
      times: "1",
      source: page.workedOut,
    },
    ...nearestArea.map(({ comparator, times }) => ({
      id: comparator.id,
      name: amountRecord(comparator.name, language),
      area: comparatorArea(comparator, language),
      times: numberText(times, 2, language),
      source: comparatorSource(comparator, language),
    })),
  ];
  const certain = spread.area.atMost || spread.area.interval[0] === spread.area.interval[1];
  return (
    <ScaleDrawing
      drawings={{ narrow, wide }}
      title={areaTitle(spread, nearestArea, language)}
      note={areaNote(!certain, language)}
      table={
        <Behind caption={figures.areas} folded={folded}>
          <DataTable
            caption={figures.areas}
            hideCaption={folded}
            rows={rows}
            rowKey={(row) => row.id}
            columns={[
              { key: "name", head: page.what, roomy: true, cell: (row) => row.name },
              { key: "area", head: page.area, numeric: true, cell: (row) => row.area },
              { key: "times", head: page.howMany, numeric: true, cell: (row) => row.times },
              { key: "source", head: page.sizeFrom, roomy: true, cell: (row) => row.source },
            ]}
          />
        </Behind>
      }
    />
  );
}
