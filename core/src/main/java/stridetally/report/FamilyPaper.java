package stridetally.report;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stridetally.model.Contact;

/**
 * What a paper for a family bears besides its matter.
 *
 * @param name only when names were asked for
 */
public record FamilyPaper(Optional<String> name, Contact contact) {
    /** Whom to reach, on one line in the language of the paper; blank when nothing is written. */
    static String reach(Contact written, String language) {
        Contact contact = written.in(language);
        return Stream.of(
                        contact.name(),
                        contact.role(),
                        contact.place(),
                        contact.phone(),
                        contact.email(),
                        contact.hours())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("; "));
    }
}
