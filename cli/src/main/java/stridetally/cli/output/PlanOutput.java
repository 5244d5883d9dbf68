package stridetally.cli.output;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import stridetally.cli.files.Content;
import stridetally.cli.options.Format;
import stridetally.cli.options.PageFormat;
import stridetally.cli.options.PageOutputOptions;
import stridetally.model.Caseload;
import stridetally.model.Contact;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.plan.HomeSheet;
import stridetally.plan.LogSheet;
import stridetally.plan.StudentPlan;
import stridetally.problem.InputRefused;
import stridetally.report.FamilyPaper;
import stridetally.report.HomeSheetPages;
import stridetally.report.HomeSheetPages.Page;
import stridetally.report.LogSheetCsv;
import stridetally.report.LogSheetHtml;
import stridetally.report.LogSheetWorkbook;
import stridetally.report.PracticePages;

/** What {@code plan} writes: names of files and what is in them. */
public final class PlanOutput {
    private PlanOutput() {}

    /** The rungs of these students. */
    public static Content plans(List<StudentPlan> plans, PageFormat format) {
        return Content.text(out -> {
            switch (format) {
                case MARKDOWN -> PracticePages.markdown(plans, out);
                case HTML -> PracticePages.html(plans, out);
                case CSV -> PracticePages.rows(plans, Tables.open(Format.CSV, out, PracticePages.COLUMNS));
                case JSON -> PracticePages.rows(plans, Tables.open(Format.JSON, out, PracticePages.COLUMNS));
            }
        });
    }

    /** A file for each student. */
    public static Map<String, Content> plansApart(List<StudentPlan> plans, PageFormat format) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (StudentPlan plan : plans) {
            put(
                    files,
                    ReportOutput.fileName(plan.student().code()) + "-next",
                    format.extension(),
                    plans(List.of(plan), format));
        }
        return files;
    }

    /** Sheets with what their papers bear. */
    public static List<Page> pages(List<HomeSheet> sheets, Map<StudentCode, String> names, Contact contact) {
        return sheets.stream()
                .map(sheet -> new Page(
                        sheet,
                        new FamilyPaper(
                                Optional.ofNullable(names.get(sheet.student().code())), contact)))
                .toList();
    }

    /** Home sheets, each in every language. */
    public static Content sheets(List<Page> pages, PageFormat format) {
        if (format != PageFormat.MARKDOWN && format != PageFormat.HTML) {
            throw new InputRefused("a home sheet is for people: --format markdown or html");
        }
        return Content.text(out -> {
            if (format == PageFormat.HTML) {
                HomeSheetPages.html(pages, out);
            } else {
                HomeSheetPages.markdown(pages, out);
            }
        });
    }

    /** A file for each student. */
    public static Map<String, Content> sheetsApart(List<Page> pages, PageFormat format) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (Page page : pages) {
            String name = ReportOutput.fileName(page.sheet().student().code()) + "-home";
            put(files, name, format.extension(), sheets(List.of(page), format));
        }
        return files;
    }

    /** Blank logs, as a table to type into or as a page to print. */
    public static Content logs(List<LogSheet> sheets, Caseload caseload, Contact contact, PageFormat format) {
        if (format != PageFormat.CSV && format != PageFormat.HTML) {
            throw new InputRefused("a blank log is a table to type into or a page to print: --format csv or html");
        }
        return Content.text(out -> {
            if (format == PageFormat.HTML) {
                LogSheetHtml.write(sheets, caseload, contact, out);
            } else {
                LogSheetCsv.write(sheets, out);
            }
        });
    }

    /** Blank logs as a workbook, a sheet each. */
    public static Content workbook(List<LogSheet> sheets, Settings settings) {
        return out -> LogSheetWorkbook.write(sheets, settings.help(), settings.prompt(), out);
    }

    /** A table, a workbook and a page for each school and weekday. */
    public static Map<String, Content> logsApart(List<LogSheet> sheets, Caseload caseload, Contact contact) {
        Map<String, Content> files = new LinkedHashMap<>();
        for (LogSheet sheet : sheets) {
            String school = sheet.school().isBlank() ? "no-school" : sheet.school();
            String day = sheet.date().getDayOfWeek().name().toLowerCase(Locale.ROOT);
            String name = "log-" + ReportOutput.fileName(new StudentCode(school)) + "-" + day;
            for (PageFormat format : List.of(PageFormat.CSV, PageFormat.HTML)) {
                put(files, name, format.extension(), logs(List.of(sheet), caseload, contact, format));
            }
            put(files, name, PageOutputOptions.WORKBOOK, workbook(List.of(sheet), caseload.settings()));
        }
        return files;
    }

    /** Two names that differ only in signs that a file system does not take get numbers. */
    private static void put(Map<String, Content> files, String name, String extension, Content content) {
        String free = name + extension;
        for (int number = 2; files.containsKey(free); number++) {
            free = name + "-" + number + extension;
        }
        files.put(free, content);
    }
}
