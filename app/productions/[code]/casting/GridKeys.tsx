import styles from "./Casting.module.css";

const KEYS = [
  ["↑ ↓ ← →", "go"],
  ["letters", "find a performer"],
  ["Enter", "change, take"],
  ["Esc", "put back"],
  ["Delete", "nobody yet; again: not in this cast"],
  ["Shift ↓", "several cells"],
  ["Ctrl V", "paste a block"],
  ["Ctrl Z", "undo"],
] as const;

/** The keys of the grid, under it. */
export const GridKeys = () => (
  <p className={`cap no-print ${styles.keys}`}>
    {KEYS.map(([keys, does]) => (
      <span key={keys}>
        <kbd>{keys}</kbd> {does}
      </span>
    ))}
  </p>
);
