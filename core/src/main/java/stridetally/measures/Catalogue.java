package stridetally.measures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import stridetally.model.MeasureId;
import stridetally.problem.At;
import stridetally.problem.Spelling;
import stridetally.units.Folding;

/** The measures a log may name, found by id, trade name or alias. */
public final class Catalogue {

    /** So many spellings are remembered; ours. */
    private static final int SPELLINGS = 1_000;

    private static final Catalogue STANDARD = read();

    /** Every measure, in the order of the catalogue. */
    private final Map<MeasureId, CatalogueEntry> byId;

    /** The catalogue that this one adds to, and what it adds; for the names. */
    private final Optional<Catalogue> base;

    private final List<CatalogueEntry> own;

    /** Folded id, trade name and alias to its id. Made when the first name comes that is no id. */
    private final AtomicReference<@Nullable Map<String, MeasureId>> names = new AtomicReference<>();

    /** Those asked for so far, so that each is made once. */
    private final Map<MeasureId, Measure> made = new ConcurrentHashMap<>();

    /** Spellings that were found, so that the rows of a log do not fold the same words again. */
    private final Map<String, Measure> found = new ConcurrentHashMap<>();

    private Catalogue(Optional<Catalogue> base, List<CatalogueEntry> own) {
        this.base = base;
        this.own = own;
        this.byId = base.isPresent() ? new LinkedHashMap<>(base.get().byId) : new LinkedHashMap<>();
        for (CatalogueEntry entry : own) {
            byId.put(entry.id(), entry);
        }
    }

    /** The catalogue that comes with the program. */
    public static Catalogue standard() {
        return STANDARD;
    }

    /** No measure at all. */
    public static Catalogue empty() {
        return new Catalogue(Optional.empty(), List.of());
    }

    /** The measure written so: id, trade name or alias; case, spaces, dashes and underscores do not matter. */
    public Optional<Measure> find(String written) {
        Measure again = found.get(written);
        if (again != null) {
            return Optional.of(again);
        }
        if (written.isBlank()) {
            return Optional.empty();
        }
        Optional<Measure> measure = find(new MeasureId(written));
        if (measure.isEmpty()) {
            MeasureId id = names().get(fold(written));
            measure = id == null ? Optional.empty() : find(id);
        }
        if (measure.isPresent() && found.size() < SPELLINGS) {
            found.put(written, measure.get());
        }
        return measure;
    }

    /** The measure of an id, as our own files write it. */
    public Optional<Measure> find(MeasureId id) {
        CatalogueEntry entry = byId.get(id);
        return entry == null ? Optional.empty() : Optional.of(measure(entry));
    }

    /** The id that was probably meant: at most two edits from a known name, else the name that shares most words. */
    public Optional<String> nearest(String written) {
        String folded = fold(written);
        return Spelling.nearest(folded, names().keySet())
                .or(() -> SharedWords.most(folded, names()))
                .map(name -> names().getOrDefault(name, new MeasureId(name)).text());
    }

    /** Every measure, in the order of the catalogue. */
    public Collection<Measure> all() {
        return byId.values().stream().map(this::measure).toList();
    }

    /** This catalogue with measures of somebody's own; one with a known id stands in its place and keeps its aliases. */
    public Catalogue with(List<Measure> extra) {
        List<CatalogueEntry> more = new ArrayList<>();
        for (Measure measure : extra) {
            more.add(new CatalogueEntry.Made(measure));
        }
        return new Catalogue(Optional.of(this), more);
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
        Measure known = made.get(entry.id());
        if (known != null) {
            return known;
        }
        // Two threads may both make it; they make equal ones.
        Measure now = entry.made();
        made.put(entry.id(), now);
        return now;
    }

    private Map<String, MeasureId> names() {
        Map<String, MeasureId> known = names.get();
        if (known == null) {
            known = named();
            names.set(known);
        }
        return known;
    }

    /** An alias never takes the name or id of another measure. */
    private Map<String, MeasureId> named() {
        Map<String, MeasureId> all = base.isPresent() ? new TreeMap<>(base.get().names()) : new TreeMap<>();
        Map<String, MeasureId> aliases = new TreeMap<>();
        for (CatalogueEntry entry : own) {
            all.put(fold(entry.id().text()), entry.id());
            all.putIfAbsent(fold(entry.name()), entry.id());
            for (String alias : entry.aliases().split("\\|", -1)) {
                aliases.put(fold(alias), entry.id());
            }
        }
        aliases.remove("");
        for (Map.Entry<String, MeasureId> alias : aliases.entrySet()) {
            all.putIfAbsent(alias.getKey(), alias.getValue());
        }
        return all;
    }

    private static Catalogue read() {
        List<List<String>> rows = CatalogueResource.tabbed("measures.tsv");
        List<String> headings = rows.get(0);
        List<CatalogueEntry> entries = new ArrayList<>();
        for (List<String> row : rows.subList(1, rows.size())) {
            MeasureId id = new MeasureId(row.get(headings.indexOf("id")));
            entries.add(new CatalogueEntry.Written(id, headings, row, At.row("measures.tsv", entries.size() + 2L)));
        }
        return new Catalogue(Optional.empty(), entries);
    }
}
