package stridetally.scoring;

import org.jspecify.annotations.Nullable;
import stridetally.model.SeriesKey;
import stridetally.model.StudentCode;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/** One child's walks at one place. */
record Walker(String source, StudentCode student, TrialPlace place, Use use) implements Comparable<Walker> {
    static Walker of(SeriesKey key) {
        return new Walker(key.source(), key.student(), key.place(), key.use());
    }

    @Override
    public int compareTo(Walker other) {
        int order = source.compareTo(other.source);
        order = order != 0 ? order : student.compareTo(other.student);
        order = order != 0 ? order : place.compareTo(other.place);
        return order != 0 ? order : use.compareTo(other.use);
    }

    // By hand: a record makes its own at run time, which costs a small run ten milliseconds.
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Walker that
                && student.equals(that.student)
                && place == that.place
                && use == that.use
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * source.hashCode() + student.hashCode()) + 31 * place.hashCode() + use.hashCode();
    }
}
