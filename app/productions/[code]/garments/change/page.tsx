import type { Metadata } from "next";
import { rowOf } from "#lib/editing/rows";
import { changePieces } from "#lib/whatif/changePieces";
import { pieceEffect } from "#lib/whatif/pieceEffect";
import { ProductionFrame } from "../../../../_components/ProductionFrame";
import { productionHref, slug } from "../../../../_data/address";
import { plural } from "../../../../_data/plural";
import { requireProduction } from "../../../../_data/requireProduction";
import { writeQuery } from "../garmentQuery";
import styles from "./Change.module.css";
import { ChosenNumbers } from "./ChosenNumbers";
import { readChange } from "./changeInput";
import { chosenPieces } from "./chosenPieces";
import { EffectTable } from "./EffectTable";
import { KeepChange } from "./KeepChange";
import { LiveForm } from "./LiveForm";
import { ParameterFields } from "./ParameterFields";
import { PieceFields } from "./PieceFields";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => {
  const { view } = await requireProduction("wardrobe", (await params).code);
  return { title: `Change garments, ${view.prepared.staging.production.title}` };
};

const Change = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("wardrobe", (await params).code);
  const given = await searchParams;
  const { staging, works } = view.prepared;
  const base = productionHref(staging.production.code);
  const chosen = chosenPieces(view, given);
  const { change, faults } = readChange(given, staging);
  const codes = chosen.pieces.map(({ code }) => code);
  const next = changePieces(staging, codes, change);
  // As they are, made as is wanted: their parameters are shown until others are said.
  const made = changePieces(staging, codes, change.made ? { made: change.made } : {});
  const effect = pieceEffect(staging, next, works);
  const said = (name: string): string => {
    const value = given[name];
    return typeof value === "string" ? value : (value?.at(-1) ?? "");
  };
  const asked = new URLSearchParams(
    Object.entries(given).flatMap(([name, value]) => [value ?? []].flat().map((one) => [name, one])),
  ).toString();
  const to = chosen.list ? writeQuery(chosen.list) : chosen.numbers.length === 1 ? `/${slug(chosen.numbers[0] ?? "")}` : "";
  return (
    <ProductionFrame member={member} view={view} room="/garments">
      <div className="top">
        <h1>{chosen.numbers.length === 1 ? `Change ${chosen.numbers[0]}` : `Change ${plural(chosen.numbers.length, "garment")}`}</h1>
        <ChosenNumbers chosen={chosen} base={base} />
      </div>
      {chosen.pieces.length === 0 ? (
        <p className="board">
          No garment is chosen. <a href={`${base}/garments`}>Choose some in the list.</a>
        </p>
      ) : (
        <div className={styles.sides}>
          <LiveForm address={`${base}/garments/change`} className={styles.form} press="See what it does">
            {chosen.list
              ? [...new URLSearchParams(writeQuery(chosen.list)), ["all", "1"] as const].map(([name, value]) => (
                  <input key={name} type="hidden" name={name} value={value} />
                ))
              : chosen.numbers.map((number) => <input key={number} type="hidden" name="number" value={number} />)}
            <PieceFields pieces={chosen.pieces} staging={staging} said={said} faults={faults} />
            <ParameterFields pieces={made.pieces.filter(({ code }) => codes.includes(code))} staging={staging} said={said} />
          </LiveForm>
          <section aria-labelledby="does" aria-live="polite">
            <h2 id="does">What it does</h2>
            {effect.lines.length === 0 ? (
              <p className="q">Nothing is changed yet.</p>
            ) : (
              <>
                <EffectTable effect={effect} staging={staging} />
                {Object.keys(faults).length === 0 && (
                  <KeepChange
                    hidden={{
                      production: staging.production.code,
                      pieces: codes.join("\n"),
                      asked,
                      was: JSON.stringify(codes.map((code) => ({ file: "pieces.csv", row: rowOf(staging, "pieces.csv", code) }))),
                      to: `/garments${to}`,
                    }}
                  />
                )}
              </>
            )}
          </section>
        </div>
      )}
    </ProductionFrame>
  );
};

export default Change;
