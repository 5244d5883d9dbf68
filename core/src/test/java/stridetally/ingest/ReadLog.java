package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.model.StudentCode;
import stridetally.model.Trial;
import stridetally.problem.RowProblem;
import stridetally.units.DecimalMark;

/** A log read to its end, for tests: what was taken, set aside and told. */
final class ReadLog {
    final List<Trial> trials = new ArrayList<>();
    final List<LogRow> setAside = new ArrayList<>();
    final List<RowProblem> problems = new ArrayList<>();
    final TrialForm form;
    final LogRules rules;
    final TrialLog.Count count;

    private ReadLog(TextSource text, FormMapping mapping, String... roster) {
        TrialLog log = TrialLog.open(text, rules(roster), mapping);
        TrialOrdinals ordinals = new TrialOrdinals();
        form = log.form();
        rules = log.rules();
        count = log.read(new TrialLog.Taker() {
            @Override
            public void taken(Trial trial, LogRow row, List<RowProblem> notes) {
                trials.add(ordinals.numbered(trial));
                problems.addAll(notes);
            }

            @Override
            public void setAside(LogRow row, List<RowProblem> reasons) {
                setAside.add(row);
                problems.addAll(reasons);
            }
        });
    }

    static ReadLog csv(String text, FormMapping mapping, String... roster) {
        return bytes("log.csv", text.getBytes(StandardCharsets.UTF_8), mapping, roster);
    }

    static ReadLog bytes(String name, byte[] bytes, FormMapping mapping, String... roster) {
        ByteSource source = MadeWorkbook.source(name, bytes);
        return of(InputTables.of(source, Optional.empty()).tables().get(0), mapping, roster);
    }

    static ReadLog of(TextSource text, FormMapping mapping, String... roster) {
        return new ReadLog(text, mapping, roster);
    }

    /** Everything goes somewhere: rows = taken + set aside + blank. */
    boolean adds() {
        return count.rows() == trials.size() + setAside.size() + count.blank();
    }

    /** Student, date, measure, side, number, value and unit of each trial, in file order. */
    List<String> lines() {
        return trials.stream().map(ReadLog::line).toList();
    }

    List<String> codes() {
        return problems.stream()
                .map(problem -> problem.code().name())
                .distinct()
                .toList();
    }

    static String line(Trial trial) {
        String of = trial.reading() instanceof stridetally.units.Reading.Tries tries ? " of " + tries.given() : "";
        return Stream.of(
                        trial.key().student().text(),
                        trial.date().toString(),
                        trial.key().measure().text(),
                        trial.key().side().word(),
                        Integer.toString(trial.number()),
                        TrialCells.valueText(trial.reading()) + of,
                        trial.help().map(level -> level.word()).orElse(""))
                .collect(Collectors.joining(" | "));
    }

    private static LogRules rules(String... roster) {
        Set<StudentCode> codes = Stream.of(roster).map(StudentCode::new).collect(Collectors.toSet());
        return new LogRules(
                Settings.usual("book"),
                Catalogue.standard(),
                codes.isEmpty() ? Optional.empty() : Optional.of(codes),
                LocalDate.of(2027, 6, 11),
                DateOrder.UNPROVEN,
                DecimalMark.POINT,
                Optional.empty(),
                "book");
    }
}
