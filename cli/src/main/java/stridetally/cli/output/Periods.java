package stridetally.cli.output;

import java.util.List;
import stridetally.cli.input.ScoredLogbook;
import stridetally.model.Period;
import stridetally.model.Student;
import stridetally.model.StudentCode;
import stridetally.report.ReportPeriod;

/** The reporting periods of a student's school. */
final class Periods {
    private Periods() {}

    /** Those that have begun, in the order of the settings. */
    static List<ReportPeriod> begun(ScoredLogbook book, StudentCode code) {
        var settings = book.open().caseload().settings();
        String school =
                book.open().caseload().student(code).map(Student::school).orElse("");
        return settings.periods().stream()
                .map(Period::name)
                .distinct()
                .flatMap(name -> ReportPeriod.named(name, settings, school).stream())
                .filter(period -> !period.days().first().isAfter(book.asOf()))
                .toList();
    }
}
