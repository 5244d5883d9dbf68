package stridetally.report;

/**
 * The colours of drawn charts and pages. Colour never says anything alone: each mark has a shape and each line a dash of its
 * own. Text has at least 4.5 to 1 against white, marks and lines at least 3 to 1 against white and against a shaded break.
 *
 * @source wcag2023 success criteria 1.4.1, 1.4.3 and 1.4.11
 */
enum Ink {
    TEXT("#1a1a1a"),
    QUIET("#555555"),
    AIM("#0b5394"),
    OWN("#9c3a00"),
    CHANGE("#5b2c83"),
    GRID("#d4d4d4"),
    BREAK("#e8e8e8"),
    PAPER("#ffffff");

    private final String hex;

    Ink(String hex) {
        this.hex = hex;
    }

    /** As CSS and SVG write it. */
    String hex() {
        return hex;
    }
}
