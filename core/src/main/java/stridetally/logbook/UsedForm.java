package stridetally.logbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.ingest.ColumnMeaning;
import stridetally.ingest.ColumnSamples;
import stridetally.ingest.DateOrder;
import stridetally.ingest.FormMapping;
import stridetally.ingest.FormRules;
import stridetally.ingest.TrialForm;
import stridetally.ingest.TrialLog;
import stridetally.units.DecimalMark;

/**
 * How a form was read.
 *
 * @param mapping what was used, to be read back with {@code --columns}
 * @param columns one sentence a column: what it was taken for, why, and three values as written and as taken
 */
public record UsedForm(FormMapping mapping, List<String> columns) {
    public UsedForm {
        columns = List.copyOf(columns);
    }

    static UsedForm of(TrialLog log, FormMapping given, ColumnSamples samples) {
        TrialForm form = log.form();
        Map<String, ColumnMeaning> meanings = new LinkedHashMap<>();
        List<String> sentences = new ArrayList<>();
        for (int column = 0; column < form.columns().size(); column++) {
            String heading = form.headings().get(column);
            ColumnMeaning meaning = form.columns().get(column);
            if (!heading.isEmpty()) {
                meanings.put(heading, meaning);
            }
            List<String> values = samples.of(column);
            String taken = meaning.column().isEmpty() ? "not read" : "taken for " + meaning.words();
            sentences.add("column " + (column + 1) + " \"" + heading + "\": " + taken + " (" + meaning.why() + ")"
                    + (values.isEmpty() ? "" : "; " + String.join(", ", values)));
        }
        FormRules rules = new FormRules(
                given.rules().constants(),
                given.rules().words(),
                form.first().form().dayCount(),
                given.rules().year());
        FormMapping used = new FormMapping(
                given.name(),
                form.headings(),
                meanings,
                rules,
                Optional.of(log.rules().order()).filter(order -> order != DateOrder.UNPROVEN),
                Optional.of(log.rules().decimals()).filter(mark -> mark == DecimalMark.COMMA),
                log.rules().blankHelp().map(stridetally.model.Level::word),
                given.sheet(),
                given.headingRow(),
                given.headingLines());
        return new UsedForm(used, sentences);
    }
}
