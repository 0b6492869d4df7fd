/** Why something failed, in the words of what was thrown. */
export function troubleText(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}
