package stridetally.ingest;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import stridetally.measures.Catalogue;
import stridetally.measures.Measure;
import stridetally.model.Side;
import stridetally.units.Folding;
import stridetally.units.Unit;
import stridetally.units.UnitNames;

/**
 * One heading to what its column holds: a column's own name; or a value column whose heading says the measure, the side,
 * the number of the try, practice, in any order, as in {@code SLS L 2 (sec)} or {@code Try 1}. Words are common practice,
 * no source; the Spanish ones are our translation.
 */
final class HeadingReader {
    /** Why a column is known by its own name. */
    static final String BY_HEADING = "its heading";

    /** Made for the first heading that is not a column's own name. */
    private static final class Shapes {
        static final Pattern BRACKET = Pattern.compile("(.*?)\\s*[(\\[]\\s*([^()\\[\\]]*?)\\s*[)\\]]\\s*");
        static final Pattern TRY = Pattern.compile("(?:t|tr|try|trial|attempt|rep|intento)?(\\d{1,2})");
    }

    private static final Set<String> TRY_WORDS =
            Set.of("t", "tr", "try", "trial", "attempt", "rep", "no", "nr", "intento", "number");
    private static final Set<String> PRACTICE = Set.of("practice", "practise", "taught", "práctica", "practica");
    private static final Set<String> LEG_WORDS = Set.of("leg", "foot", "side", "pierna", "pie", "lado");

    private final Catalogue catalogue;

    HeadingReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** The meaning; empty when the heading says nothing we know. */
    Optional<ColumnMeaning> read(String heading) {
        Optional<TrialColumn> whole = TrialColumn.named(heading);
        if (whole.isPresent()) {
            return Optional.of(ColumnMeaning.plain(whole.get(), "", BY_HEADING));
        }
        Matcher bracket = Shapes.BRACKET.matcher(heading.strip());
        if (!bracket.matches()) {
            return words(heading, "");
        }
        Optional<Unit> unit = UnitNames.find(bracket.group(2), Unit.METRES);
        Optional<TrialColumn> bare = TrialColumn.named(bracket.group(1));
        if (bare.isPresent()) {
            return Optional.of(ColumnMeaning.plain(
                    bare.get(), bare.get() == TrialColumn.VALUE ? bracket.group(2) : "", BY_HEADING));
        }
        return unit.isPresent()
                ? words(bracket.group(1), bracket.group(2))
                : words(bracket.group(1) + " " + bracket.group(2), "");
    }

    /** A heading that is nothing but a unit, such as {@code Seconds}: a value where the form has no other. */
    static boolean isUnit(String heading) {
        return !heading.isBlank() && UnitNames.find(heading, Unit.METRES).isPresent();
    }

    /** A heading that is only a number: tries side by side, when there are several. */
    static boolean isNumber(String heading) {
        String number = heading.strip();
        return Folding.isDigits(number, 2) && number.charAt(0) != '0';
    }

    private Optional<ColumnMeaning> words(String heading, String unit) {
        Parts parts = new Parts(heading, unit);
        while (!parts.done() && (parts.strip(parts.rest.size() - 1) || parts.strip(0))) {
            // One qualifier less each time.
        }
        return parts.meaning();
    }

    /** The words of a heading, those that qualify it taken off one by one. */
    private final class Parts {
        private final List<String> rest;
        private final Map<TrialColumn, String> sets = new EnumMap<>(TrialColumn.class);
        private String unit;
        private @Nullable Measure measure;

        Parts(String heading, String unit) {
            String folded = TrialColumn.fold(heading);
            this.rest = new ArrayList<>(folded.isEmpty() ? List.of() : List.of(folded.split(" ")));
            this.unit = unit;
        }

        boolean done() {
            measure = catalogue.find(String.join(" ", rest)).orElse(null);
            return rest.isEmpty() || measure != null;
        }

        /** Takes the qualifying word off at a place, which is an end of what is left; false when it is none. */
        boolean strip(int place) {
            String word = rest.get(place);
            if (number(word, place)) {
                return true;
            }
            boolean leg = LEG_WORDS.contains(word) && (sets.containsKey(TrialColumn.SIDE) || namesSide());
            boolean tryWord = TRY_WORDS.contains(word) && rest.size() > 1;
            if (leg || tryWord || side(word) || practice(word) || unit(word)) {
                rest.remove(place);
                return true;
            }
            return false;
        }

        /** The number of the try, with the word for a try in front of it. */
        private boolean number(String word, int place) {
            Matcher number = Shapes.TRY.matcher(word);
            int which = number.matches() ? Integer.parseInt(number.group(1)) : 0;
            if (which == 0 || sets.putIfAbsent(TrialColumn.TRIAL, Integer.toString(which)) != null) {
                return false;
            }
            rest.remove(place);
            if (place > 0 && TRY_WORDS.contains(rest.get(place - 1))) {
                rest.remove(place - 1);
            }
            return true;
        }

        private boolean side(String word) {
            Optional<Side> side = LEG_WORDS.contains(word) ? Optional.empty() : TrialWords.side(word);
            return side.isPresent()
                    && side.get() != Side.NONE
                    && sets.putIfAbsent(TrialColumn.SIDE, side.get().word()) == null;
        }

        private boolean practice(String word) {
            return PRACTICE.contains(word) && sets.putIfAbsent(TrialColumn.USE, "practice") == null;
        }

        private boolean unit(String word) {
            if (!unit.isEmpty()
                    || rest.size() < 2
                    || UnitNames.find(word, Unit.METRES).isEmpty()) {
                return false;
            }
            unit = word;
            return true;
        }

        private boolean namesSide() {
            return rest.stream()
                    .anyMatch(one ->
                            !LEG_WORDS.contains(one) && TrialWords.side(one).isPresent());
        }

        Optional<ColumnMeaning> meaning() {
            if (measure != null) {
                sets.put(TrialColumn.MEASURE, measure.id().text());
            }
            if (rest.isEmpty() || measure != null) {
                return sets.isEmpty() ? Optional.empty() : Optional.of(meaning(TrialColumn.VALUE));
            }
            return TrialColumn.named(String.join(" ", rest))
                    .filter(column -> !sets.isEmpty())
                    .map(this::meaning);
        }

        private ColumnMeaning meaning(TrialColumn column) {
            return new ColumnMeaning(Optional.of(column), sets, unit, "the words of its heading");
        }
    }
}
