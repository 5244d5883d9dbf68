package stridetally.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stridetally.measures.Measure;
import stridetally.model.Precaution;
import stridetally.model.Student;

/**
 * The cautions that stand under every goal that someone will practise. The measure's own come first. Common practice where
 * no source is named; the list of signs to stop at follows the walk test's.
 *
 * @source ats2002 the signs to stop at, as commonly taught
 */
final class Cautions {
    /** For a page that may be copied alone. */
    static final String FIRST = "Therapist, medical orders and school rules come first.";

    static final String ADULT =
            "Practise only with an adult who watches and can reach the child, and only as the therapist showed.";

    static final String STOP =
            "Stop now and tell the therapist: chest pain, hard breathing, leg cramps, staggering, heavy sweating, paleness,"
                    + " dizziness, headache, new pain, a limp, a fall with injury, a seizure, distress, or the child says no.";

    static final List<String> ALWAYS = List.of(
            "The treating therapist decides, within the child's medical orders and the rules of the school and the state;"
                    + " these come before anything on this page.",
            ADULT,
            "Clear, dry, level, well-lit space; firm shoes or bare feet as instructed, no socks on a hard floor; braces as"
                    + " ordered.",
            "Short and often; stop while it is still going well.",
            STOP);

    private Cautions() {}

    static List<String> of(Optional<Measure> measure, Optional<Student> student) {
        List<String> cautions = new ArrayList<>();
        if (measure.isPresent() && !measure.get().cautions().isBlank()) {
            cautions.add(measure.get().cautions());
        }
        List<String> precautions = new ArrayList<>();
        for (String word : student.isPresent() ? student.get().precautions() : List.<String>of()) {
            if (!Precaution.find(word).equals(Optional.of(Precaution.NONE))) {
                precautions.add(word);
            }
        }
        if (!precautions.isEmpty()) {
            cautions.add("Precautions on file: " + String.join(", ", precautions) + ". Follow the written orders.");
        }
        cautions.addAll(ALWAYS);
        return cautions;
    }
}
