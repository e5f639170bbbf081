import { failed, ok, type Result } from "#lib/result";
import { type Instance, instanceOf } from "../../published/scheduling/instance";

/** The instances of a JSON-lines text; an unreadable line is named by its number. */
export function readInstances(text: string, limit: number): Result<readonly Instance[], string> {
  const instances: Instance[] = [];
  for (const [index, line] of text.split("\n").entries()) {
    if (line.trim() === "") continue;
    if (instances.length >= limit) break;
    const instance = instanceOf(parsed(line));
    if (instance === null) return failed(`line ${index + 1} is not a scheduling instance.`);
    instances.push(instance);
  }
  return instances.length > 0 ? ok(instances) : failed("there is no instance in it.");
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return null;
  }
}
