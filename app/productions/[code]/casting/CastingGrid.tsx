"use client";

import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { cellKey, type Recast } from "#lib/casting/castCell";
import type { CastingBoard } from "#lib/casting/castingGrid";
import { pasteCells, pastedBlock } from "#lib/casting/pasteCells";
import { recast } from "#lib/casting/recast";
import { plural } from "../../../_data/plural";
import styles from "./Casting.module.css";
import type { Typed } from "./CellEditor";
import { doublingSentence, recastWords, typedNames } from "./cellWords";
import { GridKeys } from "./GridKeys";
import { type GridFacts, GridTable } from "./GridTable";
import { clearedBlock, copiedBlock } from "./gridBlock";
import { goneBy, type Hand } from "./gridKeys";
import { type GridAsked, writeAsked } from "./gridLinks";
import { cellOf, gridView } from "./gridView";
import { KeepPanel } from "./KeepPanel";
import { KeptUndo } from "./KeptUndo";
import { seenCells } from "./seenCells";

/**
 * The casting, edited like a spreadsheet. What is typed, pasted or cleared is held here, step by step, each of which Ctrl+Z takes back;
 * beside it stands what would follow; nothing is written before it is kept.
 */
export const CastingGrid = (given: {
  readonly production: string;
  readonly board: CastingBoard;
  readonly asked: GridAsked;
  readonly facts: GridFacts;
}) => {
  const [ready, setReady] = useState(false);
  const [asked, setAsked] = useState(given.asked);
  const [steps, setSteps] = useState<readonly (readonly Recast[])[]>([]);
  const [at, setAt] = useState<Hand>({ row: 0, column: 1 });
  const [from, setFrom] = useState<Hand>(at);
  const [typing, setTyping] = useState<string | null>(null);
  const [said, setSaid] = useState("");
  const frame = useRef<HTMLElement>(null);
  const kept = useRef<{ readonly undo: () => void }>(null);

  const changes = useMemo(() => steps.flat(), [steps]);
  const board = useMemo(() => recast(given.board, changes), [given.board, changes]);
  const view = useMemo(() => gridView(board, asked), [board, asked]);
  const columns = view.columns.length + 2;

  useEffect(() => setReady(true), []);
  const onKept = useCallback(() => setSteps([]), []);

  const focus = ({ row, column }: Hand) =>
    requestAnimationFrame(() => frame.current?.querySelector<HTMLElement>(`[data-at="${row},${column}"]`)?.focus());
  const go = (to: Hand, stretch = false) => {
    setAt(to);
    if (!stretch) setFrom(to);
    focus(to);
  };
  const row = view.rows[at.row];
  const column = view.columns[at.column - 1];
  const cell = row && column ? cellOf(row, column) : null;

  const step = (more: readonly Recast[], words: string) => {
    if (more.length === 0) return;
    setSteps([...steps, more]);
    setSaid(words);
  };
  const undo = () => {
    if (steps.length === 0) return kept.current?.undo();
    setSteps(steps.slice(0, -1));
    setSaid(`Taken back: ${plural(steps.at(-1)?.length ?? 0, "cell")}.`);
  };
  const open = (role: string) => {
    const next = { ...asked, open: asked.open.includes(role) ? asked.open.filter((one) => one !== role) : [...asked.open, role] };
    setAsked(next);
    window.history.replaceState(null, "", window.location.pathname + writeAsked(next));
    focus(at);
  };
  const clear = () => {
    const emptied = clearedBlock(view, at, from);
    step(emptied, emptied.length === 1 ? recastWords(board, emptied[0]!) : `${plural(emptied.length, "cell")} cleared.`);
  };
  const onEnd = (typed: Typed) => {
    setTyping(null);
    if (typed === null || !cell) return go(at);
    const was = view.cells.at(cell).performers ?? [];
    const change: Recast = { ...cell, performers: typed.performers };
    const same = was.length === typed.performers.length && was.every((code, index) => code === typed.performers[index]);
    if (!same) step([change], recastWords(board, change));
    const to = typed.go === "down" ? "ArrowDown" : typed.go === "right" ? "ArrowRight" : null;
    go((to && goneBy(to, false, at, view.rows.length, columns)) ?? at);
  };
  /** The hand goes where the focus does, however it came there. */
  const onFocus = (event: React.FocusEvent) => {
    const [row, column] = (event.target as HTMLElement).dataset.at?.split(",").map(Number) ?? [];
    if (row === undefined || column === undefined || (row === at.row && column === at.column)) return;
    setAt({ row, column });
    setFrom({ row, column });
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    if (typing !== null) return;
    const control = event.ctrlKey || event.metaKey;
    const to = goneBy(event.key, control, at, view.rows.length, columns);
    const act = to ? () => go(to, event.shiftKey) : actOf(event.key, control);
    if (!act) return;
    event.preventDefault();
    act();
  };
  const all = () => {
    setFrom({ row: 0, column: 1 });
    go({ row: view.rows.length - 1, column: columns - 2 }, true);
  };
  const actOf = (key: string, control: boolean): (() => void) | null => {
    if (control) {
      if (key.toLowerCase() === "z") return undo;
      if (key.toLowerCase() === "a") return all;
      return null;
    }
    if (row && row.place === null && (key === "Enter" || key === "F2")) return () => open(row.role);
    if (row && at.column === 0 && key === "Enter" && asked.open.includes(row.role)) return () => open(row.role);
    if (key === "Delete" || key === "Backspace") return clear;
    if (!cell) return null;
    if (key === "Enter" || key === "F2") return () => setTyping(typedNames(board, view.cells.at(cell).performers ?? []));
    return key.length === 1 && key !== " " ? () => setTyping(key) : null;
  };
  const onPaste = (event: React.ClipboardEvent) => {
    if (typing !== null || !column) return;
    event.preventDefault();
    const block = pastedBlock(event.clipboardData.getData("text/plain"));
    const pasted = pasteCells(block, { row: at.row, column: at.column - 1 }, view.rows, view.columns, board.performers);
    if (pasted.problems.length > 0) setSaid(`Nothing was pasted. ${pasted.problems.slice(0, 3).join(" ")}`);
    else step(pasted.changes, `${plural(pasted.changes.length, "cell")} pasted.`);
  };
  const onCopy = (event: React.ClipboardEvent) => {
    if (typing !== null) return;
    event.preventDefault();
    event.clipboardData.setData("text/plain", copiedBlock(board, view, at, from));
    setSaid("Copied.");
  };
  const onPress = (event: React.MouseEvent) => {
    const found = (event.target as HTMLElement).closest<HTMLElement>("[data-at]")?.dataset.at?.split(",").map(Number);
    const link = (event.target as HTMLElement).closest("a");
    if (!found || typing !== null) return;
    const to = { row: found[0] ?? 0, column: found[1] ?? 0 };
    if (link) event.preventDefault();
    if (link || (to.row === at.row && to.column === at.column && view.rows[to.row]?.place === null)) return open(view.rows[to.row]!.role);
    const again = to.row === at.row && to.column === at.column && cell !== null;
    if (again && document.activeElement?.matches(`[data-at="${found.join(",")}"]`) && event.detail > 1)
      return setTyping(typedNames(board, view.cells.at(cell).performers ?? []));
    go(to, event.shiftKey);
  };
  const clashes = [...new Set([...view.doubled.values()].flat())].filter(({ kind }) => kind === "clash");
  return (
    <div className={styles.room}>
      <div>
        <section
          ref={frame}
          className={styles.frame}
          aria-label="Who dances what"
          onFocus={onFocus}
          onKeyDown={onKeyDown}
          onPaste={onPaste}
          onCopy={onCopy}
          onClick={onPress}
        >
          <GridTable
            board={board}
            view={view}
            asked={asked}
            facts={given.facts}
            links={!ready}
            hand={ready ? { at, from, typing, changed: new Set(changes.map(cellKey)), onEnd } : null}
          />
        </section>
        <GridKeys />
        <p role="status" className="small q">
          {said}
        </p>
        <KeptUndo production={given.production} ref={kept} />
        {clashes.length > 0 && (
          <ul className="small bad">
            {clashes.map((one) => (
              <li key={JSON.stringify(one)}>{doublingSentence(board, one)}</li>
            ))}
          </ul>
        )}
      </div>
      <KeepPanel
        production={given.production}
        changes={changes}
        seen={seenCells(given.board, changes)}
        onPutBack={() => {
          setSteps([]);
          setSaid("Everything is put back.");
          focus(at);
        }}
        onKept={onKept}
      />
    </div>
  );
};
