import Link from "next/link";
import type { Staging } from "#lib/staging/staging";
import { nameOfPerformer } from "../../../_data/names";
import { FittingState } from "./FittingState";
import type { SeenFitting } from "./fittingsView";

/** Fittings that need a time: the plan found none, or the last one did not do. */
export const Unplaced = ({ fittings, staging }: { readonly fittings: readonly SeenFitting[]; readonly staging: Staging }) =>
  fittings.length > 0 && (
    <section className="part" aria-labelledby="unplaced">
      <header>
        <h2 id="unplaced">To be placed</h2>
        <span className="cap">the plan has no time for them, or they are wanted once more</span>
      </header>
      <ul className="lines">
        {fittings.map((fitting) => (
          <li key={fitting.node}>
            <Link href={fitting.href} prefetch={false}>
              {fitting.garment}, {fitting.name.toLowerCase()}
            </Link>
            , <b>{nameOfPerformer(staging, fitting.performer)}</b>, {fitting.minutes} min. <FittingState fitting={fitting} />
          </li>
        ))}
      </ul>
    </section>
  );
