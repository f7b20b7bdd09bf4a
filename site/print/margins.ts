/** What stands in the margins of every page. */
export interface PageMargins {
  readonly topLeft: string;
  readonly topRight: string;
  readonly bottomLeft: string;
}

/** The rule that puts words into the margins of the pages. Its texts come from files: every sign of them is escaped. */
export function pageRule({ topLeft, topRight, bottomLeft }: PageMargins): string {
  const type = "font: 8pt/11pt ui-sans-serif, system-ui, 'Liberation Sans', Arial, sans-serif; color: #3a3f49;";
  return `@page {
    margin: 20mm 16mm 18mm;
    @top-left { content: ${cssString(topLeft)}; ${type} }
    @top-right { content: ${cssString(topRight)}; ${type} }
    @bottom-left { content: ${cssString(bottomLeft)}; ${type} }
    @bottom-right { content: "page " counter(page) " of " counter(pages); ${type} }
  }`;
}

/** A text as a string of CSS, whatever it holds. */
export function cssString(text: string): string {
  const escaped = [...text].map((sign) => (/[A-Za-z0-9 .,·:-]/.test(sign) ? sign : `\\${sign.codePointAt(0)!.toString(16)} `));
  return `"${escaped.join("")}"`;
}
