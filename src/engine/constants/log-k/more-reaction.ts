import type { MoreSourceKey } from "./more-sources.ts";
import type { Reaction } from "./reaction.ts";
import type { SourceKey } from "./sources.ts";

/** A row as in reaction.ts, whose source may also stand in more-sources.ts. */
export type MoreReaction = Omit<Reaction, "source"> & { readonly source: SourceKey | MoreSourceKey };
