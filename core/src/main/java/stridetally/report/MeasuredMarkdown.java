package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import stridetally.scoring.NotUsed;
import stridetally.scoring.SessionStatus;

/** How a goal is measured, and what is missing or not used in it. */
final class MeasuredMarkdown {
    private static final String ALL_COUNTS = "Nothing is missing in the goal, and every try counts.";

    private final MarkdownPage page;
    private final GoalPart part;

    MeasuredMarkdown(MarkdownPage page, GoalPart part) {
        this.page = page;
        this.part = part;
    }

    /** How it is measured, a bullet for each part. */
    void measured() {
        page.heading(3, "How it is measured");
        GoalWords words = part.words();
        page.bullet("What is counted", words.measured() + "; " + words.better());
        if (!words.side().isEmpty()) {
            page.bullet("Side", words.side());
        }
        page.bullet("How it is taken", words.taken());
        page.bullet("Where tries count", words.places());
        page.bullet("What a session is worth", words.valued());
    }

    /** The same in one paragraph. */
    void measuredSummary() {
        page.heading(3, "How it is measured");
        page.paragraph(sentence());
    }

    private String sentence() {
        GoalWords words = part.words();
        return "Counted: " + words.measured() + "; " + words.better() + ". "
                + (words.side().isEmpty() ? "" : "Sides: " + words.side() + ". ")
                + "Taken: " + words.taken() + ". Tries count at: " + words.places() + ". A session is worth "
                + words.valued() + ".";
    }

    /** What is missing or not used, as a part of its own. */
    void missing() {
        page.heading(3, "What is missing or not used");
        if (isNothingMissing()) {
            page.paragraph(ALL_COUNTS);
        }
        gaps();
    }

    /** How it is measured and what is missing, close together at the end of a goal's sheet. */
    void close() {
        page.heading(3, "How it is measured, and what is missing");
        page.bullet(sentence());
        List<String> care = new ArrayList<>(part.doubts());
        care.addAll(MethodLine.care(part));
        if (!care.isEmpty()) {
            page.bullet(String.join(" ", care));
        }
        notTried();
        notUsed();
        if (isNothingMissing()) {
            page.bullet(ALL_COUNTS);
        }
    }

    private boolean isNothingMissing() {
        return part.doubts().isEmpty()
                && part.review().score().notUsed().isEmpty()
                && part.notTried().isEmpty();
    }

    private void gaps() {
        part.doubts().forEach(page::bullet);
        notTried();
        notUsed();
    }

    private void notTried() {
        if (part.notTried().isEmpty()) {
            return;
        }
        StringJoiner notTried = new StringJoiner(", ");
        for (Map.Entry<SessionStatus, Integer> one : part.notTried().entrySet()) {
            notTried.add(one.getValue() + " " + one.getKey().word());
        }
        page.bullet("Sessions of this period without a try", notTried.toString());
    }

    private void notUsed() {
        if (part.review().score().notUsed().isEmpty()) {
            return;
        }
        StringJoiner notUsed = new StringJoiner("; ");
        for (NotUsed one : part.review().score().notUsed()) {
            notUsed.add(Counted.of(one.tries(), "try") + ": " + one.words());
        }
        page.bullet("Tries not used, since the goal began", notUsed.toString());
    }
}
