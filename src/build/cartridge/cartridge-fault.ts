/** Reasons told before the rest are only counted. */
const TOLD = 20;

/** A cartridge that cannot be written or read. Its message, the reasons of the run, is for whoever gave it. */
export class CartridgeFault extends Error {
  override name = "CartridgeFault";
  readonly reasons: readonly string[];

  constructor(...reasons: string[]) {
    const more = reasons.length - TOLD;
    super([...reasons.slice(0, TOLD), ...(more > 0 ? [`And ${more} more.`] : [])].join("\n"));
    this.reasons = reasons;
  }
}
