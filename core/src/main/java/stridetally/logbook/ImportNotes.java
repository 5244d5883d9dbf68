package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.ingest.FormMapping;
import stridetally.ingest.LogRules;
import stridetally.ingest.NamesToCodes;
import stridetally.ingest.TextSource;
import stridetally.ingest.TrialLog;
import stridetally.problem.ProblemCode;

/** What a person should know of how a log was read, as sentences. */
record ImportNotes(LogRules rules, Optional<NamesToCodes> names) {

    /** Of any log. */
    List<String> of(TextSource text) {
        List<String> notes = new ArrayList<>();
        if (!text.note().isEmpty()) {
            notes.add(text.note());
        }
        names.ifPresent(
                any -> notes.add("names were turned into codes, in notes as well; a name that names.csv does not"
                        + " hold is told by its place only, and a note may still hold one"));
        return notes;
    }

    /** Of a log of trials. */
    List<String> of(TextSource text, TrialLog log, FormMapping mapping, TrialImport.Outcome outcome) {
        List<String> notes = of(text);
        if (!mapping.name().isEmpty()) {
            notes.add(0, "read as " + mapping.name() + " says");
        }
        notes.addAll(log.form().notes());
        notes.addAll(outcome.notes());
        List<String> unknown = log.form().first().unknown();
        if (!unknown.isEmpty()) {
            notes.add("columns not read: " + String.join(", ", unknown));
        }
        if (outcome.numbered() > 0) {
            notes.add(
                    outcome.numbered() + " rows have no try number; within a session their order in the file is taken,"
                            + " so equal rows are different tries");
        }
        long blank = outcome.problems().count(ProblemCode.HELP_BLANK);
        if (blank > 0 && rules.blankHelp().isEmpty()) {
            notes.add(Plural.rows(blank) + " without a word on help, kept as not recorded and counted for no goal that"
                    + " names a help. If this form leaves it blank for one meaning, say so:"
                    + " --blank-help independent");
        }
        return notes;
    }
}
