package stridetally.scoring;

import org.jspecify.annotations.Nullable;

/** One child's walks of one day at one place; a label splits the day. */
record WalkSession(Walker walker, int day, String label) {

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WalkSession that
                && day == that.day
                && label.equals(that.label)
                && walker.equals(that.walker);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * walker.hashCode() + day) + label.hashCode();
    }
}
