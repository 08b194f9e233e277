/** What pdfkit 0.20 has and its published types lack. */
declare namespace PDFKit {
  interface PDFDocument {
    readonly _root: PDFKitReference;
  }
}

declare namespace PDFKit.Mixins {
  interface PDFFont {
    registerFont(name: string, font: import('fontkit').Font): this;
  }
}
