"use client";

import { useId, useLayoutEffect, useRef, useState } from "react";
import type { CastingBoard, GridColumn } from "#lib/casting/castingGrid";
import { performersLike } from "#lib/casting/findPerformer";
import { readNames } from "#lib/casting/pasteCells";
import styles from "./Casting.module.css";

const MOST_OPTIONS = 8;

/** How an edit of a cell ended, and which way the hand goes on. */
export type Typed = { readonly performers: readonly string[]; readonly go: "down" | "right" | "stay" } | null;

/**
 * The cell in hand, typed into: those whose name begins so are offered. Enter takes the one that is marked, Tab as well, Escape puts back.
 * Of several who stand by, parted by `;`, the last is being typed.
 */
export const CellEditor = ({
  board,
  column,
  label,
  first,
  about,
  onEnd,
}: {
  readonly board: CastingBoard;
  readonly column: GridColumn;
  readonly label: string;
  readonly first: string;
  /** What is known of a performer, beside the name. */
  readonly about: Readonly<Record<string, string>>;
  readonly onEnd: (typed: Typed) => void;
}) => {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [text, setText] = useState(first);
  const [marked, setMarked] = useState(0);
  const [at, setAt] = useState<{ readonly left: number; readonly top: number } | null>(null);
  const parts = text.split(";");
  const last = column.standing === "cover" ? (parts.at(-1) ?? "").trim() : text.trim();
  const options = last === "" ? [] : performersLike(last, board.performers).slice(0, MOST_OPTIONS);
  const option = options[Math.min(marked, options.length - 1)];
  const others = column.standing === "cover" ? parts.slice(0, -1).join(";") : "";

  useLayoutEffect(() => {
    input.current?.focus();
    const box = input.current?.getBoundingClientRect();
    if (box) setAt({ left: box.left, top: box.bottom + 4 });
  }, []);

  const end = (go: "down" | "right" | "stay", chosen = option) => {
    const read = readNames(others, column.standing, board.performers);
    if (last !== "" && !chosen) return;
    onEnd({ performers: [...read.codes, ...(last !== "" && chosen ? [chosen.code] : [])], go });
  };
  const moveOf = (key: string): (() => void) | null => {
    switch (key) {
      case "Enter":
        return () => end("down");
      case "Tab":
        return () => end("right");
      case "Escape":
        return () => onEnd(null);
      case "ArrowDown":
        return () => setMarked(Math.min(marked + 1, options.length - 1));
      case "ArrowUp":
        return () => setMarked(Math.max(marked - 1, 0));
      default:
        return null;
    }
  };
  const onKeyDown = (event: React.KeyboardEvent) => {
    event.stopPropagation();
    const move = moveOf(event.key);
    if (!move) return;
    event.preventDefault();
    move();
  };
  return (
    <>
      <input
        ref={input}
        className={styles.editor}
        role="combobox"
        aria-label={label}
        aria-expanded={options.length > 0}
        aria-controls={`${id}-options`}
        aria-autocomplete="list"
        aria-activedescendant={option && `${id}-${option.code}`}
        aria-invalid={last !== "" && options.length === 0}
        autoComplete="off"
        spellCheck={false}
        value={text}
        onChange={(event) => {
          setText(event.target.value);
          setMarked(0);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => (last === "" || option ? end("stay") : onEnd(null))}
      />
      {at && last !== "" && (
        <div id={`${id}-options`} role="listbox" aria-label="Performers" className={styles.options} style={at}>
          {options.map((one) => (
            // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the field's, which keeps the focus and points here.
            <div
              key={one.code}
              id={`${id}-${one.code}`}
              role="option"
              tabIndex={-1}
              aria-selected={one === option}
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => end("stay", one)}
            >
              <b>{one.name}</b>
              {about[one.code] && <small>{about[one.code]}</small>}
            </div>
          ))}
          {options.length === 0 && (
            <div className={styles.no} role="option" tabIndex={-1} aria-selected="false" aria-disabled="true">
              nobody whose name begins so
            </div>
          )}
        </div>
      )}
    </>
  );
};
