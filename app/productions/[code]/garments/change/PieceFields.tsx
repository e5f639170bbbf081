import { type Piece, SOURCES } from "#lib/casting/wardrobe";
import type { Staging } from "#lib/staging/staging";
import { writeMoney } from "#lib/units/money";
import { words as wordsOf } from "#lib/words/words";
import { nameOfConstruction } from "../../../../_data/names";
import { SHARED } from "../garmentRows";
import styles from "./Change.module.css";
import { Choice, Typed } from "./Choice";
import { NONE } from "./changeInput";

/** What all agree on; null when they do not. */
export const agreed = <T,>(all: readonly T[]): T | null => (all.every((one) => one === all[0]) ? (all[0] ?? null) : null);

interface Props {
  readonly pieces: readonly Piece[];
  readonly staging: Staging;
  readonly said: (name: string) => string;
  readonly faults: Readonly<Record<string, string>>;
}

/** Where the garments come from, how they are made, for whom, by when, and how much a day late matters. */
export const PieceFields = ({ pieces, staging, said, faults }: Props) => {
  const { production, constructions, milestones, stock } = staging;
  const { sources } = wordsOf(production.words);
  const nameMade = (piece: Piece) => (piece.construction === null ? "nothing" : nameOfConstruction(staging, piece.construction));
  const nameStock = (piece: Piece) => piece.stock ?? "none";
  const codes = [...new Set(constructions.map(({ code }) => code))];
  const versions = constructions.filter(({ code }) => constructions.filter((one) => one.code === code).length > 1);
  const source = agreed(pieces.map((piece) => sources[piece.source]));
  const due = agreed(pieces.map((piece) => milestones.find(({ code }) => code === piece.due)?.name ?? piece.due));
  const weight = agreed(pieces.map((piece) => piece.weight));
  const price = agreed(pieces.map((piece) => (piece.price === null ? "none" : writeMoney(piece.price, production.currency))));
  return (
    <div className={styles.fields}>
      <Choice
        name="source"
        label="Where they come from"
        now={source?.toLowerCase() ?? null}
        chosen={said("source")}
        options={SOURCES.map((value) => ({ value, label: sources[value].toLowerCase() }))}
        wrong={faults.source}
      />
      <Choice
        name="made"
        label="Made as"
        now={agreed(pieces.map(nameMade))}
        chosen={said("made")}
        options={[
          ...codes.map((value) => ({ value, label: nameOfConstruction(staging, value) })),
          ...versions.map(({ code, version, name }) => ({
            value: `${code}@${version}`,
            label: `${name[production.words]}, version ${version}`,
          })),
          { value: NONE, label: "nothing: no work on it" },
        ]}
        wrong={faults.made}
      />
      <Choice
        name="each"
        label="One garment for"
        now={agreed(pieces.map((piece) => SHARED[piece.each]))}
        chosen={said("each")}
        options={Object.entries(SHARED).map(([value, label]) => ({ value, label }))}
        wrong={faults.each}
      />
      <Choice
        name="due"
        label="Wanted for"
        now={due}
        chosen={said("due")}
        options={milestones.map(({ code, name }) => ({ value: code, label: name }))}
        wrong={faults.due}
      />
      <Typed
        name="weight"
        label="Priority"
        hint="1 is ordinary, up to 100: how much a day late matters"
        now={weight === null ? null : String(weight)}
        typed={said("weight")}
        wrong={faults.weight}
      />
      <Typed
        name="price"
        label="Price of one, when hired or bought"
        hint={`in ${production.currency}; ${NONE} for none`}
        now={price}
        typed={said("price")}
        wrong={faults.price}
      />
      {stock.length > 0 && pieces.length === 1 && (
        <Choice
          name="stock"
          label="From stock"
          now={agreed(pieces.map(nameStock))}
          chosen={said("stock")}
          options={[...stock.map(({ number, name }) => ({ value: number, label: `${number}, ${name}` })), { value: NONE, label: "none" }]}
          wrong={faults.stock}
        />
      )}
    </div>
  );
};
