package stridetally.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stridetally.ingest.ColumnMeaning;
import stridetally.ingest.DateOrder;
import stridetally.ingest.DayCount;
import stridetally.ingest.FormMapping;
import stridetally.ingest.FormRules;
import stridetally.ingest.TrialColumn;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.problem.Spelling;
import stridetally.units.DecimalMark;

/**
 * A mapping as a file, see {@link FormMapping}. What we do not know is refused with its line, since it would be ignored.
 *
 * <p>Keys: {@code headings, heading_row, heading_lines, sheet, date_order, decimal, blank_help, practice}; tables {@code
 * columns} (heading to a column's name, {@code ignore}, or {@code {column, measure, side, trial, use, unit, ...}}), {@code
 * constants}, {@code date} ({@code origin, unit, first}) and {@code words.COLUMN}.
 */
public final class FormFile {
    private static final Set<String> KEYS = Set.of(
            "headings",
            "heading_row",
            "heading_lines",
            "sheet",
            "date_order",
            "decimal",
            "blank_help",
            "practice",
            "columns",
            "constants",
            "date",
            "words");
    private static final Set<String> DATE_KEYS = Set.of("origin", "unit", "first");
    static final String IGNORE = "ignore";
    static final String YEAR = "year";

    private final TomlFile file;
    private final String name;

    private FormFile(TomlFile file, String name) {
        this.file = file;
        this.name = name;
    }

    /** Reads a mapping; {@code name} is what messages call it. */
    public static FormMapping read(Path path, String name) {
        if (!Files.isRegularFile(path)) {
            throw new InputRefused(
                    name + " does not exist; --columns names a mapping, which --dry-run -o FILE.toml writes");
        }
        return new FormFile(TomlFile.read(path, name), name).mapping();
    }

    /** A mapping from its text. */
    static FormMapping of(String text, String name) {
        return new FormFile(TomlFile.of(text, name), name).mapping();
    }

    /** The saved mappings of a logbook, by name of their files. */
    static List<FormMapping> all(LogbookFolder folder) {
        if (!Files.isDirectory(folder.forms())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder.forms())) {
            return files.filter(file -> file.toString().endsWith(".toml"))
                    .sorted()
                    .map(file -> read(file, folder.name(file)))
                    .toList();
        } catch (IOException unreadable) {
            throw new OutputRefused(
                    folder.name(folder.forms()) + " cannot be read; check the disk and its permissions", unreadable);
        }
    }

    private FormMapping mapping() {
        JsonNode root = file.root();
        file.only(root, " of a mapping", KEYS);
        return new FormMapping(
                name,
                texts(root.path("headings")),
                columns(root),
                rules(root),
                order(root),
                decimal(root),
                optional(root, "blank_help"),
                optional(root, "sheet"),
                whole(root, "heading_row", 0),
                whole(root, "heading_lines", 0));
    }

    private Map<String, ColumnMeaning> columns(JsonNode root) {
        Map<String, ColumnMeaning> columns = new LinkedHashMap<>();
        root.path("columns").properties().forEach(field -> {
            columns.put(field.getKey(), meaning(field.getKey(), field.getValue()));
        });
        for (String heading : texts(root.path("practice"))) {
            ColumnMeaning before = columns.getOrDefault(
                    heading, new ColumnMeaning(Optional.of(TrialColumn.VALUE), Map.of(), "", why()));
            Map<TrialColumn, String> sets = new EnumMap<>(TrialColumn.class);
            sets.putAll(before.sets());
            sets.put(TrialColumn.USE, "practice");
            columns.put(heading, new ColumnMeaning(before.column(), sets, before.unit(), before.why()));
        }
        return columns;
    }

    private ColumnMeaning meaning(String heading, JsonNode said) {
        if (said.isTextual()) {
            String word = said.asText();
            return new ColumnMeaning(
                    word.equals(IGNORE) ? Optional.empty() : Optional.of(column(heading, word)), Map.of(), "", why());
        }
        if (!said.isObject()) {
            throw file.refuse(
                    heading, "columns: \"" + heading + "\" is neither the name of a column nor a table of them");
        }
        Set<String> known = new TreeSet<>(names());
        known.add("column");
        known.add("unit");
        known.remove("value");
        file.only(said, " of a column", known);
        Map<TrialColumn, String> sets = new EnumMap<>(TrialColumn.class);
        said.properties().forEach(field -> {
            if (!Set.of("column", "unit").contains(field.getKey())) {
                sets.put(column(heading, field.getKey()), field.getValue().asText());
            }
        });
        TrialColumn column =
                said.has("column") ? column(heading, said.get("column").asText()) : TrialColumn.VALUE;
        return new ColumnMeaning(Optional.of(column), sets, said.path("unit").asText(""), why());
    }

    private FormRules rules(JsonNode root) {
        Set<String> constantKeys = new TreeSet<>(names());
        constantKeys.add(YEAR);
        constantKeys.remove("value");
        file.only(root.path("constants"), " of constants", constantKeys);
        Map<TrialColumn, String> constants = new EnumMap<>(TrialColumn.class);
        root.path("constants").properties().forEach(field -> {
            if (!field.getKey().equals(YEAR)) {
                constants.put(
                        column(field.getKey(), field.getKey()),
                        field.getValue().asText().strip());
            }
        });
        Map<TrialColumn, Map<String, String>> words = new HashMap<>();
        file.only(root.path("words"), " of words", names());
        root.path("words").properties().forEach(list -> {
            if (list.getKey().equals("student")) {
                throw file.refuse(
                        "student",
                        "words for students would hold names; keep them in names.csv and import with --names");
            }
            Map<String, String> of = new HashMap<>();
            list.getValue()
                    .properties()
                    .forEach(word -> of.put(
                            FormRules.fold(word.getKey()), word.getValue().asText()));
            words.put(column(list.getKey(), list.getKey()), of);
        });
        int year = whole(root.path("constants"), YEAR, 0);
        return new FormRules(constants, words, dayCount(root), year == 0 ? Optional.empty() : Optional.of(year));
    }

    private Optional<DayCount> dayCount(JsonNode root) {
        JsonNode date = root.path("date");
        if (date.isMissingNode()) {
            return Optional.empty();
        }
        file.only(date, " of date", DATE_KEYS);
        String unit = date.path("unit").asText("days");
        if (!Set.of("days", "weeks").contains(unit)) {
            throw file.refuse("unit", "date: unit \"" + unit + "\" is neither days nor weeks");
        }
        try {
            LocalDate origin = LocalDate.parse(date.path("origin").asText(""));
            return Optional.of(new DayCount(origin, unit.equals("weeks") ? 7 : 1, whole(date, "first", 0)));
        } catch (DateTimeException noDay) {
            throw file.refuse("origin", "date: expected origin as a day such as 2026-09-01");
        }
    }

    private Optional<DateOrder> order(JsonNode root) {
        return optional(root, "date_order").map(word -> switch (word) {
            case "day-first" -> DateOrder.DAY_FIRST;
            case "month-first" -> DateOrder.MONTH_FIRST;
            default ->
                throw file.refuse("date_order", "date_order \"" + word + "\" is neither day-first nor month-first");
        });
    }

    private Optional<DecimalMark> decimal(JsonNode root) {
        return optional(root, "decimal").map(word -> switch (word) {
            case "point" -> DecimalMark.POINT;
            case "comma" -> DecimalMark.COMMA;
            default -> throw file.refuse("decimal", "decimal \"" + word + "\" is neither point nor comma");
        });
    }

    private TrialColumn column(String key, String word) {
        for (TrialColumn column : TrialColumn.values()) {
            if (column.heading().equals(word)) {
                return column;
            }
        }
        String near = Spelling.nearest(word.toLowerCase(Locale.ROOT), names())
                .map(one -> "did you mean " + one + "?")
                .orElse("columns are " + String.join(", ", names()) + ", or " + IGNORE);
        throw file.refuse(key, "\"" + word + "\" is not a column; " + near);
    }

    private int whole(JsonNode table, String key, int otherwise) {
        JsonNode said = table.path(key);
        if (said.isMissingNode()) {
            return otherwise;
        }
        if (!said.isInt() || said.asInt() < 0) {
            throw file.refuse(key, key + ": expected a whole number");
        }
        return said.asInt();
    }

    private String why() {
        return "said in " + name;
    }

    private static List<String> names() {
        return Stream.of(TrialColumn.values()).map(TrialColumn::heading).toList();
    }

    private static Optional<String> optional(JsonNode root, String key) {
        return Optional.of(root.path(key).asText("").strip()).filter(text -> !text.isEmpty());
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }
}
