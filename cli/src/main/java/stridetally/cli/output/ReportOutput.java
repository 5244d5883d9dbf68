package stridetally.cli.output;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.options.PageFormat;
import stridetally.model.StudentCode;
import stridetally.problem.InputRefused;
import stridetally.report.CaseloadHtml;
import stridetally.report.CaseloadMarkdown;
import stridetally.report.CaseloadReport;
import stridetally.report.ReportCsv;
import stridetally.report.ReportInput;
import stridetally.report.ReportJson;
import stridetally.report.TeamHtml;
import stridetally.report.TeamMarkdown;
import stridetally.report.TeamReport;
import stridetally.stats.Estimate;

/** The documents of {@code report}. */
public final class ReportOutput {
    private ReportOutput() {}

    /** The documents of the students that are shown, by code. */
    public static List<TeamReport> team(ReportInput input, Predicate<StudentCode> shown) {
        List<TeamReport> documents = new ArrayList<>();
        for (StudentCode student : TeamReport.students(input)) {
            if (shown.test(student)) {
                Estimate<TeamReport> document = TeamReport.of(input, student);
                document.value().ifPresent(documents::add);
                if (!document.isEstimated()) {
                    throw new InputRefused("no document for " + student.text() + ": " + document.reason());
                }
            }
        }
        return documents;
    }

    /** All documents one after another. */
    public static Content together(List<TeamReport> documents, PageFormat format) {
        return Content.text(out -> {
            switch (format) {
                case CSV -> ReportCsv.write(documents, out);
                case JSON -> ReportJson.write(documents, out);
                case HTML -> TeamHtml.write(documents, out);
                case MARKDOWN -> {
                    String between = "";
                    for (TeamReport document : documents) {
                        out.append(between);
                        TeamMarkdown.write(document, out);
                        between = "\n---\n\n";
                    }
                }
            }
        });
    }

    /** A file for each student. */
    public static void apart(List<TeamReport> documents, OutputFolder folder, PageFormat format) {
        for (TeamReport document : documents) {
            String name = fileName(document.head().code()) + format.extension();
            folder.write(name, together(List.of(document), format));
        }
    }

    /** The caseload in one table. */
    public static Content caseload(CaseloadReport report, PageFormat format) {
        return Content.text(out -> {
            switch (format) {
                case CSV -> ReportCsv.write(report, out);
                case JSON -> ReportJson.write(report, out);
                case HTML -> CaseloadHtml.write(report, out);
                case MARKDOWN -> CaseloadMarkdown.write(report, out);
            }
        });
    }

    /** A code may hold signs that a file system does not take. */
    static String fileName(StudentCode code) {
        return code.text().replaceAll("[^A-Za-z0-9._-]", "_");
    }
}
