package stridetally.recordings;

import stridetally.model.Side;
import stridetally.stats.Estimate;

/**
 * One figure of a recording.
 *
 * @param quantity a measure of the catalogue, or a quantity that only the table of the recording shows
 * @param n how many strides, steps or samples it rests on
 * @param definition how it was computed, in one phrase
 */
public record Figure(String quantity, Side side, Estimate<Double> value, String unit, int n, String definition) {}
