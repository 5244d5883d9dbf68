package stridetally.ingest;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import stridetally.model.Side;
import stridetally.model.TrialPlace;
import stridetally.model.Use;

/**
 * The words of side, place and use, and the other ways people write them (common practice,
 * no source; the Spanish ones are our translation, no source).
 */
final class TrialWords {
    private static final Map<String, Side> SIDES = Map.ofEntries(
            entry("left", Side.LEFT),
            entry("l", Side.LEFT),
            entry("lt", Side.LEFT),
            entry("left leg", Side.LEFT),
            entry("left foot", Side.LEFT),
            entry("right", Side.RIGHT),
            entry("r", Side.RIGHT),
            entry("rt", Side.RIGHT),
            entry("right leg", Side.RIGHT),
            entry("right foot", Side.RIGHT),
            entry("", Side.NONE),
            entry("izquierda", Side.LEFT),
            entry("izquierdo", Side.LEFT),
            entry("izq", Side.LEFT),
            entry("derecha", Side.RIGHT),
            entry("derecho", Side.RIGHT),
            entry("der", Side.RIGHT),
            entry("none", Side.NONE));

    private static final Map<String, TrialPlace> PLACES = Map.ofEntries(
            entry("school", TrialPlace.SCHOOL),
            entry("class", TrialPlace.SCHOOL),
            entry("classroom", TrialPlace.SCHOOL),
            entry("gym", TrialPlace.SCHOOL),
            entry("hall", TrialPlace.SCHOOL),
            entry("hallway", TrialPlace.SCHOOL),
            entry("playground", TrialPlace.SCHOOL),
            entry("escuela", TrialPlace.SCHOOL),
            entry("aula", TrialPlace.SCHOOL),
            entry("gimnasio", TrialPlace.SCHOOL),
            entry("patio", TrialPlace.SCHOOL),
            entry("casa", TrialPlace.HOME),
            entry("en casa", TrialPlace.HOME),
            entry("clínica", TrialPlace.CLINIC),
            entry("clinica", TrialPlace.CLINIC),
            entry("home", TrialPlace.HOME),
            entry("at home", TrialPlace.HOME),
            entry("clinic", TrialPlace.CLINIC));

    private static final Map<String, Use> USES = Map.ofEntries(
            entry("probe", Use.PROBE),
            entry("measured", Use.PROBE),
            entry("tested", Use.PROBE),
            entry("practice", Use.PRACTICE),
            entry("practise", Use.PRACTICE),
            entry("taught", Use.PRACTICE),
            entry("práctica", Use.PRACTICE),
            entry("practica", Use.PRACTICE),
            entry("medido", Use.PROBE),
            entry("medida", Use.PROBE),
            entry("", Use.PROBE));

    private TrialWords() {}

    static Optional<Side> side(String written) {
        return Optional.ofNullable(SIDES.get(TrialColumn.fold(written)));
    }

    static Optional<TrialPlace> place(String written) {
        return Optional.ofNullable(PLACES.get(TrialColumn.fold(written)));
    }

    static Optional<Use> use(String written) {
        return Optional.ofNullable(USES.get(TrialColumn.fold(written)));
    }
}
