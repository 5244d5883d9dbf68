package stridetally.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.util.Set;
import stridetally.model.Contact;

/** {@code contact.toml}: whom to reach. Texts only; never shared. */
final class ContactFile {
    private static final Set<String> KEYS = Set.of("name", "role", "place", "phone", "email", "hours");

    private ContactFile() {}

    static Contact read(LogbookFolder folder) {
        if (!Files.exists(folder.root().resolve(LogbookFolder.CONTACT))) {
            return Contact.NONE;
        }
        TomlFile file = TomlFile.read(folder.root().resolve(LogbookFolder.CONTACT), LogbookFolder.CONTACT);
        JsonNode root = file.root();
        file.only(root, "", KEYS);
        return new Contact(
                text(file, root, "name"),
                text(file, root, "role"),
                text(file, root, "place"),
                text(file, root, "phone"),
                text(file, root, "email"),
                text(file, root, "hours"));
    }

    private static String text(TomlFile file, JsonNode root, String key) {
        JsonNode value = root.path(key);
        if (!value.isMissingNode() && !value.isTextual()) {
            throw file.refuse(key, key + ": expected a text in quote marks");
        }
        return value.asText("").strip();
    }
}
