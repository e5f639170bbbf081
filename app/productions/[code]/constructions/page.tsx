import type { Metadata } from "next";
import { words as wordsOf } from "#lib/words/words";
import { figures, Heads } from "../../../_components/Heads";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { Wide } from "../../../_components/Wide";
import { plural } from "../../../_data/plural";
import { requireProduction } from "../../../_data/requireProduction";
import { ConstructionLines } from "./ConstructionLines";
import { constructionRows } from "./constructionRows";

type Props = { readonly params: Promise<{ readonly code: string }> };

export const metadata: Metadata = { title: "Constructions" };

const Constructions = async ({ params }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { staging, garments } = view.prepared;
  const rows = constructionRows(staging, garments);
  const used = rows.filter((row) => row.garments > 0).length;
  const { words } = staging.production;
  return (
    <ProductionFrame member={member} view={view} room="/constructions">
      <div className="top">
        <h1>Constructions</h1>
        <p className="say">
          {rows.length === 0
            ? "There is no construction yet: bring one in as a file, and garments can be made by it."
            : `How each kind of garment is made: ${plural(rows.length, "construction")}, ${used} of them in this production. Hours are of one garment for the body its figures were set for, before decoration.`}
        </p>
      </div>
      {rows.length > 0 && (
        <Wide label="Constructions">
          <table className="stack">
            <Heads
              of={[
                "Construction",
                "Version",
                figures(`${wordsOf(words).trade.garment}s so made`),
                figures("Likely hours"),
                figures("Low to high"),
                figures("Tasks"),
                "Net",
              ]}
            />
            <ConstructionLines rows={rows} production={staging.production} />
          </table>
        </Wide>
      )}
    </ProductionFrame>
  );
};

export default Constructions;
