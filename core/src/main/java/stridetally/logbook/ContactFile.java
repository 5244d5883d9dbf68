package stridetally.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import stridetally.measures.FamilyWords;
import stridetally.model.Contact;

/**
 * {@code contact.toml}: whom to reach. Texts only; never shared. Role, place and
 * hours may stand there in other languages too, such as {@code role_es}.
 */
final class ContactFile {
    private static final Set<String> KEYS = Set.of("name", "role", "place", "phone", "email", "hours");

    /** Those that depend on the language. */
    private static final Set<String> SPOKEN = Set.of("role", "place", "hours");

    private ContactFile() {}

    static Contact read(LogbookFolder folder) {
        if (!Files.exists(folder.root().resolve(LogbookFolder.CONTACT))) {
            return Contact.NONE;
        }
        TomlFile file = TomlFile.read(folder.root().resolve(LogbookFolder.CONTACT), LogbookFolder.CONTACT);
        JsonNode root = file.root();
        file.only(root, "", keys());
        return new Contact(
                text(file, root, "name"),
                text(file, root, "role"),
                text(file, root, "place"),
                text(file, root, "phone"),
                text(file, root, "email"),
                text(file, root, "hours"),
                translated(file, root));
    }

    /** Every key, those of the other languages with their code behind. */
    private static Set<String> keys() {
        Set<String> keys = new TreeSet<>(KEYS);
        for (String language : FamilyWords.languages()) {
            for (String key : SPOKEN) {
                keys.add(key + "_" + language);
            }
        }
        return keys;
    }

    private static Map<String, Contact.Words> translated(TomlFile file, JsonNode root) {
        Map<String, Contact.Words> translated = new TreeMap<>();
        for (String language : FamilyWords.languages()) {
            translated.put(
                    language,
                    new Contact.Words(
                            text(file, root, "role_" + language),
                            text(file, root, "place_" + language),
                            text(file, root, "hours_" + language)));
        }
        return translated;
    }

    private static String text(TomlFile file, JsonNode root, String key) {
        JsonNode value = root.path(key);
        if (!value.isMissingNode() && !value.isTextual()) {
            throw file.refuse(key, key + ": expected a text in quote marks");
        }
        return value.asText("").strip();
    }
}
