package stridetally.cli.output;

import java.util.Collection;
import java.util.List;
import stridetally.cli.Console;
import stridetally.model.Contact;

/** What {@code contact.toml} lacks for papers in other languages. */
public final class ContactWords {
    private ContactWords() {}

    /** Tells what the papers in these languages will not say. */
    public static void tellLacking(Contact contact, Collection<String> languages, Console console) {
        for (String language : languages) {
            List<String> keys = contact.lacks(language);
            if (!keys.isEmpty()) {
                console.note("contact.toml has no " + String.join(" and no ", keys)
                        + ": papers in that language leave it out");
            }
        }
    }
}
