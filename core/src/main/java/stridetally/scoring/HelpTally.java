package stridetally.scoring;

import java.util.ArrayList;
import java.util.List;
import stridetally.model.Level;
import stridetally.model.Settings;
import stridetally.model.WordScale;

/** Adds up the help and the prompts of sessions. */
final class HelpTally {
    private final Settings settings;
    private final int[] help;
    private final int[] prompt;
    private int helpNotWritten;
    private int promptNotWritten;
    private int tries;

    HelpTally(Settings settings) {
        this.settings = settings;
        this.help = new int[settings.help().words().size()];
        this.prompt = new int[settings.prompt().words().size()];
    }

    void add(TrialGroup session) {
        for (int row = 0; row < session.size(); row++) {
            if (session.kind(row).recorded()) {
                add(session.help(row), session.prompt(row), session.given(row));
            }
        }
    }

    private void add(int helpRank, int promptRank, int given) {
        tries += given;
        if (helpRank == Level.BLANK) {
            helpNotWritten += given;
        } else {
            help[helpRank] += given;
        }
        if (promptRank == Level.BLANK) {
            promptNotWritten += given;
        } else {
            prompt[promptRank] += given;
        }
    }

    HelpCounts counts() {
        return new HelpCounts(
                occurring(settings.help(), help),
                helpNotWritten,
                occurring(settings.prompt(), prompt),
                promptNotWritten,
                tries);
    }

    private static List<HelpCounts.AtLevel> occurring(WordScale scale, int[] counts) {
        List<HelpCounts.AtLevel> levels = new ArrayList<>();
        for (int rank = 0; rank < counts.length; rank++) {
            if (counts[rank] > 0) {
                levels.add(new HelpCounts.AtLevel(scale.level(rank), counts[rank]));
            }
        }
        return levels;
    }
}
