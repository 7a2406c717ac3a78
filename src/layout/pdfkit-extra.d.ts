/** What pdfkit 0.20 understands and @types/pdfkit 0.17 does not know of. */
declare namespace PDFKit {
  interface PDFOutline {
    addItem(title: string, options?: { expanded?: boolean; fit?: boolean; top?: number; left?: number }): PDFOutline;
  }
}

declare namespace PDFKit.Mixins {
  interface StructureElementOptions {
    /** x1, y1, x2, y2 in points from the top left corner of the current page. */
    bbox?: [number, number, number, number];
  }
}
