package stridetally.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stridetally.forecast.GoalReview;
import stridetally.forecast.Judgement;
import stridetally.forecast.SideReview;
import stridetally.measures.FamilyWords;
import stridetally.measures.Measure;
import stridetally.model.Direction;
import stridetally.model.Goal;
import stridetally.model.GoalAim;
import stridetally.model.Side;

/**
 * One goal in the letter, every text in its language. An empty Optional is a place for the therapist to fill in.
 *
 * @param measured what we work on
 * @param strengths true sentences of what goes well; none when there is nothing of the kind
 * @param now what was last measured, a line a side
 * @param expect whether we expect to get there: never a promise
 * @param closed nobody works on it any more, so nothing of it is asked of the family
 */
record LetterGoal(
        Optional<String> measured,
        List<String> strengths,
        Line start,
        List<Line> now,
        Optional<String> target,
        String expect,
        boolean closed,
        LetterRemark said) {

    /** The share of the way from start to goal from which on a gain is told: our choice. */
    private static final double WORTH_TELLING = 0.1;

    LetterGoal {
        strengths = List.copyOf(strengths);
        now = List.copyOf(now);
    }

    /** A label and what stands behind it. */
    record Line(String label, String text) {}

    static LetterGoal of(GoalReview review, LetterRemark said, Optional<ShownUnit> unit, FamilyWords words) {
        return new Maker(review, said, words, new LetterNumbers(words, unit)).make();
    }

    /** Puts the facts of one goal into words. */
    private record Maker(GoalReview review, LetterRemark said, FamilyWords words, LetterNumbers numbers) {

        LetterGoal make() {
            Optional<String> measured =
                    review.score().measure().flatMap(words::plain).map(this::titled);
            List<Line> now = review.sides().stream().map(this::now).toList();
            return new LetterGoal(
                    measured,
                    strengths(measured.orElseGet(() -> words.text("goal"))),
                    start(),
                    now.isEmpty() ? List.of(new Line(words.text("now"), words.text("now.none"))) : now,
                    target(),
                    expect(),
                    judgement().equals(Optional.of(Judgement.ENDED)),
                    said);
        }

        private String titled(String text) {
            String capital = text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
            return switch (goal().side()) {
                case LEFT -> capital + ", " + words.text("side.left");
                case RIGHT -> capital + ", " + words.text("side.right");
                case NONE, EACH, EITHER -> capital;
            };
        }

        private Goal goal() {
            return review.goal();
        }

        private Optional<Judgement> judgement() {
            return said.judgement().isPresent()
                    ? said.ownWord()
                    : review.judgement().judgement();
        }

        private Line start() {
            String label = goal().baselineDate()
                    .map(day -> words.text("start.on", numbers.day(day)))
                    .orElseGet(() -> words.text("start"));
            return new Line(
                    label,
                    goal().baseline()
                            .map(amount -> numbers.amount(amount.value()))
                            .orElseGet(() -> words.text("start.fill")));
        }

        private Line now(SideReview side) {
            boolean sided = review.sides().size() > 1;
            return side.trend()
                    .latest()
                    .map(point -> new Line(
                            sided
                                    ? words.text("now.side", sideWord(side.side()), numbers.day(point.date()))
                                    : words.text("now.on", numbers.day(point.date())),
                            numbers.amount(Measured.of(point), goal().target())))
                    .orElseGet(() -> new Line(
                            sided ? words.text("now") + ", " + sideWord(side.side()) : words.text("now"),
                            words.text("now.none")));
        }

        private String sideWord(Side side) {
            return words.text(side == Side.LEFT ? "side.left" : "side.right");
        }

        private Optional<String> target() {
            return goal().target().map(amount -> {
                String text = numbers.amount(amount.value());
                String way = review.score()
                        .measure()
                        .flatMap(Measure::better)
                        .map(better -> words.text(better == Direction.HIGHER ? "goal.more" : "goal.less", text))
                        .orElse(text);
                String kept = goal().aim() == GoalAim.KEEP ? words.text("goal.keep", way) : way;
                return goal().due()
                        .filter(this::afterStart)
                        .map(due -> words.text("goal.by", kept, numbers.day(due)))
                        .orElse(kept);
            });
        }

        private boolean afterStart(LocalDate due) {
            return goal().baselineDate().map(due::isAfter).orElse(true);
        }

        private String expect() {
            Optional<Judgement> word = judgement();
            if (word.isEmpty() || (isByChance(word.get()) && goal().due().isEmpty())) {
                return words.text("expect.NONE");
            }
            if (!isByChance(word.get())) {
                return words.text("expect." + word.get().name());
            }
            String keep = goal().aim() == GoalAim.KEEP ? ".keep" : "";
            return words.text(
                    "expect." + word.get().name() + keep,
                    numbers.day(goal().due().orElseThrow()));
        }

        private static boolean isByChance(Judgement word) {
            return word == Judgement.ON_COURSE || word == Judgement.TOO_CLOSE_TO_CALL || word == Judgement.OFF_COURSE;
        }

        private List<String> strengths(String measured) {
            List<String> strengths = new ArrayList<>();
            if (judgement().equals(Optional.of(Judgement.MET))) {
                strengths.add(words.text("well.met", measured));
            }
            for (SideReview side : review.sides()) {
                String of = review.sides().size() > 1 ? measured + ", " + sideWord(side.side()) : measured;
                side.trend()
                        .latest()
                        .filter(point -> goal().aim() == GoalAim.KEEP || isOnItsWay(side))
                        .flatMap(point -> well(of, Measured.of(point), point.date()))
                        .ifPresent(strengths::add);
            }
            return strengths;
        }

        /** A hair's breadth is no news; where the way cannot be measured, any gain counts. */
        private static boolean isOnItsWay(SideReview side) {
            return side.score()
                    .shareOfWay()
                    .value()
                    .map(share -> share >= WORTH_TELLING)
                    .orElse(true);
        }

        private Optional<String> well(String of, Measured latest, LocalDate day) {
            if (goal().aim() == GoalAim.KEEP) {
                return goal().target()
                        .filter(target -> !judgement().equals(Optional.of(Judgement.OFF_COURSE)))
                        .filter(target -> latest.value() == target.value() || beats(latest, target.value()))
                        .map(target ->
                                words.text("well.kept", of, numbers.amount(latest, goal().target()), numbers.day(day)));
            }
            return goal().baseline()
                    .filter(start -> beats(latest, start.value()))
                    .map(start -> words.text(
                            "well.better",
                            of,
                            numbers.amount(start.value()),
                            numbers.amount(latest, goal().target()),
                            numbers.day(day)));
        }

        private boolean beats(Measured latest, double other) {
            return review.score()
                    .measure()
                    .flatMap(Measure::better)
                    .map(better -> better == Direction.HIGHER ? latest.value() > other : latest.value() < other)
                    .orElse(false);
        }
    }
}
