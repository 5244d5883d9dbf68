package stridetally.cli.files;

/** What to do with a folder that holds files which are not ours. */
public enum Overwrite {
    /** Refuse it. */
    REFUSE,
    /** Write into it ({@code --force}). */
    FORCE
}
