package stridetally.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stridetally.model.DateRange;
import stridetally.model.Period;
import stridetally.model.SchoolBreak;
import stridetally.model.Settings;
import stridetally.model.Thresholds;
import stridetally.model.WordScale;
import stridetally.units.IsoDay;

/** {@code logbook.toml}. What it does not say is our choice; what we do not know is refused, since it would be ignored. */
final class SettingsFile {
    static final int VERSION = 1;
    static final String NO_ID = "logbook";

    private static final Set<String> KEYS = Set.of(
            "id",
            "version",
            "languages",
            "period",
            "break",
            "shown_units",
            "help_order",
            "prompt_order",
            "help_aliases",
            "prompt_aliases",
            "thresholds");
    private static final Set<String> RANGE_KEYS = Set.of("name", "from", "to", "school");
    private static final Set<String> THRESHOLD_KEYS =
            Set.of("on_course", "off_course", "fewest_points", "stale_weeks", "long_break_weeks", "assisted_share");

    private final TomlFile file;

    private SettingsFile(TomlFile file) {
        this.file = file;
    }

    /** The settings of a folder; the usual ones when it has no file. */
    static Settings read(LogbookFolder folder) {
        Path path = folder.settings();
        return Files.exists(path)
                ? new SettingsFile(TomlFile.read(path, LogbookFolder.SETTINGS)).settings()
                : Settings.usual(NO_ID);
    }

    private Settings settings() {
        JsonNode root = file.root();
        checkVersion(root);
        file.only(root, "", KEYS);
        String id = text(root, "id").isEmpty() ? NO_ID : text(root, "id");
        List<Period> periods = new ArrayList<>();
        for (JsonNode one : root.path("period")) {
            periods.add(new Period(name(one, "period"), range(one, "period"), text(one, "school")));
        }
        List<SchoolBreak> breaks = new ArrayList<>();
        for (JsonNode one : root.path("break")) {
            breaks.add(new SchoolBreak(text(one, "name"), range(one, "break"), text(one, "school")));
        }
        List<String> languages = texts(root, "languages");
        return new Settings(
                id,
                periods,
                breaks,
                map(root, "shown_units"),
                scale(root, WordScale.HELP),
                scale(root, WordScale.PROMPT),
                thresholds(root.path("thresholds")),
                languages.isEmpty() ? List.of("en") : languages);
    }

    private void checkVersion(JsonNode root) {
        JsonNode version = root.path("version");
        if (version.isMissingNode()) {
            return;
        }
        if (!version.isInt() || version.asInt() < 1) {
            throw file.refuse("version", "expected version = " + VERSION);
        }
        if (version.asInt() > VERSION) {
            throw file.refuse(
                    "version",
                    "this logbook is of version " + version.asInt() + ", and this program knows versions up to "
                            + VERSION + "; use a newer program");
        }
    }

    private WordScale scale(JsonNode root, WordScale usual) {
        String orderKey = usual.name() + "_order";
        String aliasKey = usual.name() + "_aliases";
        List<String> order = texts(root, orderKey);
        List<String> words = order.isEmpty() ? usual.words() : order;
        if (Set.copyOf(words).size() != words.size()) {
            throw file.refuse(orderKey, "a word stands twice in " + orderKey + "; keep it once, least help first");
        }
        Map<String, String> aliases = new HashMap<>();
        usual.aliases().forEach((alias, word) -> {
            if (words.contains(word)) {
                aliases.put(alias, word);
            }
        });
        map(root, aliasKey).forEach((alias, word) -> {
            if (!words.contains(word)) {
                throw file.refuse(
                        alias,
                        "\"" + word + "\" is not a " + usual.name() + " word; expected one of "
                                + String.join(", ", words));
            }
            aliases.put(WordScale.fold(alias), word);
        });
        return new WordScale(usual.name(), words, aliases);
    }

    private Thresholds thresholds(JsonNode table) {
        file.only(table, " of thresholds", THRESHOLD_KEYS);
        Thresholds usual = Thresholds.USUAL;
        Thresholds chosen = new Thresholds(
                share(table, "on_course", usual.onCourse()),
                share(table, "off_course", usual.offCourse()),
                whole(table, "fewest_points", usual.fewestPoints()),
                whole(table, "stale_weeks", usual.staleWeeks()),
                whole(table, "long_break_weeks", usual.longBreakWeeks()),
                share(table, "assisted_share", usual.assistedShare()));
        if (chosen.offCourse() >= chosen.onCourse()) {
            throw file.refuse("off_course", "off_course must be below on_course");
        }
        return chosen;
    }

    private double share(JsonNode table, String key, double usual) {
        JsonNode value = table.path(key);
        if (value.isMissingNode()) {
            return usual;
        }
        if (!value.isNumber() || value.asDouble() < 0 || value.asDouble() > 1) {
            throw file.refuse(key, key + " is a share: expected a number from 0 to 1");
        }
        return value.asDouble();
    }

    private int whole(JsonNode table, String key, int usual) {
        JsonNode value = table.path(key);
        if (value.isMissingNode()) {
            return usual;
        }
        if (!value.isInt() || value.asInt() < 1) {
            throw file.refuse(key, key + ": expected a whole number of at least 1");
        }
        return value.asInt();
    }

    private DateRange range(JsonNode table, String what) {
        file.only(table, " of a " + what, RANGE_KEYS);
        LocalDate from = date(table, "from", what);
        LocalDate to = date(table, "to", what);
        if (to.isBefore(from)) {
            throw file.refuse(what, "a " + what + " ends on " + to + ", before it begins on " + from);
        }
        return new DateRange(from, to);
    }

    private LocalDate date(JsonNode table, String key, String what) {
        try {
            return IsoDay.of(table.path(key).asText());
        } catch (DateTimeException unreadable) {
            throw file.refuse(what, "a " + what + " needs \"" + key + "\", a day such as 2026-09-02");
        }
    }

    private String name(JsonNode table, String what) {
        String name = text(table, "name");
        if (name.isBlank()) {
            throw file.refuse(what, "a " + what + " needs a name");
        }
        return name;
    }

    private String text(JsonNode table, String key) {
        JsonNode value = table.path(key);
        if (!value.isMissingNode() && !value.isTextual()) {
            throw file.refuse(key, key + ": expected a text in quote marks");
        }
        return value.asText("").strip();
    }

    private List<String> texts(JsonNode table, String key) {
        JsonNode list = table.path(key);
        if (!list.isMissingNode() && !list.isArray()) {
            throw file.refuse(key, key + ": expected a list such as [\"one\", \"two\"]");
        }
        List<String> texts = new ArrayList<>();
        for (JsonNode one : list) {
            if (!one.isTextual() || one.asText().isBlank()) {
                throw file.refuse(key, key + ": expected texts in quote marks");
            }
            texts.add(one.asText().strip());
        }
        return texts;
    }

    private Map<String, String> map(JsonNode root, String key) {
        JsonNode table = root.path(key);
        if (!table.isMissingNode() && !table.isObject()) {
            throw file.refuse(key, key + ": expected a table [" + key + "]");
        }
        Map<String, String> map = new LinkedHashMap<>();
        table.fieldNames().forEachRemaining(name -> map.put(name, text(table, name)));
        return map;
    }
}
