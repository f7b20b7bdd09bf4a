import { quantity } from "../../../lib/quantity";

/** A share as rows of a table state it, in per cent. */
export const share = (percent: number) => quantity("fraction", percent, "%");
