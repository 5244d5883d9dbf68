package stridetally.report;

/**
 * How an HTML page looks on a screen and on paper. The paper's size is left to the printer: nothing is wider than 160 mm, so
 * A4 and Letter both hold it. Charts and rows are never cut by the end of a page, and a goal begins a new one. A home sheet
 * is set close, so that three tasks with all their cautions fill one page of either paper; more of them go on to a second.
 */
final class PageStyle {
    private static final String CSS = """
            @page { margin: 12mm 15mm; }
            @page goals { margin: 9mm 15mm; }
            @page lying { size: landscape; margin: 12mm 15mm; }
            * { box-sizing: border-box; }
            html { background: PAPER; color: TEXT; }
            body { margin: 0 auto; padding: 1.5rem 1rem; max-width: 48rem;
              font: 1rem/1.45 Helvetica, Arial, "Liberation Sans", "DejaVu Sans", sans-serif; }
            h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 0.8rem; }
            h2 { font-size: 1.3rem; line-height: 1.2; margin: 2rem 0 0.6rem; padding-top: 0.4rem; border-top: 2px solid TEXT; }
            h3 { font-size: 1.05rem; margin: 1.2rem 0 0.4rem; }
            p, ul { margin: 0.4rem 0; }
            ul { padding-left: 1.3rem; }
            h1, h2, h3, p, li { overflow-wrap: anywhere; }
            td, th { overflow-wrap: break-word; }
            figure { margin: 0.8rem 0; overflow-x: auto; }
            figure svg { display: block; max-width: 100%; height: auto; }
            table { border-collapse: collapse; margin: 0.6rem 0; font-size: 0.9rem; }
            caption { text-align: left; color: QUIET; font-size: 0.85rem; padding: 0.2rem 0; }
            caption.said { position: absolute; width: 1px; height: 1px; padding: 0; overflow: hidden;
              clip-path: inset(50%); white-space: nowrap; }
            th, td { border: 1px solid GRID; padding: 0.2rem 0.5rem; text-align: left; vertical-align: top; }
            thead th, thead td { border-bottom: 2px solid TEXT; }
            tbody th { font-weight: normal; }
            .whole { white-space: nowrap; }
            table.sessions { font-size: 0.8rem; }
            table.sessions td, table.sessions th { padding: 0.05rem 0.5rem; line-height: 1.3; }
            .beside { display: flex; flex-wrap: wrap; align-items: flex-start; gap: 0 1rem; }
            article + article { margin-top: 4rem; }
            @media screen {
              article.lying { width: min(80rem, 100vw - 2rem); margin-left: calc(50% - min(40rem, 50vw - 1rem)); overflow-x: auto; }
              table.wide { font-size: 0.8rem; }
            }
            @media print {
              body { padding: 0; max-width: none; font-size: 9.5pt; line-height: 1.35; }
              h1 { font-size: 16pt; }
              h2 { font-size: 13pt; margin-top: 5mm; }
              h3 { font-size: 10.5pt; margin: 3mm 0 1mm; }
              p, ul { margin: 1mm 0; }
              table { font-size: 8.5pt; line-height: 1.25; margin: 1.5mm 0; }
              th, td { padding: 0.3mm 2mm; }
              caption { font-size: 8pt; }
              table.sessions, table.wide { font-size: 7.5pt; }
              table.wide th, table.wide td { padding: 0 1mm; }
              article.sheet { font-size: 9pt; line-height: 1.25; }
              article.sheet h1 { font-size: 14pt; margin-bottom: 1mm; }
              article.sheet h2 { font-size: 11.5pt; margin: 2.5mm 0 1mm; padding-top: 0.5mm; border-top-width: 1px; }
              article.sheet h3 { font-size: 9.5pt; margin: 1.5mm 0 0.5mm; }
              article.sheet p, article.sheet ul { margin: 0.5mm 0; }
              article.sheet ul, article.letter ul { break-inside: avoid; }
              article.goals { page: goals; font-size: 8.5pt; line-height: 1.17; }
              article.goals h2 { font-size: 12pt; margin: 3mm 0 0.5mm; padding-top: 0.5mm; border-top-width: 1px; }
              article.goals h2.goal { margin-top: 0; }
              article.goals h3 { font-size: 9.5pt; margin: 1mm 0 0.1mm; }
              article.goals p, article.goals ul { margin: 0.2mm 0; }
              article.goals table { font-size: 8pt; margin: 0.8mm 0; }
              article.goals th, article.goals td { padding: 0 1.5mm; }
              article.goals tbody th { white-space: nowrap; }
              article.goals .charted { display: flex; gap: 2.5mm; align-items: flex-start; break-inside: avoid; }
              article.goals table:has(+ .charted) { break-after: avoid; }
              article.goals figure { flex: 0 0 106mm; margin: 0.5mm 0 0; }
              article.goals .beside { flex: 1; flex-wrap: nowrap; gap: 0 1.2mm; }
              article.goals .beside caption { font-size: 7pt; padding: 0; }
              article.goals .beside table { font-size: 6.8pt; line-height: 1.15; margin: 0; }
              article.goals .beside th, article.goals .beside td { padding: 0 0.5mm; }
              article.review { font-size: 9pt; line-height: 1.25; }
              article.review h3 { font-size: 10pt; margin: 2mm 0 0.5mm; }
              article.review h2 { margin-top: 3mm; }
              article.review p, article.review ul { margin: 0.3mm 0; }
              article.review figure { margin: 1mm 0; }
              article.review figure svg { max-width: 122mm; }
              article.review table { font-size: 8pt; margin: 1mm 0; }
              article.review th, article.review td { padding: 0 1.5mm; }
              article.lying { page: lying; }
              article.glance { font-size: 8.5pt; line-height: 1.2; }
              article.glance h2 { font-size: 11pt; margin: 2.5mm 0 0.5mm; padding-top: 0.5mm; border-top-width: 1px; }
              article.glance p, article.glance ul { margin: 0.4mm 0; }
              article.form td, article.form tbody th { height: 8mm; vertical-align: bottom; }
              table.sessions th, table.sessions td { padding: 0 2mm; }
              figure { margin: 2mm 0; overflow: visible; }
              h1, h2, h3 { break-after: avoid; }
              h2.goal, article + article { break-before: page; }
              article + article { margin-top: 0; }
              figure, tr, li, p, table { break-inside: avoid; }
              table.sessions, table.long { break-inside: auto; }
              thead { display: table-header-group; }
              p, li { orphans: 3; widows: 3; }
            }
            """;

    private static final String INKED = inked();

    private PageStyle() {}

    static String css() {
        return INKED;
    }

    /** No other word of the sheet has the name of an ink in it. */
    private static String inked() {
        String css = CSS;
        for (Ink ink : Ink.values()) {
            css = css.replace(ink.name(), ink.hex());
        }
        return css;
    }
}
