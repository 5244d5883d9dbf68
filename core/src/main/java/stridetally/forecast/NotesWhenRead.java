package stridetally.forecast;

import java.util.AbstractList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Notes that are written when somebody reads them: what the next sessions would change takes as long as the forecast, and
 * most readers show other goals. The text depends on the data alone, so it does not matter when it is written.
 */
final class NotesWhenRead extends AbstractList<String> {
    private final Supplier<List<String>> writing;
    private @Nullable List<String> written;

    NotesWhenRead(Supplier<List<String>> writing) {
        this.writing = writing;
    }

    private synchronized List<String> notes() {
        List<String> notes = written;
        if (notes == null) {
            notes = List.copyOf(writing.get());
            written = notes;
        }
        return notes;
    }

    @Override
    public String get(int index) {
        return notes().get(index);
    }

    @Override
    public int size() {
        return notes().size();
    }
}
