package stridetally.problem;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Problems of one file, counted by code, with the first few of each kept for a person to read. Order of first appearance. */
public final class ProblemTally {
    private static final int SHOWN = 5;

    private final Map<ProblemCode, List<RowProblem>> examples = new EnumMap<>(ProblemCode.class);
    private final Map<ProblemCode, Long> counts = new EnumMap<>(ProblemCode.class);

    /** One more. */
    public void add(RowProblem problem) {
        counts.put(problem.code(), count(problem.code()) + 1);
        List<RowProblem> shown = examples.get(problem.code());
        if (shown == null) {
            shown = new ArrayList<>();
            examples.put(problem.code(), shown);
        }
        if (shown.size() < SHOWN) {
            shown.add(problem);
        }
    }

    /** More of a code whose first five were added before. */
    public void addCounted(ProblemCode code, long more) {
        if (more > 0) {
            counts.merge(code, more, Long::sum);
        }
    }

    /** The problems of the next part of the same file; {@code moved} puts them to their place in the whole. */
    public void add(ProblemTally next, UnaryOperator<RowProblem> moved) {
        next.examples.forEach((code, problems) -> {
            List<RowProblem> shown = examples.computeIfAbsent(code, any -> new ArrayList<>());
            problems.stream()
                    .limit(Math.max(0, SHOWN - shown.size()))
                    .map(moved)
                    .forEach(shown::add);
        });
        next.counts.forEach((code, more) -> counts.merge(code, more, Long::sum));
    }

    /** How many of a code. */
    public long count(ProblemCode code) {
        return counts.getOrDefault(code, 0L);
    }

    /**
     * One sentence a problem, first those that set rows aside; past the first five of a code, a count. Of codes that are
     * only counted, the first and how many there are.
     */
    public List<String> sentences() {
        return Stream.of(Severity.values())
                .flatMap(severity -> sentences(severity).stream())
                .toList();
    }

    /** The sentences of one severity. */
    public List<String> sentences(Severity severity) {
        List<String> text = new ArrayList<>();
        for (Map.Entry<ProblemCode, List<RowProblem>> entry : examples.entrySet()) {
            if (entry.getKey().severity() == severity) {
                tell(entry.getKey(), entry.getValue(), text);
            }
        }
        return text;
    }

    private void tell(ProblemCode code, List<RowProblem> first, List<String> text) {
        int shown = code.severity() == Severity.COUNTED ? 1 : first.size();
        for (RowProblem problem : first.subList(0, shown)) {
            text.add(problem.sentence());
        }
        long more = count(code) - shown;
        if (more > 0) {
            text.add("  and " + more + " more " + code);
        }
    }
}
