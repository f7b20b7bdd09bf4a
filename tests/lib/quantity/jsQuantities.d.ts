declare module "js-quantities" {
  interface Converted {
    readonly scalar: number;
    toBase(): Converted;
  }
  export default function Qty(value: number, unit: string): Converted;
}
