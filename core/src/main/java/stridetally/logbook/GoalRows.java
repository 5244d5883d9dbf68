package stridetally.logbook;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stridetally.model.Criterion;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.GoalId;
import stridetally.model.GoalSide;
import stridetally.model.MeasureId;
import stridetally.model.Protocol;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.problem.Checked;
import stridetally.problem.ProblemCode;
import stridetally.table.Cells;

/** A row of {@code goals.csv}. Baseline, target and weight are plain decimals; the first two in the measure's own unit. */
final class GoalRows {
    private static final Set<TrialPlace> USUAL_PLACES = EnumSet.of(TrialPlace.SCHOOL, TrialPlace.CLINIC);

    private final Settings settings;

    GoalRows(Settings settings) {
        this.settings = settings;
    }

    Checked<Goal> read(Cells cells) {
        KeptRow row = new KeptRow(cells);
        String id = row.required("goal");
        String student = row.required("student");
        String measure = row.required("measure");
        GoalSide side = row.word("side", KeptWords.SIDES).orElse(GoalSide.NONE);
        Protocol protocol = protocol(row);
        var baseline = row.amount("baseline");
        Optional<LocalDate> baselineDate = row.date("baseline_date");
        var target = row.amount("target");
        Optional<LocalDate> due = row.date("due");
        if (baselineDate.isPresent() && due.isPresent() && !due.get().isAfter(baselineDate.get())) {
            // The goal stays in sight: it can be shown, though no line can be drawn for it.
            row.tell(
                    ProblemCode.GOAL_UNCLEAR,
                    "due",
                    row.text("due"),
                    "a day after the baseline date",
                    "correct one of the two dates");
        }
        Criterion criterion = criterion(row);
        var help = row.level("help", settings.help(), ProblemCode.HELP_UNKNOWN);
        var prompt = row.level("prompt", settings.prompt(), ProblemCode.PROMPT_UNKNOWN);
        var summary = row.word("summary", KeptWords.SUMMARIES);
        Set<TrialPlace> places = places(row);
        GoalAim aim = row.word("aim", KeptWords.AIMS).orElse(GoalAim.REACH);
        var weight = row.amount("weight");
        var from = row.date("from");
        var until = row.date("until");
        var ended = row.word("ended", KeptWords.ENDS);
        var follows = row.id("follows", GoalId::new);
        return row.checked(() -> new Goal(
                new GoalId(id),
                new StudentCode(student),
                new MeasureId(measure),
                side,
                protocol,
                row.text("statement"),
                row.text("routine"),
                baseline,
                baselineDate,
                row.text("baseline_how"),
                target,
                due,
                criterion,
                help,
                prompt,
                summary,
                places,
                aim,
                weight,
                from,
                until,
                ended,
                follows));
    }

    private static Criterion criterion(KeptRow row) {
        var met = row.whole("trials_met", 1, Integer.MAX_VALUE);
        var given = row.whole("trials_given", 1, Integer.MAX_VALUE);
        var sessions = row.whole("sessions_met", 1, Integer.MAX_VALUE);
        if (met.isPresent() && given.isPresent() && met.getAsInt() > given.getAsInt()) {
            row.unreadable(
                    "trials_met",
                    row.text("trials_met"),
                    "at most the tries given, " + given.getAsInt(),
                    "correct one of the two numbers");
        }
        return new Criterion(met, given, sessions);
    }

    private static Set<TrialPlace> places(KeptRow row) {
        List<TrialPlace> places = row.words("places", KeptWords.PLACES);
        return places.isEmpty() ? USUAL_PLACES : EnumSet.copyOf(places);
    }

    /** Pairs such as {@code eyes=open;surface=floor}; whether the measure knows the keys is the catalogue's business. */
    private static Protocol protocol(KeptRow row) {
        TreeMap<String, String> keys = new TreeMap<>();
        for (String pair : row.text("protocol").split(";", -1)) {
            String[] parts = pair.split("=", 2);
            String key = KeptTable.fold(parts[0]);
            if (pair.isBlank()) {
                continue;
            }
            if (parts.length < 2 || key.isEmpty() || parts[1].isBlank()) {
                row.tell(
                        ProblemCode.PROTOCOL_UNREADABLE,
                        "protocol",
                        pair.strip(),
                        "key=value, several joined by semicolons",
                        "write it as eyes=open");
            } else if (keys.put(key, parts[1].strip()) != null) {
                row.tell(
                        ProblemCode.PROTOCOL_UNREADABLE,
                        "protocol",
                        pair.strip(),
                        "each key once",
                        "take one of the two out");
            }
        }
        return new Protocol(keys);
    }
}
