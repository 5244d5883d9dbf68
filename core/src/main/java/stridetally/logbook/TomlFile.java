package stridetally.logbook;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.toml.TomlFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.regex.Pattern;
import stridetally.problem.InputRefused;
import stridetally.problem.OutputRefused;
import stridetally.problem.Spelling;

/** A hand-kept settings file: its tree, and refusals that name the line. The parser is loaded only when there is a file. */
final class TomlFile {
    private static final long LARGEST = 1_000_000;

    private final String name;
    private final List<String> lines;
    private final JsonNode root;

    private TomlFile(String name, List<String> lines, JsonNode root) {
        this.name = name;
        this.lines = lines;
        this.root = root;
    }

    static TomlFile read(Path file, String name) {
        try {
            if (Files.size(file) > LARGEST) {
                throw new InputRefused(name + " is larger than a settings file can be; expected at most 1 MB");
            }
            return of(Files.readString(file, StandardCharsets.UTF_8), name);
        } catch (CharacterCodingException wrongEncoding) {
            throw new InputRefused(name + " is not UTF-8; save it as UTF-8", wrongEncoding);
        } catch (IOException unreadable) {
            throw new OutputRefused(name + " cannot be read; check the disk and its permissions", unreadable);
        }
    }

    /** The settings in a text; {@code name} is what messages call it. */
    static TomlFile of(String text, String name) {
        try {
            String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
            return new TomlFile(name, plain.lines().toList(), tree(plain));
        } catch (JsonProcessingException broken) {
            var location = broken.getLocation();
            String line = location == null ? "" : ":" + location.getLineNr();
            throw new InputRefused(name + line + ": not TOML (" + broken.getOriginalMessage()
                    + "); correct it; texts stand in quote marks, lists in brackets");
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory", impossible);
        }
    }

    /** The tree from the tokens: a mapper would bring some 300 classes for nothing else. */
    private static JsonNode tree(String text) throws IOException {
        try (JsonParser tokens = new TomlFactory().createParser(text)) {
            return node(tokens, tokens.nextToken());
        }
    }

    private static JsonNode node(JsonParser tokens, JsonToken token) throws IOException {
        JsonNodeFactory make = JsonNodeFactory.instance;
        return switch (token) {
            case START_OBJECT -> {
                ObjectNode table = make.objectNode();
                for (String key = tokens.nextFieldName(); key != null; key = tokens.nextFieldName()) {
                    table.set(key, node(tokens, tokens.nextToken()));
                }
                yield table;
            }
            case START_ARRAY -> {
                ArrayNode list = make.arrayNode();
                for (JsonToken one = tokens.nextToken(); one != JsonToken.END_ARRAY; one = tokens.nextToken()) {
                    list.add(node(tokens, one));
                }
                yield list;
            }
            case VALUE_TRUE -> make.booleanNode(true);
            case VALUE_FALSE -> make.booleanNode(false);
            case VALUE_NUMBER_INT -> whole(tokens, make);
            case VALUE_NUMBER_FLOAT -> make.numberNode(tokens.getDoubleValue());
            default -> make.textNode(tokens.getText());
        };
    }

    private static JsonNode whole(JsonParser tokens, JsonNodeFactory make) throws IOException {
        return switch (tokens.getNumberType()) {
            case INT -> make.numberNode(tokens.getIntValue());
            case LONG -> make.numberNode(tokens.getLongValue());
            default -> make.numberNode(tokens.getBigIntegerValue());
        };
    }

    JsonNode root() {
        return root;
    }

    /** Refuses keys that are not known, with the one that was probably meant. */
    void only(JsonNode table, String where, Collection<String> known) {
        table.fieldNames().forEachRemaining(key -> {
            if (!known.contains(key)) {
                String near = Spelling.nearest(key, known)
                        .map(word -> "did you mean " + word + "?")
                        .orElse("known are "
                                + String.join(", ", known.stream().sorted().toList()));
                throw refuse(key, "\"" + key + "\" is not a setting" + where + "; " + near);
            }
        });
    }

    /** A refusal with the line of a key, as far as it can be found. */
    InputRefused refuse(String key, String sentence) {
        Pattern pattern = Pattern.compile("\\s*(\\[{1,2}\\s*)?[\"']?" + Pattern.quote(key) + "[\"']?\\s*(=|\\]|\\.).*");
        for (int line = 0; line < lines.size(); line++) {
            if (pattern.matcher(lines.get(line)).matches()) {
                return new InputRefused(name + ":" + (line + 1) + ": " + sentence);
            }
        }
        return new InputRefused(name + ": " + sentence);
    }
}
