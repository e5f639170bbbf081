"use client";

import { useRouter } from "next/navigation";
import { useEffect, useRef, useState } from "react";
import { type TimelineGrip, timelineAt } from "#lib/charts/timelineAt";
import styles from "./TimelineHand.module.css";

interface Props {
  /** Page that shows what follows; the wish is added to it. */
  readonly href: string;
  readonly grip: TimelineGrip;
  readonly rows: readonly { readonly code: string; readonly name: string }[];
  readonly row: number;
  readonly children: React.ReactNode;
}

/** A bar in hand, and where it would be put down. */
interface Held {
  readonly bar: SVGAElement;
  readonly fromX: number;
  readonly fromY: number;
  readonly dx: number;
  readonly dy: number;
}

const BAR = "a[data-key]";

/** Less than this is a press, not a move. */
const STILL = 4;

/**
 * Lets a hand take a bar of the timeline to another time or another maker, by mouse, pen or keyboard. Nothing is changed by it: it asks
 * what would follow. Without scripts every bar is a link to the same question.
 */
export const TimelineHand = ({ href, grip, rows, row, children }: Props) => {
  const router = useRouter();
  const box = useRef<HTMLDivElement>(null);
  const [held, setHeld] = useState<Held | null>(null);
  const [said, setSaid] = useState("");

  // One stop of the Tab key for all bars: arrows go on from there.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the bars are inside the children.
  useEffect(() => {
    const bars = [...(box.current?.querySelectorAll<SVGAElement>(BAR) ?? [])];
    const stopAt = (stop: Element | undefined) => {
      for (const bar of bars) bar.setAttribute("tabindex", bar === stop ? "0" : "-1");
    };
    const follow = (event: FocusEvent) => stopAt(event.currentTarget as Element);
    stopAt(bars[0]);
    for (const bar of bars) bar.addEventListener("focus", follow);
    return () => {
      for (const bar of bars) bar.removeEventListener("focus", follow);
    };
  }, [children]);

  const place = ({ bar, dx, dy }: Held) => {
    const was = Number(bar.dataset.row);
    const at = rows[Math.min(rows.length - 1, Math.max(0, was + Math.round(dy / row)))]!;
    return { maker: at, ...timelineAt(grip, Number(bar.dataset.x) + dx) };
  };
  const clock = (at: number) => `${String(Math.floor(at / 60)).padStart(2, "0")}:${String(at % 60).padStart(2, "0")}`;
  const show = (next: Held) => {
    next.bar.style.transform = `translate(${next.dx}px, ${next.dy}px)`;
    const { maker, date, at } = place(next);
    setSaid(`${date} ${clock(at)}, ${maker.name}`);
    setHeld(next);
  };
  const putBack = () => {
    if (held) held.bar.style.transform = "";
    setHeld(null);
    setSaid("");
  };
  const ask = (one: Held) => {
    const { maker, date, at } = place(one);
    const wish = new URLSearchParams({ key: one.bar.dataset.key!, maker: maker.code, date, at: clock(at) });
    router.push(`${href}?${wish}`);
  };
  const barOf = (target: EventTarget) => (target as Element).closest<SVGAElement>(BAR);
  const scale = () => {
    const svg = box.current?.querySelector("svg");
    return svg ? svg.viewBox.baseVal.width / svg.getBoundingClientRect().width : 1;
  };

  const onKeyDown = (event: React.KeyboardEvent) => {
    const bar = barOf(event.target);
    if (!bar) return;
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (step && event.altKey) {
      event.preventDefault();
      const now = held?.bar === bar ? held : { bar, fromX: 0, fromY: 0, dx: 0, dy: 0 };
      show({ ...now, dx: now.dx + step[0]! * grip.dayWidth, dy: now.dy + step[1]! * row });
    } else if (step) {
      event.preventDefault();
      neighbour(box.current!, bar, step[0]!, step[1]!)?.focus();
    } else if (event.key === "Escape") putBack();
    else if (event.key === "Enter" && held?.bar === bar) {
      event.preventDefault();
      ask(held);
    }
  };

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the bars inside are links; this only carries them.
    <div
      ref={box}
      className={styles.hand}
      onKeyDown={onKeyDown}
      onBlur={() => held && putBack()}
      onPointerDown={(event) => {
        const bar = barOf(event.target);
        if (!bar || event.button !== 0 || event.pointerType === "touch") return;
        setHeld({ bar, fromX: event.clientX, fromY: event.clientY, dx: 0, dy: 0 });
      }}
      onPointerMove={(event) => {
        if (!held || event.buttons === 0) return;
        const dx = (event.clientX - held.fromX) * scale();
        const dy = (event.clientY - held.fromY) * scale();
        if (Math.abs(dx) + Math.abs(dy) < STILL) return;
        box.current?.setPointerCapture(event.pointerId);
        show({ ...held, dx, dy });
      }}
      onPointerUp={() => {
        if (held && Math.abs(held.dx) + Math.abs(held.dy) >= STILL) ask(held);
        else putBack();
      }}
      onPointerCancel={putBack}
      onDragStart={(event) => event.preventDefault()}
    >
      {children}
      <p role="status" className={said === "" ? "unseen" : styles.said}>
        {said}
      </p>
    </div>
  );
};

/** The nearest bar in a direction: along the row, or in the next row that has one. */
const neighbour = (box: HTMLElement, from: SVGAElement, right: number, down: number): SVGAElement | undefined => {
  const at = (bar: SVGAElement) => ({ bar, row: Number(bar.dataset.row), x: Number(bar.dataset.x) });
  const here = at(from);
  const others = [...box.querySelectorAll<SVGAElement>(BAR)].map(at).filter(({ bar }) => bar !== from);
  const there = others.filter(({ row, x }) => (down === 0 ? row === here.row && (x - here.x) * right > 0 : (row - here.row) * down > 0));
  const far = ({ row, x }: (typeof others)[number]) => Math.abs(row - here.row) * 100_000 + Math.abs(x - here.x);
  return there.sort((a, b) => far(a) - far(b))[0]?.bar;
};
