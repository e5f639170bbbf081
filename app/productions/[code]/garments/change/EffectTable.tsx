import type { Staging } from "#lib/staging/staging";
import { showHours } from "#lib/units/hours";
import { showMoney } from "#lib/units/money";
import { showCloth } from "#lib/units/showLength";
import type { PieceEffect, PieceFigures } from "#lib/whatif/pieceEffect";
import { Wide } from "../../../../_components/Wide";
import { nameOfMaterial } from "../../../../_data/names";
import { showQuantity } from "../../../../_data/quantity";

/** `58 h`, or `58 h, becomes 49 h`. */
const Moved = ({ from, to }: { readonly from: string; readonly to: string }) =>
  from === to ? (
    <td className="num fr q">{to}</td>
  ) : (
    <td className="num fr">
      <span className="q">{from}, becomes</span> <b>{to}</b>
    </td>
  );

/** What a change does to each line of the piece list: garments, hours, net, labour and price. */
export const EffectTable = ({ effect, staging }: { readonly effect: PieceEffect; readonly staging: Staging }) => {
  const { currency, words, lengths } = staging.production;
  const money = (amount: number) => showMoney(amount, currency, words);
  const cells = (before: PieceFigures, after: PieceFigures) => (
    <>
      <Moved from={String(before.garments)} to={String(after.garments)} />
      <Moved from={showHours(before.minutes)} to={showHours(after.minutes)} />
      <Moved from={showCloth(before.net, lengths)} to={showCloth(after.net, lengths)} />
      <Moved from={money(before.labour + before.price)} to={money(after.labour + after.price)} />
    </>
  );
  return (
    <>
      <Wide label="What it does, line by line">
        <table>
          <caption>
            Likely minutes at standard pace, before batches and the plan. Labour at the mean cost of those who have the skill.
          </caption>
          <thead>
            <tr>
              <th scope="col">Piece</th>
              {["Garments", "Work", "Net", "Labour and price"].map((head) => (
                <th key={head} scope="col" className="num">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {effect.lines.map((line) => (
              <tr key={line.piece}>
                <th scope="row">{line.name}</th>
                {cells(line.before, line.after)}
              </tr>
            ))}
            {effect.lines.length > 1 && (
              <tr className="sum">
                <th scope="row">Together</th>
                {cells(effect.before, effect.after)}
              </tr>
            )}
          </tbody>
        </table>
      </Wide>
      <p className="part">
        {effect.goods === 0
          ? "The purchase list comes to the same."
          : `The purchase list comes to ${money(Math.abs(effect.goods))} ${effect.goods > 0 ? "more" : "less"}: packs are bought whole.`}
      </p>
      {effect.materials.length > 0 && (
        <ul className="lines part">
          {effect.materials.map((change) => (
            <li key={change.material}>
              {nameOfMaterial(staging, change.material)}: {showQuantity(change.before, change.measure, lengths)}, becomes{" "}
              <b>{showQuantity(change.after, change.measure, lengths)}</b>
            </li>
          ))}
        </ul>
      )}
      {effect.renumberedFrom !== null && (
        <p className="slip wrong part">
          Garments from {effect.renumberedFrom} on get other numbers, or fall away. Labels may have been sewn in.
        </p>
      )}
      {effect.notes.map((note) => (
        <p key={`${note.piece} ${note.text}`} className="slip part">
          {staging.pieces.find(({ code }) => code === note.piece)?.name}: {note.text}
        </p>
      ))}
    </>
  );
};
