/**
 * While somebody writes, a page whose frontmatter cannot be read is left out until it can: the check says what is wrong with it, and with all
 * others, while the server would end at the first. A build has checked everything before it comes here.
 */
import type { Loader, LoaderContext } from "astro/loaders";

/** What Astro hands its own loaders besides: readers of files by their ending. */
interface Readers {
  entryTypes?: ReadonlyMap<string, { getEntryInfo(of: unknown): unknown }>;
}

/** Stands for the data of a page that could not be read. */
const UNREADABLE: Record<string, unknown> = { unreadable: true };

export function patient(loader: Loader): Loader {
  return {
    ...loader,
    load: (context) => {
      const { store, watcher } = context;
      if (!watcher) return loader.load(context);
      return loader.load({
        ...context,
        ...patientReaders(context),
        parseData: async (page) => {
          try {
            return await context.parseData(page);
          } catch {
            return UNREADABLE as never;
          }
        },
        store: {
          ...store,
          set: (entry) => {
            if (entry.data !== UNREADABLE) return store.set(entry);
            store.delete(entry.id);
            return false;
          },
        },
      });
    },
  };
}

/** Frontmatter that is no YAML is read as none. */
function patientReaders({ entryTypes }: LoaderContext & Readers): Readers {
  if (!entryTypes) return {};
  const patientOnes = [...entryTypes].map(([ending, type]) => {
    const getEntryInfo = async (of: unknown) => {
      try {
        return await type.getEntryInfo(of);
      } catch {
        return { body: "", data: {}, rawData: "", slug: "" };
      }
    };
    return [ending, { ...type, getEntryInfo }] as const;
  });
  return { entryTypes: new Map(patientOnes) };
}
