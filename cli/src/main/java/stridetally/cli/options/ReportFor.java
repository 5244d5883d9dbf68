package stridetally.cli.options;

/** Whom a report is for. */
public enum ReportFor {
    TEAM,
    FAMILY,
    CASELOAD,
    /** The year of a student, for the annual review. */
    REVIEW,
    /** The caseload by school, measure, period and help. */
    GROUPS,
    /** Everything about one student. */
    RECORD;

    /** Whether it is about a year, so that no period needs to be named. */
    public boolean ofTheYear() {
        return this == REVIEW || this == GROUPS || this == RECORD;
    }

    /** As typed. */
    @Override
    public String toString() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
