package stridetally.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stridetally.forecast.Judgement;
import stridetally.model.Caseload;
import stridetally.model.Goal;
import stridetally.model.Remark;

/**
 * What the therapist wrote of a goal that a letter in one language may say. Words in another language are left out, whatever
 * they say. A remark in the language of the logbook is for the team and may speak of what a family must not find in a letter
 * (who was absent); the letter has only what stands under {@code family}. A row in any other language is for the family as a
 * whole. The therapist's own judgement counts in whichever row it stands, since its words are a closed list.
 *
 * @param routine where it matters in the child's day
 * @param home what helps at home
 */
record LetterRemark(
        Optional<String> routine,
        Optional<String> remark,
        Optional<String> next,
        Optional<String> home,
        Optional<String> judgement) {

    static LetterRemark of(Caseload caseload, Goal goal, ReportPeriod period, String language) {
        String usual = usualLanguage(caseload);
        List<Remark> ofPeriod = caseload.remarks().stream()
                .filter(one -> one.goal().equals(goal.id())
                        && !period.name().isBlank()
                        && one.period().equals(period.name()))
                .toList();
        List<Remark> said = ofPeriod.stream()
                .filter(one ->
                        (one.language().isBlank() ? usual : one.language().strip()).equals(language))
                .toList();
        List<Remark> forFamily = usual.equals(language) ? List.of() : said;
        Optional<String> routine = said.stream()
                .map(Remark::routine)
                .filter(words -> !words.isBlank())
                .findFirst();
        return new LetterRemark(
                routine.or(
                        () -> Optional.of(goal.routine()).filter(words -> !words.isBlank() && usual.equals(language))),
                first(said.stream().map(Remark::family).toList())
                        .or(() -> first(forFamily.stream().map(Remark::remark).toList())),
                first(forFamily.stream().map(Remark::next).toList()),
                first(said.stream().map(Remark::home).toList()),
                first(ofPeriod.stream().flatMap(one -> one.judgement().stream()).toList()));
    }

    /** In which language the goals of a logbook are written: the first of its settings. */
    static String usualLanguage(Caseload caseload) {
        List<String> languages = caseload.settings().languages();
        return languages.isEmpty() ? "en" : languages.get(0);
    }

    /** The therapist's own judgement as a word of the list; empty when it is another word. */
    Optional<Judgement> ownWord() {
        return judgement.flatMap(written -> Arrays.stream(Judgement.values())
                .filter(one -> one.word().equals(written.strip().toLowerCase(Locale.ROOT)))
                .findFirst());
    }

    private static Optional<String> first(List<String> texts) {
        return texts.stream().filter(words -> !words.isBlank()).findFirst();
    }
}
