package stridetally.table;

import java.io.Reader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import stridetally.problem.RowProblem;

/** Everything a reader gave, for comparing in tests. */
final class Collected implements RowSink {
    final List<Row> rows = new ArrayList<>();
    final List<RowProblem> problems = new ArrayList<>();
    final List<String> written = new ArrayList<>();

    static Collected from(String text) {
        return from(new StringReader(text), Dialect.COMMA);
    }

    static Collected from(Reader reader, Dialect dialect) {
        Collected collected = new Collected();
        new TableReader(reader, "log.csv", dialect).forEach(collected);
        return collected;
    }

    List<List<String>> cells() {
        return rows.stream().map(Row::cells).toList();
    }

    List<Long> lines() {
        return rows.stream().map(Row::line).toList();
    }

    @Override
    public void row(Row row) {
        rows.add(row);
    }

    @Override
    public void problem(RowProblem problem, String line) {
        problems.add(problem);
        written.add(line);
    }
}
