/** How far the heights of fill marks can be trusted. Apart from the rack, so that its island need not carry it. */
import { HEIGHTS } from "#words/prepare.ts";

export const HeightsNote = () => <p class="small soft">{HEIGHTS}</p>;
