package stridetally.logbook;

/** The steps by which something comes to stand in a logbook, in their order; each is one call to the operating system. */
public enum WriteStep {
    SET_ASIDE_FORCED,
    SET_ASIDE_NAMED,
    SET_ASIDE_FOLDER_FORCED,
    ENTRY_FORCED,
    ENTRY_NAMED,
    ENTRY_FOLDER_FORCED,
    JOURNAL_WRITTEN,
    JOURNAL_FORCED,
    OLD_FILE_KEPT,
    FILE_FORCED,
    FILE_NAMED,
    FILE_FOLDER_FORCED
}
