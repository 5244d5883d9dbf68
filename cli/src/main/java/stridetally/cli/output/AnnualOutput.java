package stridetally.cli.output;

import java.util.List;
import stridetally.cli.files.Content;
import stridetally.cli.files.OutputFolder;
import stridetally.cli.options.Format;
import stridetally.cli.options.PageFormat;
import stridetally.report.AnnualHtml;
import stridetally.report.AnnualMarkdown;
import stridetally.report.AnnualReview;
import stridetally.report.AnnualRows;
import stridetally.report.PageDetail;
import stridetally.table.TableWriter;

/** The annual reviews of {@code report --for review}. */
public final class AnnualOutput {
    private AnnualOutput() {}

    /** All one after another, or as one table. */
    public static Content together(List<AnnualReview> reviews, PageDetail detail, PageFormat format) {
        return Content.text(out -> {
            switch (format) {
                case HTML -> AnnualHtml.write(reviews, detail, out);
                case MARKDOWN -> {
                    String between = "";
                    for (AnnualReview review : reviews) {
                        out.append(between);
                        AnnualMarkdown.write(review, detail, out);
                        between = "\n---\n\n";
                    }
                }
                case CSV, JSON -> {
                    TableWriter table = Tables.open(Format.valueOf(format.name()), out, AnnualRows.HEADINGS);
                    reviews.forEach(review -> AnnualRows.rows(review).forEach(table::row));
                    table.finish();
                }
            }
        });
    }

    /** A file for each student; its name is never that of the team's page. */
    public static void apart(List<AnnualReview> reviews, PageDetail detail, OutputFolder folder, PageFormat format) {
        for (AnnualReview review : reviews) {
            String name = ReportOutput.fileName(review.head().code()) + "-review" + format.extension();
            folder.write(name, together(List.of(review), detail, format));
        }
    }
}
