package stridetally.cli.options;

/** Whom a report is for. */
public enum ReportFor {
    TEAM,
    FAMILY,
    CASELOAD;

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
