package stridetally.units;

/** A step of the grammar that does not go on, and what would mend it. */
record Refusal(Reason reason, String mend) {}
