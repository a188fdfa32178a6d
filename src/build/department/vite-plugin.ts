/** Lets pages import the department's colours and type, and lets the server of `npm run dev` begin anew when its file changes. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";
import { departmentFolder } from "./department.ts";

/** `import "department:theme.css"` stands after our own styles, so what it says holds. */
const THEME = "department:theme.css";
const NONE = "\0department-without-theme.css";

export function departmentPlugin(): Plugin {
  const place = departmentFolder();
  const inFolder = (file: string) => place && join(place.root, place.folder, file);
  const theme = inFolder("theme.css");
  return {
    name: "department",
    resolveId: (id) => (id !== THEME ? undefined : theme && existsSync(theme) ? theme : NONE),
    load: (id) => (id === NONE ? "" : undefined),
    configureServer: (server) => {
      const file = inFolder("department.yaml");
      if (!file) return;
      server.watcher.add(file);
      const begin = (changed: string) => {
        if (changed === file) void server.restart();
      };
      for (const event of ["add", "change", "unlink"] as const) server.watcher.on(event, begin);
    },
  };
}
