import { figures, Heads } from "../../../_components/Heads";
import { State } from "../../../_components/State";
import { Woven } from "../../../_components/Woven";
import { plural } from "../../../_data/plural";
import type { EffectView } from "./effectView";

const MOST = 12;

/** What follows from a change before it is kept: garments, hours, net, fittings, clashes. */
export const EffectPanel = ({ effect }: { readonly effect: EffectView }) => (
  <>
    <ul className="q small">
      {effect.says.slice(0, MOST).map((line) => (
        <li key={line}>{line}</li>
      ))}
      {effect.says.length > MOST && <li>and {effect.says.length - MOST} changes more</li>}
    </ul>
    {effect.garments.length === 0 ? (
      <p className="small">No garment changes.</p>
    ) : (
      <table>
        <Heads of={["Garment", "What follows", figures("Work")]} />
        <tbody>
          {effect.garments.slice(0, MOST).map((garment) => (
            <tr key={garment.number}>
              <td>
                <Woven number={garment.number} />
              </td>
              <td>
                {garment.follows} <span className="units">{garment.name}</span>
              </td>
              <td className="num">{garment.hours}</td>
            </tr>
          ))}
          {effect.garments.length > MOST && (
            <tr>
              <td colSpan={3}>and {effect.garments.length - MOST} garments more</td>
            </tr>
          )}
          <tr className="sum">
            <td colSpan={2}>Work, before batches</td>
            <td className="num">{effect.work}</td>
          </tr>
        </tbody>
      </table>
    )}
    <ul className="lines part">
      {effect.fitting && (
        <li>
          <State code="fit">Fittings</State>
          <span>{effect.fitting} in the fitting room</span>
        </li>
      )}
      {effect.fittings.map((one) => (
        <li key={one.text}>
          <State code={one.code}>{one.code === "cut" ? "Not needed" : one.code === "late" ? "Moves" : "To fit"}</State>
          <span>{one.text}</span>
        </li>
      ))}
      {effect.materials.length > 0 && (
        <li>
          <State code="note">Net and cloth</State>
          <span>
            {effect.materials.map(({ name, more }) => `${name} ${more}`).join("; ")}
            {effect.others > 0 && `; ${plural(effect.others, "other material")}`}
          </span>
        </li>
      )}
      {effect.doubled.map(({ isClash, text }) => (
        <li key={text}>
          <State code={isClash ? "late" : "wait"}>{isClash ? "Clash" : "Stands by"}</State>
          <span>{text}</span>
        </li>
      ))}
      {effect.notes.map((text) => (
        <li key={text} className="q">
          {text}
        </li>
      ))}
    </ul>
  </>
);
