/** Where a block of cells goes: its upper left corner. */
export interface PastedBlock {
  readonly cells: readonly (readonly string[])[];
  readonly row: number;
  readonly column: number;
}

type Cell = HTMLInputElement | HTMLSelectElement;

const cellAt = (table: Element, row: number, column: number): Cell | null =>
  table.querySelector<Cell>(`[data-row="${row}"][data-column="${column}"]`);

const placeOf = (target: EventTarget | null): { readonly cell: Cell; readonly row: number; readonly column: number } | null => {
  const cell = target instanceof HTMLInputElement || target instanceof HTMLSelectElement ? target : null;
  const { row, column } = cell?.dataset ?? {};
  return cell && row !== undefined && column !== undefined ? { cell, row: Number(row), column: Number(column) } : null;
};

/** Whether a step to the left or right leaves the cell: the caret stands at its end, or there is none. */
const atEdge = (cell: Cell, step: -1 | 1): boolean => {
  if (!(cell instanceof HTMLInputElement) || cell.type !== "text") return false;
  const caret = cell.selectionStart === cell.selectionEnd ? cell.selectionStart : null;
  return caret === (step < 0 ? 0 : cell.value.length);
};

/** How many rows down and cells to the right a key goes; null when it stays where it is. */
const moveOf = (cell: Cell, { key, shiftKey }: KeyboardEvent): readonly [number, number] | null => {
  // In a choice and in a day the arrows change the value.
  const isText = cell instanceof HTMLInputElement && cell.type === "text";
  if (key === "Enter") return [shiftKey ? -1 : 1, 0];
  if (key === "ArrowDown" && isText) return [1, 0];
  if (key === "ArrowUp" && isText) return [-1, 0];
  if (key === "ArrowLeft" && atEdge(cell, -1)) return [0, -1];
  return key === "ArrowRight" && atEdge(cell, 1) ? [0, 1] : null;
};

/** Up, down and Enter go to the next row, left and right to the next cell once the caret is at the end; Ctrl+Enter sends the form. */
export const moveInSheet = (event: KeyboardEvent): void => {
  const place = placeOf(event.target);
  const table = place?.cell.closest("table");
  if (!place || !table || event.altKey || event.metaKey) return;
  const { cell, row, column } = place;
  if (event.key === "Enter" && event.ctrlKey) {
    cell.form?.requestSubmit();
    return;
  }
  const move = moveOf(cell, event);
  if (!move) return;
  event.preventDefault();
  const next = cellAt(table, row + move[0], column + move[1]);
  next?.focus();
  if (next instanceof HTMLInputElement && next.type === "text") next.select();
};

/** More than one cell on the clipboard, as spreadsheets copy them: tabs between cells, lines between rows. */
export const pastedBlock = (event: ClipboardEvent): PastedBlock | null => {
  const place = placeOf(event.target);
  const text = event.clipboardData?.getData("text/plain").replace(/\r?\n$/, "") ?? "";
  if (!place || !/[\t\n]/.test(text)) return null;
  return { cells: text.split(/\r?\n/).map((line) => line.split("\t")), row: place.row, column: place.column };
};

/** Writes the block into the cells there are; a choice takes the word that is alike. */
export const fillBlock = (table: Element, { cells, row, column }: PastedBlock): void => {
  for (const [down, line] of cells.entries())
    for (const [right, text] of line.entries()) {
      const cell = cellAt(table, row + down, column + right);
      if (cell instanceof HTMLInputElement) cell.value = text.trim();
      else if (cell) {
        const found = [...cell.options].find((option) => option.value.toLowerCase() === text.trim().toLowerCase());
        if (found) cell.value = found.value;
      }
    }
};
