package stridetally.measures;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import stridetally.model.MeasureId;
import stridetally.problem.At;
import stridetally.problem.Spelling;
import stridetally.units.Folding;

/** The measures a log may name, found by id, trade name or alias. */
public final class Catalogue {

    private static final Catalogue STANDARD = read();

    /** Every measure, in the order of the catalogue. */
    private final Map<MeasureId, CatalogueEntry> byId;

    /** Folded id, trade name and alias to its id. */
    private final Map<String, MeasureId> idOf;

    /** Those asked for so far, so that each is made once. */
    private final Map<MeasureId, Measure> made = new ConcurrentHashMap<>();

    private Catalogue(Map<MeasureId, CatalogueEntry> byId, Map<String, MeasureId> idOf) {
        this.byId = byId;
        this.idOf = idOf;
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
        MeasureId id = idOf.get(fold(written));
        return id == null ? Optional.empty() : find(id);
    }

    /** The measure of an id, as our own files write it. */
    public Optional<Measure> find(MeasureId id) {
        CatalogueEntry entry = byId.get(id);
        return entry == null ? Optional.empty() : Optional.of(measure(entry));
    }

    /** The id that was probably meant: at most two edits from a known name, else the name that shares most words. */
    public Optional<String> nearest(String written) {
        String folded = fold(written);
        return Spelling.nearest(folded, idOf.keySet())
                .or(() -> SharedWords.most(folded, idOf))
                .map(name -> idOf.getOrDefault(name, new MeasureId(name)).text());
    }

    /** Every measure, in the order of the catalogue. */
    public Collection<Measure> all() {
        return byId.values().stream().map(this::measure).toList();
    }

    /** This catalogue with measures of somebody's own; one with a known id stands in its place and keeps its aliases. */
    public Catalogue with(List<Measure> extra) {
        Map<MeasureId, CatalogueEntry> measures = new LinkedHashMap<>(byId);
        Map<String, MeasureId> names = new TreeMap<>(idOf);
        for (Measure measure : extra) {
            add(CatalogueEntry.of(measure), measures, names);
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
        return Folding.words(written, Catalogue::isGap);
    }

    private static boolean isGap(int letter) {
        return Folding.isBlank(letter)
                || letter == '_'
                || letter == '-'
                || letter == '\u00a0'
                || (letter >= '\u2010' && letter <= '\u2015')
                || letter == '\u2212';
    }

    private Measure measure(CatalogueEntry entry) {
        return made.computeIfAbsent(entry.id(), id -> entry.made().get());
    }

    private static void add(
            CatalogueEntry entry, Map<MeasureId, CatalogueEntry> measures, Map<String, MeasureId> names) {
        measures.put(entry.id(), entry);
        names.put(fold(entry.id().text()), entry.id());
        names.putIfAbsent(fold(entry.name()), entry.id());
    }

    /** An alias never takes the name or id of another measure. */
    private static Catalogue read() {
        Map<MeasureId, CatalogueEntry> measures = new LinkedHashMap<>();
        Map<String, MeasureId> names = new TreeMap<>();
        Map<String, MeasureId> aliases = new TreeMap<>();
        for (Map<String, String> row : CatalogueResource.records("measures.csv")) {
            CatalogueEntry entry = CatalogueEntry.ofRow(row, At.row("measures.csv", measures.size() + 2L));
            add(entry, measures, names);
            for (String alias : row.getOrDefault("aliases", "").split("\\|", -1)) {
                aliases.put(fold(alias), entry.id());
            }
        }
        aliases.remove("");
        aliases.forEach(names::putIfAbsent);
        return new Catalogue(measures, names);
    }
}
