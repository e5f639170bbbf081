/** A failure that the person at the keyboard can mend: shown as one line, without a stack. */
export class Complaint extends Error {}

const complaints = {
  ENOSPC: "The disk is full. Free some space and start again.",
  EROFS: "The folder cannot be written to: it is read-only.",
  EACCES: "The folder cannot be written to by this user.",
};

/** The one line to show for an error, or null when it is a defect whose stack is wanted. */
export function asComplaint(error) {
  if (error instanceof Complaint) return error.message;
  const known = complaints[error?.code];
  if (known) return error.path ? `${known} (${error.path})` : known;
  return null;
}

/** The one line hidden in the output of a command that failed, or null. */
export function complaintIn(output) {
  return /no space left on device|ENOSPC|disk quota exceeded/i.test(output) ? complaints.ENOSPC : null;
}
