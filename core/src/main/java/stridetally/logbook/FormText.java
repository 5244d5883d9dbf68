package stridetally.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import stridetally.ingest.ColumnMeaning;
import stridetally.ingest.DateOrder;
import stridetally.ingest.FormMapping;
import stridetally.ingest.FormRules;
import stridetally.ingest.TrialColumn;
import stridetally.units.DecimalMark;

/** A mapping as the text that {@link FormFile} reads back. */
public final class FormText {
    private FormText() {}

    /** A mapping of headings that were not all understood, with what to write where. */
    public static String toBeFilledIn(FormMapping draft) {
        List<String> columns =
                Stream.of(TrialColumn.values()).map(TrialColumn::heading).toList();
        return "# For each column that says something, put one of these words in place of \"ignore\":\n# "
                + String.join(", ", columns.subList(0, columns.size() / 2)) + ",\n# "
                + String.join(", ", columns.subList(columns.size() / 2, columns.size()))
                + ".\n# A log needs student, date, measure and value. What no column says and holds for the whole form goes"
                + " at the end:\n# [constants]\n# student = \"S01\"\n# measure = \"single-leg-stance\"\n# year = 2026\n"
                + "# (student = \"{sheet}\" where each sheet of a workbook is one student's)\n"
                + "# Tries side by side say which they are, each column for itself, behind its heading:\n"
                + "# \"Try 1\" = { column = \"value\", measure = \"line-steps\", trial = \"1\" }\n"
                + "# What the form calls things in its own words, column by column:\n# [words.measure]\n"
                + "# \"one foot\" = \"single-leg-stance\"\n# [words.help]\n# \"by myself\" = \"independent\"\n"
                + "# Then import with --columns and this file.\n\n" + of(draft);
    }

    /** The text; equal mappings give equal text. */
    public static String of(FormMapping mapping) {
        StringBuilder text = new StringBuilder(
                "# How a form is read. Correct it by hand; a heading not named here is found by itself.\n");
        if (!mapping.headings().isEmpty()) {
            List<String> quoted =
                    mapping.headings().stream().map(FormText::quoted).toList();
            text.append("headings = [").append(String.join(", ", quoted)).append("]\n");
        }
        number(text, "heading_row", mapping.headingRow());
        number(text, "heading_lines", mapping.headingLines());
        mapping.sheet().ifPresent(sheet -> word(text, "sheet", sheet));
        mapping.order()
                .filter(order -> order != DateOrder.UNPROVEN)
                .ifPresent(
                        order -> word(text, "date_order", order == DateOrder.DAY_FIRST ? "day-first" : "month-first"));
        mapping.decimals().ifPresent(mark -> word(text, "decimal", mark == DecimalMark.COMMA ? "comma" : "point"));
        mapping.blankHelp().ifPresent(help -> word(text, "blank_help", help));
        rules(text, mapping.rules());
        if (!mapping.columns().isEmpty()) {
            text.append("\n[columns]\n");
            mapping.columns()
                    .forEach((heading, meaning) -> text.append(quoted(heading))
                            .append(" = ")
                            .append(meaning(meaning))
                            .append('\n'));
        }
        return text.toString();
    }

    private static void rules(StringBuilder text, FormRules rules) {
        if (!rules.constants().isEmpty() || rules.year().isPresent()) {
            text.append("\n[constants]\n");
            new TreeMap<>(rules.constants()).forEach((column, value) -> word(text, column.heading(), value));
            rules.year().ifPresent(year -> number(text, FormFile.YEAR, year));
        }
        rules.dayCount().ifPresent(count -> {
            text.append("\n[date]\norigin = ").append(count.origin()).append('\n');
            word(text, "unit", count.daysEach() == 7 ? "weeks" : "days");
            number(text, "first", count.first());
        });
        new TreeMap<>(rules.words()).forEach((column, list) -> {
            text.append("\n[words.").append(column.heading()).append("]\n");
            new TreeMap<>(list)
                    .forEach((written, known) -> text.append(quoted(written))
                            .append(" = ")
                            .append(quoted(known))
                            .append('\n'));
        });
    }

    private static String meaning(ColumnMeaning meaning) {
        if (meaning.column().isEmpty()) {
            return quoted(FormFile.IGNORE);
        }
        String column = meaning.column().get().heading();
        if (meaning.sets().isEmpty() && meaning.unit().isEmpty()) {
            return quoted(column);
        }
        List<String> parts = new ArrayList<>();
        parts.add("column = " + quoted(column));
        for (Map.Entry<TrialColumn, String> set : new TreeMap<>(meaning.sets()).entrySet()) {
            parts.add(set.getKey().heading() + " = " + quoted(set.getValue()));
        }
        if (!meaning.unit().isEmpty()) {
            parts.add("unit = " + quoted(meaning.unit()));
        }
        return "{ " + String.join(", ", parts) + " }";
    }

    private static void word(StringBuilder text, String key, String value) {
        text.append(key).append(" = ").append(quoted(value)).append('\n');
    }

    private static void number(StringBuilder text, String key, int value) {
        if (value != 0) {
            text.append(key).append(" = ").append(value).append('\n');
        }
    }

    /** A basic string of TOML. */
    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int place = 0; place < text.length(); place++) {
            char letter = text.charAt(place);
            if (letter == '"' || letter == '\\') {
                quoted.append('\\').append(letter);
            } else if (letter < ' ' || letter == 0x7f) {
                quoted.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) letter));
            } else {
                quoted.append(letter);
            }
        }
        return quoted.append('"').toString();
    }
}
