import type { Aims } from "../aims";
import type { Candidate } from "../candidate";
import type { Compiled } from "../compiled";
import type { Outlook } from "../outlook";
import type { Choices } from "../placeNode";
import { byStart } from "../planMaker";
import type { Chance } from "../random";
import type { Schedule } from "../schedule";
import { Score } from "../score";
import { Reinsertion } from "./reinsert";
import {
  evenLoad,
  lateChain,
  lessOvertime,
  makerStretch,
  neighbouringGroups,
  type Ruin,
  type Scene,
  shareVisit,
  skillStretch,
} from "./ruins";
import { compareStandings, type Standing, standingOf } from "./standing";
import { Tally } from "./tally";

/** Blocks that a change may move beyond those it takes out. */
const MOST_MORE = 150;
/** Changes after which the search goes back to the best when it found nothing better. */
const LONGEST_WAY = 150;

/** Ruin and re-insert (Schrimpf et al. 2000): takes a part out of a schedule and puts it back, and keeps what is no worse. */
export class Improver {
  private readonly reinsertion: Reinsertion;
  private readonly scene: Scene;
  readonly tally: Tally;
  private readonly choices: { -readonly [K in keyof Choices]: Choices[K] };
  private readonly notBefore: Int32Array;
  private now: Standing;
  private best: Standing;
  /** Changes since the best. */
  private away = 0;

  constructor(
    readonly schedule: Schedule,
    choices: Choices,
    outlook: Outlook,
    private readonly chance: Chance,
    private readonly aims: Aims,
  ) {
    const { compiled } = schedule;
    this.notBefore = new Int32Array(compiled.count);
    this.choices = { ...choices, overtime: choices.overtime.slice(), maker: choices.maker.slice(), kept: null, notBefore: this.notBefore };
    this.reinsertion = new Reinsertion(schedule, this.choices);
    this.tally = new Tally(schedule);
    this.scene = { compiled, schedule, tally: this.tally, outlook, chance, ...groupsOf(compiled) };
    this.now = this.judged();
    this.best = this.now;
  }

  /** Of the best schedule found. */
  get standing(): Standing {
    return this.best;
  }

  /** Changes until so many nodes have been put back, or a few more; the best plan then. */
  improve(nodes: number): { readonly nodes: number; readonly best: Candidate } {
    let done = 0;
    while (done < nodes) done += Math.max(1, this.change());
    this.goBack();
    const { schedule, choices } = this;
    const score = new Score(schedule);
    // The schedule changes on: what the score has not worked out by now it never can.
    void score.plan;
    const order = byStart(schedule.start);
    const made: Choices = { overtime: choices.overtime.slice(), maker: choices.maker.slice(), patience: choices.patience, kept: null };
    return { nodes: done, best: { order, choices: made, score, rule: "ruin and re-insert" } };
  }

  /** Try one change; the number of nodes put back. */
  private change(): number {
    const ruin = this.ruin();
    if (ruin === null || ruin.victims.size === 0) return 0;
    const { schedule, tally } = this;
    const mark = schedule.mark();
    const first = schedule.touched.length;
    schedule.recording = true;
    const nodes = this.putBack(ruin);
    const touched = new Set(schedule.touched.slice(first));
    tally.update(touched);
    const next = nodes < 0 ? null : this.judged();
    if (next !== null && this.isAcceptable(next)) this.accept(next);
    else {
      schedule.takeBack(mark);
      schedule.touched.length = first;
      tally.update(touched);
    }
    if (this.away > 0 && ++this.away > LONGEST_WAY) this.goBack();
    schedule.recording = false;
    return Math.max(nodes, ruin.victims.size);
  }

  /** To the best schedule found. */
  private goBack(): void {
    const { schedule, tally } = this;
    const touched = new Set(schedule.touched);
    schedule.takeBack(0);
    schedule.forget();
    tally.update(touched);
    this.now = this.best;
    this.away = 0;
  }

  private putBack(ruin: Ruin): number {
    const { choices, schedule, reinsertion } = this;
    for (const node of ruin.overtime?.nodes ?? []) {
      const before = choices.overtime[node]!;
      choices.overtime[node] = ruin.overtime!.allowed ? 1 : 0;
      schedule.remember(node, () => {
        choices.overtime[node] = before;
      });
    }
    const { patience } = choices;
    choices.patience = ruin.patience ?? patience;
    if (ruin.wanted) choices.maker[ruin.wanted.node] = ruin.wanted.maker;
    if (ruin.delayed) this.notBefore[ruin.delayed.node] = ruin.delayed.from;
    const nodes = reinsertion.run(ruin.victims, ruin.victims.size + MOST_MORE);
    choices.patience = patience;
    if (ruin.wanted) choices.maker[ruin.wanted.node] = -1;
    if (ruin.delayed) this.notBefore[ruin.delayed.node] = 0;
    return nodes;
  }

  /** No worse than now, or hardly later than the best. */
  private isAcceptable(next: Standing): boolean {
    if (compareStandings(next, this.now) <= 0) return true;
    const [unplaced, lateness] = next;
    const [least, best] = this.best;
    return unplaced === least && best! > 0 && lateness! > best! && lateness! <= best! * (1 + 0.1 * this.chance.next() ** 2);
  }

  private accept(next: Standing): void {
    this.now = next;
    const better = compareStandings(next, this.best);
    if (better <= 0) {
      this.best = next;
      this.away = 0;
      this.schedule.forget();
    } else if (this.away === 0) this.away = 1;
  }

  private judged(): Standing {
    return standingOf(this.tally, this.schedule.visitCount, this.aims);
  }

  private ruin(): Ruin | null {
    const { tally, chance, scene } = this;
    const late = tally.lateness > 0;
    const over = tally.overtime > 0;
    const well = !late && !over;
    const { performers } = scene.compiled.problem;
    const ways: readonly [(scene: Scene) => Ruin | null, number][] = [
      [lateChain, late ? 8 : 0],
      [lessOvertime, over ? (late ? 2 : 12) : 0],
      [makerStretch, 2],
      [skillStretch, 2],
      [neighbouringGroups, 2],
      [evenLoad, well ? 8 : 0],
      [shareVisit, performers.length === 0 ? 0 : well ? 6 : 0],
    ];
    return ways[chance.pick(ways.map(([, weight]) => weight))]![0](scene);
  }
}

function groupsOf({ problem }: Compiled): { groups: number[][]; groupOf: Int32Array } {
  const numbers = new Map<string, number>();
  const groups: number[][] = [];
  const groupOf = Int32Array.from(problem.nodes, ({ group }, node) => {
    const number = numbers.get(group) ?? groups.length;
    if (number === groups.length) groups.push([]);
    numbers.set(group, number);
    groups[number]!.push(node);
    return number;
  });
  return { groups, groupOf };
}
