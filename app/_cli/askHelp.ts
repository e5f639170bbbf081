/** Help for `ask`: examples first. */
export const ASK_HELP = `Answers a question about a staging, with its reasons.

Examples
  npm run -s tarlatan -- ask seed/small
  npm run -s tarlatan -- ask seed/small hours-left --skill net --before parade
  npm run -s tarlatan -- ask seed/small more-costumes --count 6 --like flake-tutu

Usage
  npm run -s tarlatan -- ask FOLDER [QUESTION] [--json] [--rounds R] [--seconds S] [--seed N] [--today DAY] [options of the question]

Without a question it lists all of them, with their options, answered or not. QUESTION is its name or number.

Options
  --json         the answer as JSON on standard output
  --rounds R     plan the folder in so many rounds of search (10 unless seconds are given)
  --seconds S    search so long instead
  --seed N       where the search begins (1); same seed and rounds, same plan, same answer
  --today DAY    ask as of this day, like 2027-01-11 (today, or the production's first day if that is later)

Ends with 0 when the question was answered, 2 when the folder or the command has faults, or it is not answered yet, 1 on a defect.
`;
