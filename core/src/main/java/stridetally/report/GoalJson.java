package stridetally.report;

import java.util.List;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.Sentence;
import stridetally.model.Goal;
import stridetally.model.Remark;
import stridetally.scoring.AttainmentLevels.Attained;
import stridetally.scoring.GoalScore;
import stridetally.scoring.NotUsed;
import stridetally.scoring.SessionStatus;
import stridetally.stats.StandardScore;

/** One goal as JSON. */
final class GoalJson {
    private final JsonPage page;
    private final SideJson sides;

    GoalJson(JsonPage page) {
        this.page = page;
        this.sides = new SideJson(page);
    }

    /** A row of the caseload: what the table has, and the goal's part below it. */
    void write(CaseloadRow row, Optional<GoalPart> part) {
        page.text("student", row.goal().student().text());
        row.name().ifPresent(name -> page.text("name", name));
        page.texts("flags", row.flags());
        if (part.isPresent()) {
            write(part.get());
        } else {
            page.text("goal", row.goal().id().text());
            judgement(row.review());
            page.text("reason", "the settings have no such period for the student's school");
        }
    }

    /** The part of a goal. */
    void write(GoalPart part) {
        Goal goal = part.goal();
        page.text("goal", goal.id().text());
        page.text("statement", goal.statement());
        page.text("routine", goal.routine());
        page.text("measure", goal.measure().text());
        page.text("unit", part.review().score().measure().map(one -> one.unit().symbol()));
        page.object("words", () -> words(part.words()));
        page.number("baseline", goal.baseline().map(amount -> amount.value()));
        page.date("baseline_date", goal.baselineDate());
        page.text("baseline_how", goal.baselineHow());
        page.number("target", goal.target().map(amount -> amount.value()));
        page.date("due", goal.due());
        judgement(part.review());
        remark(part.remark());
        criterion(part.review().score());
        page.array("sides", part.sides(), side -> page.object(() -> sides.write(side)));
        help("help", HelpTable.ofHelp(part.help()));
        help("prompts", HelpTable.ofPrompts(part.help()));
        page.array("tries_not_used", part.review().score().notUsed(), this::notUsed);
        page.object("sessions_without_a_try", () -> notTried(part));
        page.array(
                "changes",
                part.changes(),
                change -> page.object(() -> {
                    page.date("date", change.date());
                    page.text("change", change.what());
                }));
        part.home().ifPresent(home -> page.object("home", () -> sides.period(home)));
        attainment(part.attainment());
        page.array("references", part.references(), this::reference);
        page.texts("cautions", part.cautions());
        page.texts("doubts", part.doubts());
    }

    private void words(GoalWords words) {
        page.text("measured", words.measured());
        page.text("better", words.better());
        page.text("side", words.side());
        page.text("taken", words.taken());
        page.text("places", words.places());
        page.text("valued", words.valued());
        page.text("help", words.help());
        page.text("prompt", words.prompt());
        page.text("target", words.target());
        page.text("due", words.due());
        page.text("criterion", words.criterion());
    }

    private void judgement(GoalReview review) {
        page.object("judgement", () -> {
            page.text("word", review.judgement().word());
            page.texts(
                    "reasons",
                    review.judgement().reasons().stream().map(Sentence::text).toList());
            page.text("sufficiency", review.judgement().sufficiency().text());
        });
    }

    private void remark(Optional<Remark> remark) {
        page.object("therapist", () -> {
            page.text("judgement", remark.flatMap(Remark::judgement));
            page.text("why", remark.map(Remark::why));
            page.text("remark", remark.map(Remark::remark));
            page.text("next", remark.map(Remark::next));
        });
    }

    private void criterion(GoalScore score) {
        page.object("criterion", () -> {
            page.whole("streak", score.streak());
            page.date("met_on", score.metOn());
            score.sinceMet().ifPresent(since -> {
                page.whole("sessions_since", since.sessions());
                page.whole("meet_since", since.meet());
                page.whole("not_known_since", since.notKnown());
            });
            page.date("target_reached_on", score.targetReachedOn());
        });
    }

    private void help(String name, HelpTable table) {
        page.array(
                name,
                table.rows(),
                row -> page.object(() -> {
                    page.text("level", row.word());
                    page.whole("probe", row.probeNow());
                    page.whole("practice", row.practiceNow());
                    page.whole("previous_probe", row.probeBefore());
                    page.whole("previous_practice", row.practiceBefore());
                }));
    }

    private void attainment(GoalAttainment attainment) {
        page.object("attainment", () -> {
            if (attainment.rated().attained() instanceof Attained.AtLevel at) {
                page.whole("level", at.level());
            } else {
                page.text("level", Optional.empty());
                page.text(
                        "level_reason", ((Attained.NotRated) attainment.rated().attained()).reason());
            }
            page.number("weight", attainment.rated().weight().map(amount -> amount.value()));
            page.text("levels_from", attainment.isDerived() ? "derived" : attainment.isWritten() ? "written" : "");
        });
    }

    private void reference(ReferenceTable.Line line) {
        page.object(() -> {
            page.date("date", line.session().date());
            page.text("side", line.key().side().word());
            page.text("protocol", line.protocol().text());
            page.text("why_none", line.why());
            page.array(
                    "beside",
                    line.beside(),
                    one -> page.object(() -> {
                        page.text("group", one.reference().group());
                        page.figure("value", one.value());
                        page.figure("expected", one.expected());
                        page.number("sd", one.reference().sd());
                        page.figure("z", one.score().map(StandardScore::z));
                        page.figure("centile", one.centile());
                        page.text("source", one.reference().source());
                    }));
        });
    }

    private void notUsed(NotUsed one) {
        page.object(() -> {
            page.text("why", one.words());
            page.whole("tries", one.tries());
        });
    }

    private void notTried(GoalPart part) {
        for (SessionStatus status : List.of(SessionStatus.REFUSED, SessionStatus.ABSENT, SessionStatus.NOT_TESTED)) {
            page.whole(status.word().replace(' ', '_'), part.notTried().getOrDefault(status, 0));
        }
    }
}
