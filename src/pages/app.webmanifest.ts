/** What a browser needs to put the course on a home screen (Web Application Manifest, W3C). Addresses in it count from where it lies. */
import type { APIRoute } from "astro";
import { LANGUAGE } from "#words/language.ts";
import { SUBTITLE } from "#words/layout.ts";
import { department } from "../build/department/department.ts";
import { LANGUAGES } from "../words/tags.ts";

/** The paper of `ink.css`, which a manifest cannot read. */
const PAPER = "#fbfaf5";

export const GET: APIRoute = () => {
  const { name } = department();
  return Response.json({
    name: `${name}: ${SUBTITLE}`,
    short_name: name,
    lang: LANGUAGE,
    dir: LANGUAGES[LANGUAGE].direction,
    id: "./",
    start_url: "./",
    scope: "./",
    display: "minimal-ui",
    background_color: PAPER,
    theme_color: PAPER,
    icons: [
      { src: "icon.svg", type: "image/svg+xml", sizes: "any" },
      { src: "icon-192.png", type: "image/png", sizes: "192x192" },
      { src: "icon-512.png", type: "image/png", sizes: "512x512" },
      { src: "icon-maskable.png", type: "image/png", sizes: "512x512", purpose: "maskable" },
    ],
  });
};
