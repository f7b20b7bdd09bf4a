import fuel from "../../published/fuel-injection.json";
import { type Row, rowsOf } from "../drive/published";

export const fuelRows = (kind: string) => rowsOf(fuel.rows as readonly Row[], kind);
export const litrePerMinute = 1e-3 / 60;
