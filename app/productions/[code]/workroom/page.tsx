import type { Metadata } from "next";
import Link from "next/link";
import { loadHandPins } from "#prisma/plans/handPins";
import { latestRun } from "#prisma/plans/runs";
import { ActionForm } from "../../../_components/ActionForm";
import { ProductionFrame } from "../../../_components/ProductionFrame";
import { Wide } from "../../../_components/Wide";
import { WorkroomTimeline } from "../../../_components/WorkroomTimeline";
import { productionHref } from "../../../_data/address";
import { requireProduction } from "../../../_data/requireProduction";
import { may } from "../../../_gate/may";
import { LoadPicture } from "../LoadPicture";
import { levelAgain } from "./actions";
import { RunProgress } from "./RunProgress";
import { runWords } from "./runWords";
import { SkillKey } from "./SkillKey";
import { TaskList } from "./TaskList";
import { Unplaced } from "./Unplaced";
import { WindowLinks } from "./WindowLinks";
import { WorkroomSentence } from "./WorkroomSentence";
import { windowOf } from "./window";

type Props = {
  readonly params: Promise<{ readonly code: string }>;
  readonly searchParams: Promise<Readonly<Record<"from" | "weeks", string | string[] | undefined>>>;
};

export const generateMetadata = async ({ params }: Pick<Props, "params">): Promise<Metadata> => {
  const { view } = await requireProduction("read", (await params).code);
  return { title: `Workroom, ${view.prepared.staging.production.title}` };
};

const Workroom = async ({ params, searchParams }: Props) => {
  const { member, view } = await requireProduction("read", (await params).code);
  const { plan } = view;
  const { production } = view.prepared.staging;
  const run = await latestRun(member.company, production.code);
  const words = run && runWords(run);
  const canLevel = may(member.role, "level");
  const moveHref = may(member.role, "workroom") ? `${productionHref(production.code)}/workroom/move` : undefined;
  const pins = await loadHandPins(member.company, view.productionId);
  const { from, weeks } = await searchParams;
  const window = plan && windowOf(plan, view.today, [from].flat()[0], [weeks].flat()[0]);
  return (
    <ProductionFrame member={member} view={view} room="/workroom">
      <div className="top">
        <h1>Workroom</h1>
        <WorkroomSentence view={view} />
        <div className="acts">
          {canLevel && !words?.active && (
            <ActionForm action={levelAgain} press={plan ? "Level again" : "Level"} busy="Asking" look="press">
              <input type="hidden" name="production" value={production.code} />
            </ActionForm>
          )}
          {plan && (
            <Link className="press second" href={`${productionHref(production.code)}/workroom/remedies`}>
              What would help
            </Link>
          )}
          {plan && (
            <Link className="press second" href={`${productionHref(production.code)}/workroom/changes`}>
              Before and after
            </Link>
          )}
        </div>
      </div>
      {words && run && run.state !== "finished" && (
        <RunProgress key={run.id} code={production.code} run={run.id} first={words} canStop={canLevel} />
      )}
      {plan && window ? (
        <>
          <SkillKey plan={plan} />
          <WindowLinks href={`${productionHref(production.code)}/workroom`} window={window} />
          <Wide label="Makers down, working days across">
            <WorkroomTimeline
              plan={plan}
              today={view.today}
              from={window.from}
              to={window.to}
              moveHref={moveHref}
              fixed={new Set(pins.map(({ key }) => key))}
            />
          </Wide>
          <Unplaced plan={plan} />
          <LoadPicture plan={plan} by="maker" />
          <details className="part upright">
            <summary className="small q">The same as a list</summary>
            <TaskList plan={plan} window={window} moveHref={moveHref} />
          </details>
        </>
      ) : (
        <p className="board">
          {view.prepared.staging.makers.length === 0
            ? "There is nobody in the workroom yet: bring in makers with their skills and hours."
            : "Nothing has a day yet. Levelling gives every task a maker and a time, and every fitting an appointment."}
        </p>
      )}
    </ProductionFrame>
  );
};

export default Workroom;
