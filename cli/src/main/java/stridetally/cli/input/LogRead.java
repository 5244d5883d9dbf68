package stridetally.cli.input;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stridetally.ingest.BulkLog;
import stridetally.ingest.ByteSource;
import stridetally.ingest.DateOrder;
import stridetally.ingest.LogFile;
import stridetally.ingest.LogRules;
import stridetally.ingest.SeriesNumbers;
import stridetally.ingest.StudentRange;
import stridetally.ingest.TrialFeed;
import stridetally.ingest.UsualFile;
import stridetally.measures.Catalogue;
import stridetally.model.Settings;
import stridetally.problem.InputRefused;
import stridetally.problem.ProblemTally;
import stridetally.scoring.DerivedWalks;
import stridetally.scoring.LegLengths;
import stridetally.scoring.LogRuns;
import stridetally.scoring.SeriesSessions;
import stridetally.scoring.SessionIndex;
import stridetally.scoring.SessionTable;
import stridetally.scoring.TrialRuns;
import stridetally.units.DecimalMark;

/**
 * Bare logs of trials, read into sessions: no goals, no roster, every recorded trial counts.
 *
 * @param files what was read of each
 * @param problems of the rows of all
 * @param walks what followed from the parts of walks; its tries are among the sessions
 */
public record LogRead(
        SeriesSessions sessions,
        Settings settings,
        Catalogue catalogue,
        List<LogFile> files,
        ProblemTally problems,
        DerivedRead walks) {

    public LogRead {
        files = List.copyOf(files);
    }

    /**
     * How bare logs are read, besides what they say themselves.
     *
     * @param sourcePerFile whether a row that names no source has that of its file
     */
    public record How(LocalDate asOf, DateOrder order, DecimalMark decimals, boolean sourcePerFile) {}

    /** Reads logs by the usual reader, which needs fewer classes to start; one behind the other, as one. */
    public static LogRead usual(List<ByteSource> sources, How how) {
        Settings settings = Settings.usual("");
        SeriesNumbers numbers = new SeriesNumbers();
        SessionTable table = new SessionTable(numbers);
        ProblemTally problems = new ProblemTally();
        List<LogFile> files = new ArrayList<>();
        for (ByteSource source : sources) {
            UsualFile file = new UsualFile(
                    new TrialFeed(numbers, settings, table), how.asOf(), StudentRange.ALL, files.size(), () -> true);
            files.add(read(source, file, rules(settings, how, source), sources.size() > 1));
            problems.add(file.problems(), problem -> problem);
        }
        refuseWhenNoneIsLeft(files);
        DerivedRead walks = new DerivedRead(DerivedRead.Keep.GAPS_ONLY);
        DerivedWalks.into(table, Catalogue.standard()::find, LegLengths.none(), walks);
        return new LogRead(table.index(), settings, Catalogue.standard(), files, problems, walks);
    }

    /** Of several logs one that cannot be used is left out, unless a part of it was taken already. */
    private static LogFile read(ByteSource source, UsualFile file, LogRules rules, boolean amongOthers) {
        try {
            return file.read(source, rules);
        } catch (InputRefused why) {
            if (!amongOthers || file.pushed()) {
                throw why;
            }
            return LogFile.refused(source.name(), why);
        }
    }

    /** What the fast reader has read; what follows from walks is added to what followed before. */
    static LogRead bulk(BulkLog<TrialRuns> log, DerivedRead walks) {
        refuseWhenNoneIsLeft(log.files());
        LogRuns runs = new LogRuns(log.parts());
        DerivedWalks.into(runs, Catalogue.standard()::find, walks);
        return new LogRead(runs, Settings.usual(""), Catalogue.standard(), log.files(), log.problems(), walks);
    }

    private static void refuseWhenNoneIsLeft(List<LogFile> files) {
        for (LogFile file : files) {
            if (file.refused().isEmpty()) {
                return;
            }
        }
        throw files.get(0).refused().orElseThrow();
    }

    /** Rows that were not taken. */
    public long setAside() {
        long setAside = 0;
        for (LogFile file : files) {
            setAside += file.setAside();
        }
        return setAside;
    }

    /** Tries after the day of the run, which are left out. */
    public long ahead() {
        long ahead = 0;
        for (LogFile file : files) {
            ahead += file.ahead();
        }
        return ahead;
    }

    /** Whether anything was not taken: a row, or a whole file. */
    public boolean lacks() {
        boolean lacks = setAside() > 0;
        for (LogFile file : files) {
            lacks |= file.refused().isPresent();
        }
        return lacks;
    }

    /** What the person should know of each file; what holds for several is said once. */
    public List<String> notes() {
        Map<String, List<String>> filesOf = new LinkedHashMap<>();
        for (LogFile file : files) {
            if (!file.notes().isEmpty()) {
                String note = String.join("; ", file.notes());
                List<String> names = filesOf.getOrDefault(note, new ArrayList<>());
                names.add(file.name());
                filesOf.put(note, names);
            }
        }
        List<String> notes = new ArrayList<>();
        for (Map.Entry<String, List<String>> one : filesOf.entrySet()) {
            List<String> names = one.getValue();
            notes.add(
                    files.size() == 1
                            ? one.getKey()
                            : names.get(0)
                                    + (names.size() > 1 ? " and " + (names.size() - 1) + " more: " : ": ")
                                    + one.getKey());
        }
        return notes;
    }

    /** The sessions with their tries, as the usual reader keeps them. */
    public SessionIndex index() {
        if (sessions instanceof SessionIndex index) {
            return index;
        }
        throw new IllegalStateException("the log was read by the fast reader, which keeps no such index");
    }

    /** The rules of a bare log. */
    public static LogRules rules(Settings settings, How how, ByteSource source) {
        return new LogRules(
                settings,
                Catalogue.standard(),
                Optional.empty(),
                LocalDate.MAX,
                how.order(),
                how.decimals(),
                Optional.empty(),
                how.sourcePerFile() ? stem(source.shortName()) : settings.id());
    }

    private static String stem(String name) {
        String unpacked = name.endsWith(".gz") ? name.substring(0, name.length() - ".gz".length()) : name;
        int dot = unpacked.lastIndexOf('.');
        return dot > 0 ? unpacked.substring(0, dot) : unpacked;
    }
}
