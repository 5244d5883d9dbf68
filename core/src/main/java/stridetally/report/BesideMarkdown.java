package stridetally.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stridetally.measures.Catalogue;
import stridetally.stats.Estimate;
import stridetally.stats.StandardScore;

/** What stands beside a goal's figures on the team's page: the other side, and published values. Nothing when there is neither. */
final class BesideMarkdown {
    private static final int SCORE_DECIMALS = 1;

    private static final String SAMPLE = "One sample of children with typical development each: no norm, and no goal.";

    private final MarkdownPage page;
    private final GoalPart part;

    BesideMarkdown(MarkdownPage page, GoalPart part) {
        this.page = page;
        this.part = part;
    }

    void write() {
        sides();
        references();
    }

    /** The latest day on which both sides were tried. */
    private void sides() {
        if (part.sides().size() != 2) {
            return;
        }
        List<BothSides> days = BothSides.of(
                part.sides().get(0).review().score().sessions(),
                part.sides().get(1).review().score().sessions());
        page.heading(3, "Left and right");
        List<BothSides> both = days.stream()
                .filter(day -> day.left().isEstimated() && day.right().isEstimated())
                .toList();
        if (both.isEmpty()) {
            page.paragraph("On no day do both sides have a value.");
            return;
        }
        BothSides latest = both.get(both.size() - 1);
        page.bullet(
                "Latest day with both",
                latest.date() + ": left " + part.unit().text(latest.left().orElseThrow()) + ", right "
                        + part.unit().text(latest.right().orElseThrow()));
        page.bullet(
                "Right less left",
                latest.difference().isEstimated()
                        ? part.unit().text(latest.difference().orElseThrow()) + symmetry(latest)
                        : "not compared: " + latest.difference().reason());
    }

    private static String symmetry(BothSides day) {
        return day.index()
                .value()
                .map(index -> "; symmetry index " + rounded(index, 0) + " % (0 = equal)")
                .orElse("; no symmetry index: " + day.index().reason());
    }

    private void references() {
        if (part.references().isEmpty()) {
            return;
        }
        page.heading(3, "Beside published values");
        Map<String, String> citations = Catalogue.citations();
        boolean compared = false;
        for (ReferenceTable.Line line : part.references()) {
            String side = line.key().side().word();
            String of = line.session().date() + (side.isEmpty() ? "" : ", " + side);
            if (line.beside().isEmpty()) {
                page.bullet(of, "not compared: " + line.why());
            }
            line.beside().forEach(one -> page.bullet(of, sentence(line, one, citations)));
            compared |= !line.beside().isEmpty();
        }
        if (compared) {
            page.paragraph(SAMPLE);
        }
    }

    private String sentence(ReferenceTable.Line line, BesideReference one, Map<String, String> citations) {
        List<String> words = new ArrayList<>();
        if (!one.value().isEstimated() || !one.expected().isEstimated()) {
            words.add("not compared with " + one.reference().group() + ": "
                    + (one.value().isEstimated()
                            ? one.expected().reason()
                            : one.value().reason()));
        } else {
            words.add(part.unit().text(one.value().orElseThrow()) + " beside "
                    + part.unit().text(one.expected().orElseThrow())
                    + one.reference()
                            .sd()
                            .map(sd -> " (standard deviation " + part.unit().text(sd) + ")")
                            .orElse("")
                    + " of " + one.reference().group());
            words.add(score(one.score()));
            words.add(ReferenceRows.unstated(line, one.reference()));
        }
        words.add(one.reference().note());
        words.add("source: "
                + citations.getOrDefault(
                        one.reference().source(), one.reference().source()));
        words.removeIf(String::isBlank);
        return String.join("; ", words);
    }

    private static String score(Estimate<StandardScore> score) {
        return score.value()
                .map(one -> "z " + rounded(one.z(), SCORE_DECIMALS) + " (above 0 is better than their mean)")
                .orElse("no z: " + score.reason());
    }

    private static String rounded(double value, int decimals) {
        return new BigDecimal(Double.toString(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
