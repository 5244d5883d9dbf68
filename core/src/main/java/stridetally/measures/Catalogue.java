package stridetally.measures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stridetally.model.MeasureId;
import stridetally.problem.At;
import stridetally.problem.Checked;
import stridetally.problem.Spelling;

/**
 * The measures a log may name, found by id, trade name or alias. Immutable.
 *
 * @param byId every measure, in the order of the catalogue
 * @param idOf folded id, trade name and alias to its id
 */
public record Catalogue(Map<MeasureId, Measure> byId, Map<String, MeasureId> idOf) {

    private static final Catalogue STANDARD = read();

    public Catalogue {
        byId = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byId));
        idOf = java.util.Collections.unmodifiableMap(new TreeMap<>(idOf));
    }

    /** The catalogue that comes with the program. */
    public static Catalogue standard() {
        return STANDARD;
    }

    /** No measure at all. */
    public static Catalogue empty() {
        return new Catalogue(Map.of(), Map.of());
    }

    /** The measure written so: id, trade name or alias; case, spaces, dashes and underscores do not matter. */
    public Optional<Measure> find(String written) {
        return Optional.ofNullable(idOf.get(fold(written))).map(byId::get);
    }

    /** The measure of an id, as our own files write it. */
    public Optional<Measure> find(MeasureId id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The id that was probably meant: at most two edits from a known name, else the name that shares most words. */
    public Optional<String> nearest(String written) {
        String folded = fold(written);
        return Spelling.nearest(folded, idOf.keySet())
                .or(() -> SharedWords.most(folded, idOf.keySet()))
                .map(name -> idOf.getOrDefault(name, new MeasureId(name)).text());
    }

    /** Every measure, in the order of the catalogue. */
    public Collection<Measure> all() {
        return byId.values();
    }

    /** This catalogue with measures of somebody's own; one with a known id stands in its place and keeps its aliases. */
    public Catalogue with(List<Measure> extra) {
        Map<MeasureId, Measure> measures = new LinkedHashMap<>(byId);
        Map<String, MeasureId> names = new TreeMap<>(idOf);
        for (Measure measure : extra) {
            measures.put(measure.id(), measure);
            names.put(fold(measure.id().text()), measure.id());
            names.putIfAbsent(fold(measure.name()), measure.id());
        }
        return new Catalogue(measures, names);
    }

    /** What a source id of a {@link Measure} stands for; the ids of one measure are separated by spaces. */
    public static Map<String, String> citations() {
        Map<String, String> citations = new LinkedHashMap<>();
        CatalogueResource.records("sources.csv")
                .forEach(row -> citations.put(row.getOrDefault("id", ""), row.getOrDefault("citation", "")));
        return citations;
    }

    static String fold(String written) {
        return written.toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[\\s_\\-\u00a0\u2010-\u2015\u2212]+", " ")
                .strip();
    }

    private static Catalogue read() {
        List<Map<String, String>> rows = CatalogueResource.records("measures.csv");
        List<Measure> measures = new ArrayList<>();
        Map<String, MeasureId> names = new TreeMap<>();
        for (Map<String, String> row : rows) {
            Checked<Measure> checked = MeasureRow.parse(row, At.row("measures.csv", measures.size() + 2L), empty());
            Measure measure = checked.value()
                    .orElseThrow(
                            () -> new IllegalStateException(checked.problems().toString()));
            measures.add(measure);
            for (String alias : row.getOrDefault("aliases", "").split("\\|", -1)) {
                names.put(fold(alias), measure.id());
            }
        }
        names.remove("");
        Catalogue plain = empty().with(measures);
        names.putAll(plain.idOf());
        return new Catalogue(plain.byId(), names);
    }
}
