package stridetally.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import stridetally.problem.ProblemTally;
import stridetally.table.TableReader;

/**
 * Puts the pieces of files together in their order: lines are counted through, problems come to their places, and what each
 * file proves of itself is seen as a whole.
 */
final class BulkJoin {
    private final ProblemTally problems = new ProblemTally();
    private final List<LogFile> files = new ArrayList<>();
    private final Set<Integer> unproven = new TreeSet<>();
    private @Nullable Sum open;

    /** The pieces of one file. */
    private static final class Sum {
        private final BulkForm form;
        private final RowEnds ends;
        private final DecimalProof decimals = new DecimalProof();
        private boolean proven = true;
        private long line = 1;
        private long plain;
        private long rows;
        private long blank;
        private long setAside;
        private long ahead;

        Sum(BulkForm form) {
            this.form = form;
            this.ends = new RowEnds(form.name(), form.form());
        }

        void add(BulkPart part, ProblemTally problems) {
            OddRows odd = part.odd();
            long before = line;
            proven &= part.proven();
            problems.add(odd.problems(), problem -> TableReader.moved(problem, before));
            ends.add(odd.ends(), line);
            decimals.add(odd.decimals());
            if (part.taken().point()) {
                decimals.pointSeen();
            }
            plain += part.taken().rows();
            rows += part.taken().rows() + odd.rows();
            blank += odd.blankRows();
            setAside += odd.setAside();
            ahead += part.taken().ahead() + odd.ahead();
            line += part.lines();
        }

        boolean proven() {
            return proven
                    && plain > 0
                    && decimals.comma(form.rules().decimals()).isEmpty();
        }

        LogFile file() {
            List<String> notes = new ArrayList<>(form.form().notes());
            notes.addAll(ends.notes());
            return new LogFile(
                    form.name(),
                    WhichReader.FAST,
                    rows,
                    blank + ends.count(),
                    setAside,
                    ahead,
                    notes,
                    Optional.empty());
        }
    }

    /** What was read next. */
    void add(BulkHand.Done done) {
        Optional<BulkPart> part = done.part();
        if (part.isEmpty()) {
            close();
            done.file().ifPresent(files::add);
            done.problems().ifPresent(more -> problems.add(more, problem -> problem));
            return;
        }
        if (open == null || open.form.bytes() != part.get().form().bytes()) {
            close();
            open = new Sum(part.get().form());
        }
        open.add(part.get(), problems);
    }

    private void close() {
        Sum sum = open;
        open = null;
        if (sum != null) {
            if (!sum.proven()) {
                unproven.add(files.size());
            }
            files.add(sum.file());
        }
    }

    /** What was read of each file. */
    List<LogFile> files() {
        close();
        return files;
    }

    /** Places of the files that the other reader must read. */
    Set<Integer> unproven() {
        return unproven;
    }

    /** Of the rows of all files. */
    ProblemTally problems() {
        return problems;
    }
}
