/** What begins a fragment that holds a paper. */
export const MARK = "#paper=";
