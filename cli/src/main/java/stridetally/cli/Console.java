package stridetally.cli;

import java.io.InputStream;
import java.io.OutputStream;
import java.time.Clock;
import stridetally.cli.options.CommonOptions;
import stridetally.problem.ProblemTally;
import stridetally.problem.Severity;

/** What a command may use of its surroundings: streams, clock, and a voice towards the person that heeds {@code --quiet}. */
public final class Console {
    private final Surroundings surroundings;
    private final CommonOptions common;

    Console(Surroundings surroundings, CommonOptions common) {
        this.surroundings = surroundings;
        this.common = common;
    }

    /** Standard input. */
    public InputStream in() {
        return surroundings.in();
    }

    /** Standard output, for results only. */
    public OutputStream out() {
        return surroundings.out();
    }

    /** The clock behind the default of {@code --as-of}. */
    public Clock clock() {
        return surroundings.clock();
    }

    /** Whether a person would have to type the input, so that reading it would be a silent wait. */
    public boolean wouldWaitForTyping() {
        return surroundings.terminals().contains(Terminal.INPUT);
    }

    /** Shows how far a reading of so many bytes has come; silent unless a person looks on. */
    public Progress progress(long total) {
        boolean shown = surroundings.terminals().contains(Terminal.ERRORS) && !common.quiet();
        return new Progress(surroundings.err(), shown, total, System::nanoTime);
    }

    /** Says something useful to know; {@code --quiet} drops it. */
    public void note(String sentence) {
        if (!common.quiet()) {
            warn(sentence);
        }
    }

    /** Tells what is wrong with rows: that some were not taken must be known, what is only doubtful can be hushed. */
    public void tell(ProblemTally problems) {
        for (String sentence : problems.sentences(Severity.SET_ASIDE)) {
            warn(sentence);
        }
        for (String sentence : problems.sentences(Severity.NOTE)) {
            note(sentence);
        }
        for (String sentence : problems.sentences(Severity.COUNTED)) {
            note(sentence);
        }
    }

    /** Says something that must be known; {@code --quiet} keeps it. */
    public void warn(String sentence) {
        surroundings.err().println("stridetally: " + sentence);
    }
}
