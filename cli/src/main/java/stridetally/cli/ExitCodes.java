package stridetally.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a script is told by the exit code. The same list ends the help of every command. */
public final class ExitCodes {
    /** Everything was done. */
    public static final int DONE = 0;

    /** Done, but this run set rows aside, or {@code --strict} found something. */
    public static final int SET_ASIDE = 1;

    /** The command line is wrong. */
    public static final int USAGE = 2;

    /** The input cannot be used; no result was written. */
    public static final int INPUT_REFUSED = 3;

    /** The machine refused: lock, disk, permission, memory. */
    public static final int MACHINE_REFUSED = 4;

    /** A defect of ours. */
    public static final int DEFECT = 70;

    private ExitCodes() {}

    /** Code and meaning, in the order of the help. */
    static Map<String, String> meanings() {
        Map<String, String> meanings = new LinkedHashMap<>();
        meanings.put(" " + DONE, "done");
        meanings.put(" " + SET_ASIDE, "this run set rows aside, or --strict found something");
        meanings.put(" " + USAGE, "wrong usage");
        meanings.put(" " + INPUT_REFUSED, "the input cannot be used; no result was written");
        meanings.put(" " + MACHINE_REFUSED, "the machine refused: lock, disk, permission, memory");
        meanings.put(Integer.toString(DEFECT), "a defect of ours");
        return meanings;
    }
}
