/** The choice of an island in the address of its page, so that a link shows it again. */

/**
 * Writes the part after "?"; path and anchor stay, and nothing enters the history.
 * @param search without its "?"; empty for a page as it was built
 */
export function showInAddress(search: string): void {
  try {
    history.replaceState(history.state, "", `${location.pathname}${search && `?${search}`}${location.hash}`);
  } catch {
    // Some browsers refuse after many changes in a short time; the next change writes the address again.
  }
}
