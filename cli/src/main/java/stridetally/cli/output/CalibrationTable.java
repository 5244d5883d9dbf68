package stridetally.cli.output;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import stridetally.cli.files.Content;
import stridetally.cli.options.Format;
import stridetally.simulate.Calibration;
import stridetally.simulate.CalibrationCell;
import stridetally.simulate.CallScore;
import stridetally.table.Cell;
import stridetally.table.TableWriter;

/** How often judgements on made-up caseloads were right: a row a scenario, week and way of judging. */
public final class CalibrationTable {
    private static final List<String> HEADINGS = List.of(
            "scenario",
            "weeks",
            "way",
            "goals",
            "wrong",
            "brier",
            "covered_80",
            "width_80",
            "on_course",
            "on_course_reached",
            "too_close",
            "too_close_reached",
            "off_course",
            "off_course_reached");
    private static final int WORDS = 3;
    private static final int TENTHS = 10;
    private static final int DECIMALS = 3;

    private CalibrationTable() {}

    /**
     * The line's chance, by four ways; and for the pooled one how many goals had each judgement, and how many of these had
     * their criterion satisfied by the due date.
     */
    public static Content lines(Calibration calibration, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, HEADINGS);
            for (CalibrationCell cell : calibration.cells()) {
                List<Cell> four = new ArrayList<>(row(cell, "four points", cell.fourPoints()));
                Collections.fill(four.subList(HEADINGS.indexOf("brier"), four.size()), Cell.blank());
                table.row(padded(four));
                table.row(padded(row(cell, "own line", cell.own())));
                List<Cell> pooled = new ArrayList<>(row(cell, "pooled", cell.pooled()));
                for (int word = 0; word < WORDS; word++) {
                    pooled.add(Cell.whole(cell.judged(word)));
                    pooled.add(Cell.whole(cell.reached(word)));
                }
                table.row(pooled);
                table.row(padded(row(cell, "limit", cell.limit())));
            }
            table.finish();
        });
    }

    private static List<Cell> padded(List<Cell> cells) {
        List<Cell> whole = new ArrayList<>(cells);
        while (whole.size() < HEADINGS.size()) {
            whole.add(Cell.blank());
        }
        return whole;
    }

    /** How the chance of the criterion kept its word. */
    public static Content chances(Calibration calibration, Format format) {
        return Content.text(out -> {
            TableWriter table = Tables.open(format, out, List.of("chance", "goals", "said", "came"));
            for (int tenth = 0; tenth < TENTHS; tenth++) {
                if (calibration.tenths().goals(tenth) > 0) {
                    table.row(List.of(
                            Cell.text("0." + tenth + " to " + (tenth == TENTHS - 1 ? "1" : "0." + (tenth + 1))),
                            Cell.whole(calibration.tenths().goals(tenth)),
                            Cell.number(calibration.tenths().said(tenth), DECIMALS),
                            Cell.number(calibration.tenths().came(tenth), DECIMALS)));
                }
            }
            table.finish();
        });
    }

    private static List<Cell> row(CalibrationCell cell, String way, CallScore score) {
        if (score.goals() == 0) {
            return List.of(
                    Cell.text(cell.scenario().toString()),
                    Cell.whole(cell.weeks()),
                    Cell.text(way),
                    Cell.whole(0),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank(),
                    Cell.blank());
        }
        return List.of(
                Cell.text(cell.scenario().toString()),
                Cell.whole(cell.weeks()),
                Cell.text(way),
                Cell.whole(score.goals()),
                Cell.number(score.wrong(), DECIMALS),
                Cell.number(score.brier(), DECIMALS),
                Cell.number(score.coverage(), DECIMALS),
                Cell.number(score.width(), DECIMALS));
    }
}
