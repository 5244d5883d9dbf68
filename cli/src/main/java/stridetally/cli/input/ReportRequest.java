package stridetally.cli.input;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stridetally.cli.options.AsOfOption;
import stridetally.cli.options.ReportFor;
import stridetally.cli.options.ReportOptions;
import stridetally.logbook.Entry;
import stridetally.logbook.SetAsideRecord;
import stridetally.model.DateRange;
import stridetally.model.Period;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemCode;
import stridetally.problem.Spelling;
import stridetally.report.ReportInput;
import stridetally.report.SetAsideRow;

/** Gathers what the documents of one run are made of. */
public final class ReportRequest {
    private ReportRequest() {}

    /**
     * Which days the documents of a run are about.
     *
     * @param typed what was asked for; empty when nothing was
     * @param asOf the day to reckon from
     * @param ofTheYear the days of a review: two dates when they were typed, else the year up to {@code asOf}
     */
    public record Days(
            Optional<ReportInput.PeriodChoice> typed, LocalDate asOf, ReportInput.PeriodChoice.Dates ofTheYear) {
        /** The period of documents that need one. */
        public ReportInput.PeriodChoice period() {
            return typed.orElse(ofTheYear);
        }
    }

    /** The days, as typed; without a period only documents of the year can do. */
    public static Days days(Settings settings, ReportOptions about, AsOfOption asOf, Clock clock) {
        boolean typed = about.period().isPresent()
                || about.from().isPresent()
                || about.to().isPresent();
        Optional<ReportInput.PeriodChoice> period =
                typed || !about.whom().stream().allMatch(ReportFor::ofTheYear)
                        ? Optional.of(period(settings, about.period(), about.from(), about.to()))
                        : Optional.empty();
        Optional<LocalDate> known = asOf.typed();
        if (known.isEmpty() && period.isPresent()) {
            known = lastDay(settings, period.get());
        }
        LocalDate day = known.isPresent() ? known.get() : asOf.day(clock);
        ReportInput.PeriodChoice.Dates year = new ReportInput.PeriodChoice.Dates(
                new DateRange(day.minusYears(1).plusDays(1), day));
        boolean dates = period.isPresent() && period.get() instanceof ReportInput.PeriodChoice.Dates;
        return new Days(period, day, dates ? (ReportInput.PeriodChoice.Dates) period.get() : year);
    }

    /** The period by its name, or two dates. Refuses an unknown name with the known ones. */
    public static ReportInput.PeriodChoice period(
            Settings settings, Optional<String> name, Optional<LocalDate> from, Optional<LocalDate> to) {
        if (name.isPresent()) {
            Set<String> names = new LinkedHashSet<>();
            for (Period one : settings.periods()) {
                names.add(one.name());
            }
            List<String> known = List.copyOf(names);
            if (!known.contains(name.get())) {
                String near = Spelling.nearest(name.get(), known)
                        .map(one -> " (did you mean " + one + "?)")
                        .orElse("");
                throw new InputRefused("there is no period \"" + name.get() + "\" in logbook.toml" + near + "; it has: "
                        + (known.isEmpty() ? "none" : String.join(", ", known)));
            }
            return new ReportInput.PeriodChoice.Named(name.get());
        }
        if (from.isPresent() && to.isPresent() && !to.get().isBefore(from.get())) {
            return new ReportInput.PeriodChoice.Dates(new DateRange(from.get(), to.get()));
        }
        throw new InputRefused("say which days the report is about: --period NAME, or --from DATE and --to DATE");
    }

    /** The day to reckon from when none was typed: the last day of the period. */
    public static Optional<LocalDate> lastDay(Settings settings, ReportInput.PeriodChoice period) {
        if (period instanceof ReportInput.PeriodChoice.Dates dates) {
            return Optional.of(dates.days().last());
        }
        String name = period instanceof ReportInput.PeriodChoice.Named named ? named.name() : "";
        Optional<LocalDate> last = Optional.empty();
        for (Period one : settings.periods()) {
            LocalDate end = one.days().last();
            if (one.name().equals(name) && (last.isEmpty() || end.isAfter(last.get()))) {
                last = Optional.of(end);
            }
        }
        return last;
    }

    /** Everything of the caseload, with names only when they are given. */
    public static ReportInput of(ScoredLogbook book, ReportInput.PeriodChoice period, Map<StudentCode, String> names) {
        ReportInput bare = new ReportInput(
                book.open().caseload(),
                book.review(),
                Map.of(),
                period,
                new ReportInput.Stamp(book.open().caseload().settings().id(), lastEntry(book)),
                setAside(book),
                book.ahead(),
                book.forecast().id(),
                book.error(),
                names);
        return bare.gather(book.scorer(), ScoredLogbook.measures(book.open()));
    }

    /** The number of the last entry that was read. */
    public static int lastEntry(ScoredLogbook book) {
        int last = 0;
        for (Entry entry : book.open().book().entries()) {
            last = Math.max(last, entry.number());
        }
        return last;
    }

    private static List<SetAsideRow> setAside(ScoredLogbook book) {
        List<SetAsideRow> rows = new ArrayList<>();
        for (SetAsideRecord record : book.open().book().openSetAside()) {
            String student = record.row().student();
            List<ProblemCode> codes = new ArrayList<>();
            for (String code : record.row().codes().split(" ", -1)) {
                if (!code.isBlank()) {
                    codes.add(ProblemCode.valueOf(code));
                }
            }
            if (!student.isBlank()) {
                rows.add(new SetAsideRow(new StudentCode(student), record.row().at(), codes));
            }
        }
        return rows;
    }
}
