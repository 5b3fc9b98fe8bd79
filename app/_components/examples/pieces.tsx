import { ButtonLink } from "../button.tsx";
import { Disclosure } from "../disclosure.tsx";
import { EmptyState } from "../empty-state.tsx";
import { Entry, Ledger, PageHead } from "../entry.tsx";
import { Facts } from "../facts.tsx";
import { MaterialGuide } from "../material-guide.tsx";
import { Pager } from "../pager.tsx";
import { PhotoFigure } from "../photo-figure.tsx";
import { Tabs } from "../tabs.tsx";
import { ThumbBar } from "../thumb-bar.tsx";
import { Notice, Warning } from "../warning.tsx";
import { WorkplaceBar } from "../workplace-bar.tsx";
import type { Example } from "./example.ts";

const drawnPhoto = `data:image/svg+xml,${encodeURIComponent(
  '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300"><rect width="400" height="300" fill="#ddd"/><rect x="120" y="80" width="140" height="160" fill="#789"/><path d="M260 110h40v90h-40" fill="none" stroke="#789" stroke-width="18"/></svg>',
)}`;

export const pieceExamples: Example[] = [
  {
    id: "ledger",
    title: "Head of a page, and entries with their headings in the margin",
    show: (
      <>
        <PageHead title="Bluebell child’s mug" kicker="Mugs and cups · tested 14 November 2026">
          <p className="answer">
            Lead in the glaze, outside: 412 ± 35 mg/kg. That is above the limit of 100 mg/kg for children’s products.
          </p>
        </PageHead>
        <Ledger>
          <Entry title="How sure" aside="95 times out of 100">
            <p>The true content lies between 377 and 447 mg/kg, about 19 times out of 20.</p>
          </Entry>
          <Entry title="What to do">
            <p>Do not let a child drink from it.</p>
          </Entry>
        </Ledger>
      </>
    ),
  },
  {
    id: "warning",
    title: "Warning",
    show: <Warning>A similar item proves nothing about yours: glazes differ from batch to batch.</Warning>,
  },
  {
    id: "notice",
    title: "Notice",
    show: (
      <Notice title="There is a newer revision">
        <p>
          This is revision 1. <a href="#notice">Revision 2</a> corrects it.
        </p>
      </Notice>
    ),
  },
  {
    id: "empty",
    title: "Empty state",
    show: (
      <EmptyState title="No readings yet" headingLevel={3}>
        <p>Load a file from the analyser, or enter readings by hand.</p>
        <ButtonLink href="#empty">Load a file</ButtonLink>
      </EmptyState>
    ),
  },
  {
    id: "tabs",
    title: "Tabs that are links",
    show: (
      <Tabs
        label="Parts of the bench"
        current="#readings"
        tabs={[
          { href: "#items", text: "Items", count: 12 },
          { href: "#readings", text: "Readings", count: 340 },
          { href: "#instruments", text: "Instruments" },
        ]}
      />
    ),
  },
  { id: "pager", title: "Pager", show: <Pager first="#pager" next="#pager" /> },
  {
    id: "disclosure",
    title: "Folded parts",
    show: (
      <div>
        <Disclosure summary="Readings (7)">
          <p>Seven rows.</p>
        </Disclosure>
        <Disclosure summary="Uncertainty budget" open>
          <p>Two parts.</p>
        </Disclosure>
      </div>
    ),
  },
  {
    id: "facts",
    title: "Facts",
    show: (
      <Facts
        facts={[
          { name: "How it was got", value: "given to the lending shelf" },
          { name: "Condition", value: "used, glaze worn at the rim" },
          { name: "Left out when empty", value: null },
        ]}
      />
    ),
  },
  {
    id: "photo",
    title: "Photograph",
    show: <PhotoFigure src={drawnPhoto} alt="A mug, drawn" width={400} height={300} caption="The mug from the side" />,
  },
  {
    id: "photo-marked",
    title: "Photograph with spots: one at the window’s size, one whose size is not known, one at the edge",
    show: (
      <PhotoFigure
        src={drawnPhoto}
        alt="A mug, drawn"
        width={400}
        height={300}
        marks={[
          { number: 1, spot: "a", part: "glaze", x: 0.42, y: 0.5, share: 0.08 },
          { number: 2, spot: "b", part: "glaze", x: 0.5, y: 0.7, share: null },
          { number: 3, spot: "a", part: "rim", x: 0.97, y: 0.1, share: 0.08 },
        ]}
        caption="The mug from the side. 1: glaze, spot a; 2: glaze, spot b; 3: rim, spot a"
      />
    ),
  },
  {
    id: "workplace-bar",
    title: "Ways to the workplaces, for whoever may see them all",
    show: (
      <WorkplaceBar
        person={{ id: "1", name: "Odaline Farrowby", email: "o@example.org", role: "owner" }}
        current="bench"
      />
    ),
  },
  {
    id: "thumb-bar",
    title: "The main action under the thumb, on a phone",
    show: (
      <div>
        <p>On a wider screen there is nothing below this line.</p>
        <ThumbBar>
          <ButtonLink href="#thumb-bar">Load a file</ButtonLink>
        </ThumbBar>
      </div>
    ),
  },
  { id: "material-guide", title: "What each material means for a reading", show: <MaterialGuide open /> },
];
