import type { Metadata } from "next";
import { drafted } from "#lib/constructions/draft";
import { ProductionFrame } from "../../../../../_components/ProductionFrame";
import { requireProduction } from "../../../../../_data/requireProduction";
import { may } from "../../../../../_gate/may";
import { findConstruction } from "../findConstruction";
import { ChangeForm } from "./ChangeForm";
import { draftEffect } from "./draftEffect";

type Props = {
  readonly params: Promise<{ readonly code: string; readonly construction: string }>;
  readonly searchParams: Promise<{ readonly version?: string | string[] }>;
};

export const metadata: Metadata = { title: "Change a construction" };

const Change = async ({ params, searchParams }: Props) => {
  const { code, construction } = await params;
  const { member, view } = await requireProduction("wardrobe", code);
  const { shown } = findConstruction(view, construction, [(await searchParams).version].flat()[0]);
  const { staging } = view.prepared;
  const { production } = staging;
  return (
    <ProductionFrame member={member} view={view} room="/constructions">
      <div className="top">
        <h1>Change {shown.name[production.words]}</h1>
        <p className="say">
          From version {shown.version}, which stays as it is: plans and worked minutes refer to it. What you keep is a new version, or a
          construction of its own.
        </p>
      </div>
      <ChangeForm
        production={production.code}
        construction={shown.code}
        version={shown.version}
        first={{ acts: [], draft: drafted(shown), effect: draftEffect(staging, shown, shown, may(member.role, "money")) }}
      />
    </ProductionFrame>
  );
};

export default Change;
