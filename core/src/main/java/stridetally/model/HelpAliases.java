package stridetally.model;

import static java.util.Map.entry;

import java.util.Map;

/** The usual other ways of writing the help and prompt words (common practice, no source). Keys are folded. */
final class HelpAliases {
    static final Map<String, String> HELP = Map.ofEntries(
            entry("i", "independent"),
            entry("ind", "independent"),
            entry("indep", "independent"),
            entry("unaided", "independent"),
            entry("no help", "independent"),
            entry("mod i", "modified independent"),
            entry("mod ind", "modified independent"),
            entry("sup", "supervision"),
            entry("supervised", "supervision"),
            entry("distant supervision", "supervision"),
            entry("sba", "stand-by"),
            entry("standby", "stand-by"),
            entry("stand by assist", "stand-by"),
            entry("close supervision", "stand-by"),
            entry("cga", "contact guard"),
            entry("contact guard assist", "contact guard"),
            entry("hha", "hand-held one"),
            entry("1hha", "hand-held one"),
            entry("hha 1", "hand-held one"),
            entry("hand held", "hand-held one"),
            entry("one hand held", "hand-held one"),
            entry("2hha", "hand-held two"),
            entry("hha 2", "hand-held two"),
            entry("two hands held", "hand-held two"),
            entry("min", "minimal"),
            entry("min a", "minimal"),
            entry("min assist", "minimal"),
            entry("minimal assist", "minimal"),
            entry("mod", "moderate"),
            entry("mod a", "moderate"),
            entry("mod assist", "moderate"),
            entry("moderate assist", "moderate"),
            entry("max", "maximal"),
            entry("max a", "maximal"),
            entry("max assist", "maximal"),
            entry("maximal assist", "maximal"),
            entry("total", "dependent"),
            entry("total assist", "dependent"),
            entry("dep", "dependent"));

    static final Map<String, String> PROMPT = Map.ofEntries(
            entry("no prompt", "none"),
            entry("no prompts", "none"),
            entry("natural cue", "none"),
            entry("gesture", "gestural"),
            entry("point", "gestural"),
            entry("verbal cue", "verbal"),
            entry("vc", "verbal"),
            entry("verbal cues", "verbal"),
            entry("modelled", "model"),
            entry("modeled", "model"),
            entry("demonstration", "model"),
            entry("tactile cue", "tactile"),
            entry("tc", "tactile"),
            entry("touch", "tactile"),
            entry("partial", "partial physical"),
            entry("hand over hand", "full physical"),
            entry("full", "full physical"));

    private HelpAliases() {}
}
