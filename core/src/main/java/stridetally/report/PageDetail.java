package stridetally.report;

/** How much of each goal a page says. */
public enum PageDetail {
    /** What a meeting reads: a goal on one sheet of paper, two when left and right are judged. */
    SUMMARY,
    /** With every session, every figure and, on the team's page, every try. */
    EVERYTHING
}
