import { ASK_HELP } from "./askHelp";
import { WHAT_IF_HELP } from "./whatIfHelp";

/** Help for each command: examples first. */
export const HELP = {
  tarlatan: `Plans the making of a ballet company's wardrobe from a folder of spreadsheets.

Examples
  npm run -s tarlatan -- plan seed/small --out plan
  npm run -s tarlatan -- check seed/small

Commands
  plan FOLDER --out DIR   break down, level and roll up; write the tables into DIR
  ask FOLDER [QUESTION]   answer a question about it; without one, list them all
  check FOLDER            only read the folder and tell what is wrong with it
  compare BEFORE AFTER    plan two folders and tell what changes
  sources FOLDER PIECE    make, pull, alter, hire or buy: hours, money and date
  remedies FOLDER         what would help a late plan, each as a plan of its own
  versions FOLDER CONSTRUCTION NEW.json
                          what a new version of a construction would change
  help [COMMAND]          say more about a command

Options
  -h, --help   this text, or more about a command
  --version    the version

The columns of every file are described in seed/README.md.
`,
  plan: `Breaks a staging down into tasks, levels them across the makers, and lists what must be bought.

Examples
  npm run -s tarlatan -- plan seed/small --out plan
  npm run -s tarlatan -- plan seed/small --out plan --rounds 200 --seed 7
  npm run -s tarlatan -- plan seed/small --out plan --json | jq .lateGarments

Usage
  npm run -s tarlatan -- plan FOLDER --out DIR [--json] [--seconds S] [--rounds R] [--seed N] [--today DAY] [--cut S]

Options
  --out DIR      where the tables go; files of the same names there are replaced
  --json         the summary as JSON on standard output
  --seconds S    search so long, then keep the best plan (4 unless rounds are given)
  --rounds R     search so many rounds; 0 keeps the plain priority rule
  --seed N       where the search begins (1); same seed and rounds, same plan
  --today DAY    plan from this day, like 2027-01-11, and order goods on it
                 (today, or the production's first day if that is later)
  --cut S        search so long for each cutting plan that is not proved at once (0: none)

Writes tasks.csv, plan.csv, load.csv, fittings.csv, purchase.csv, cutting.csv, notes.csv and summary.json.
Ends with 0 when a plan was found, 2 when the folder or the command has faults (nothing is written), 1 on a defect.
`,
  check: `Reads a staging and tells every fault as file:row:column with its mend. Writes nothing.

Examples
  npm run -s tarlatan -- check seed/small

Ends with 0 when there are no faults, 2 when there are, 1 on a defect.
`,
  ask: ASK_HELP,
  ...WHAT_IF_HELP,
} as const;
