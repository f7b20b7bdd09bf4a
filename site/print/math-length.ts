/**
 * How wide typeset mathematics comes out at most, in upright letters of its own size: parts of a fraction stand over each
 * other, scripts are small, slanted letters and signs take more room.
 */
export function mathLength(node: Node): number {
  if (node.nodeType === 3) return node.textContent!.length;
  const parts = [...node.childNodes];
  const widths = parts.map(mathLength);
  const [first = 0, ...others] = widths;
  switch (node.nodeName.toLowerCase()) {
    case "annotation":
      return 0;
    case "mspace":
      return 2 * Number.parseFloat((node as Element).getAttribute("width") ?? "0");
    case "mi":
      return slanted * sum(widths);
    case "mfrac":
    case "mover":
    case "munder":
    case "munderover":
      return Math.max(0, ...widths);
    case "msub":
    case "msup":
    case "msubsup":
      return first + small * Math.max(0, ...others);
    case "msqrt":
      return 1 + sum(widths);
    // Signs between operands stand apart from them.
    case "mo":
      return sum(widths) + apart;
    default:
      return sum(widths);
  }
}

const [small, slanted, apart] = [0.7, 1.35, 1.2];

function sum(widths: readonly number[]): number {
  return widths.reduce((total, width) => total + width, 0);
}
