package stridetally.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stridetally.model.Precaution;

/** What a student's {@code precautions} cell says, as far as it says anything that can be relied on. */
public record Caution(Set<Precaution> known, Optional<String> whyNoHome) {
    public Caution {
        Set<Precaution> copy = EnumSet.noneOf(Precaution.class);
        copy.addAll(known);
        known = Set.copyOf(copy);
    }

    /** Reads the words of the cell. */
    public static Caution of(List<String> words) {
        Set<Precaution> known = EnumSet.noneOf(Precaution.class);
        List<String> reasons = new ArrayList<>();
        boolean strange = false;
        for (String word : words) {
            Optional<Precaution> one = Precaution.find(word);
            one.ifPresent(known::add);
            strange |= one.isEmpty();
        }
        if (words.isEmpty()) {
            reasons.add("precautions are blank in students.csv; type none if there is nothing to heed");
        }
        if (strange) {
            reasons.add(
                    "precautions in students.csv hold a word that is not on the list; use the list's words, or other");
        }
        if (known.contains(Precaution.OTHER)) {
            reasons.add(
                    "precautions hold other, of which this tool knows nothing; write what the family may do yourself");
        }
        if (known.contains(Precaution.NONE) && known.size() > 1) {
            reasons.add("precautions hold none beside another word; take one of them out");
        }
        return new Caution(known, reasons.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", reasons)));
    }

    /** Those that say something, in the order of the list. */
    public List<Precaution> toHeed() {
        return Stream.of(Precaution.values())
                .filter(one -> known.contains(one) && one != Precaution.NONE)
                .toList();
    }
}
