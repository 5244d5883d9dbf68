package stridetally.simulate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Judges made-up caseloads of every scenario after 9, 18 and 27 of 36 weeks, and counts how often that was right.
 *
 * @param cells a scenario and week each
 * @param tenths how the chance of the criterion kept its word, over the five scenarios of the average
 */
public record Calibration(List<CalibrationCell> cells, ChanceTenths tenths) {
    /** The week in which goals are due. */
    public static final int LAST_WEEK = ChildMaker.WEEKS;

    /** The ends of the three reporting periods. */
    public static final List<Integer> WEEKS = List.of(9, 18, 27);

    public Calibration {
        cells = List.copyOf(cells);
    }

    /**
     * Runs.
     *
     * @param weeks after which it is judged, of 36
     * @param goals in a caseload
     * @param caseloads a cell
     * @param seed of the first caseload; the next has the next
     */
    public static Calibration run(List<Scenario> scenarios, List<Integer> weeks, int goals, int caseloads, long seed) {
        List<CalibrationCell> cells = new ArrayList<>();
        ChanceTenths average = new ChanceTenths();
        ChanceTenths rest = new ChanceTenths();
        List<Integer> inOrder = weeks.stream().distinct().sorted().toList();
        for (Scenario scenario : scenarios) {
            for (int after : inOrder) {
                CalibrationCell cell = new CalibrationCell(scenario, after);
                for (int load = 0; load < caseloads; load++) {
                    cell.add(goals, seed + load, scenario.inAverage() ? average : rest);
                }
                cells.add(cell);
            }
        }
        return new Calibration(cells, average);
    }

    /** The first of the weeks judged from which on so large a share of the pooled calls is right. */
    public Optional<CalibrationCell> rightFrom(Scenario scenario, double share) {
        Optional<CalibrationCell> first = Optional.empty();
        for (CalibrationCell cell : cells) {
            if (cell.scenario() == scenario && cell.pooled().goals() > 0) {
                boolean right = 1 - cell.pooled().wrong() >= share;
                first = !right ? Optional.empty() : first.isPresent() ? first : Optional.of(cell);
            }
        }
        return first;
    }
}
