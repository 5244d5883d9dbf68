package stridetally.ingest;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Logs of a whole caseload, day after day in the same order, several tries a session, as an appended log is; with what breaks the
 * order: a child who is away, a task, an observer or a setting that changes, quoted and odd cells. Invented.
 */
public final class MadeLog {
    private static final String[] HEADINGS = {
        "student,date,activity,place,measure,side,trial,value,unit,help,observer,note",
        "date,student,place,measure,value,help",
        "source,student,session,date,measure,place,trial,value,unit,side,help,prompt",
        "activity,date,student,place,measure,session,trial,value,protocol,help,unit,observer,note",
        "student,date,measure,trial,value,of,help,note",
        "student,measure,value,date,help,note"
    };

    private final SplittableRandom random;
    private final String[] columns;
    private final String delimiter;
    private final String end;
    private final StringBuilder log = new StringBuilder();
    private final int oddOf;

    private MadeLog(SplittableRandom random, int oddOf) {
        this.random = random;
        this.columns = one(HEADINGS).split(",", -1);
        this.delimiter = one(",", ",", ",", ";", "\t");
        this.end = one("\n", "\n", "\r\n", "\r");
        this.oddOf = oddOf;
    }

    /**
     * A log.
     *
     * @param oddOf one cell of so many is odd
     */
    public static byte[] of(SplittableRandom random, int oddOf) {
        return new MadeLog(random, oddOf).bytes();
    }

    private byte[] bytes() {
        log.append(String.join(delimiter, columns)).append(end);
        List<String[]> sessions = new ArrayList<>();
        int students = 2 + random.nextInt(6);
        for (int student = 0; student < students; student++) {
            for (String measure : List.of("line-steps", "single-leg-stance", "success")) {
                for (String side : measure.equals("single-leg-stance") ? List.of("left", "right") : List.of("")) {
                    if (random.nextInt(4) > 0) {
                        sessions.add(new String[] {"S" + (8 + student), measure, side, one("am", "pm", "")});
                    }
                }
            }
        }
        for (int day = 0; day < 3 + random.nextInt(6); day++) {
            String date = "2025-0" + (1 + day % 3) + "-1" + random.nextInt(9);
            String activity = one("gym", "gym", "yard");
            for (String[] session : sessions) {
                if (random.nextInt(8) > 0) {
                    session(session, random.nextInt(30) == 0 ? "2025-04-01" : date, activity);
                }
            }
            if (random.nextInt(6) == 0 && !sessions.isEmpty()) {
                sessions.add(0, sessions.remove(sessions.size() - 1));
            }
        }
        if (random.nextInt(4) == 0) {
            log.setLength(log.length() - end.length());
        }
        return log.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void session(String[] session, String date, String activity) {
        String observer = one("obs1", "obs2");
        String own = session[1].equals("line-steps") ? "steps" : session[1].equals("success") ? "" : "s";
        String unit = random.nextInt(3) > 0 ? own : one("", "", "s", "steps", "min");
        int tries = 1 + random.nextInt(5);
        for (int number = 1; number <= tries; number++) {
            for (int column = 0; column < columns.length; column++) {
                String cell = switch (columns[column]) {
                    case "student" -> session[0];
                    case "measure" -> session[1];
                    case "side" -> session[2];
                    case "session" -> session[3];
                    case "date" -> date;
                    case "activity" -> activity;
                    case "observer" -> observer;
                    case "place" -> "school";
                    case "unit" -> unit;
                    case "trial" -> random.nextInt(20) == 0 ? "" : Integer.toString(number);
                    case "value" -> value(session[1]);
                    case "help" -> one("independent", "independent", "supervision", "contact guard", "");
                    case "prompt" -> one("", "none", "verbal");
                    case "note" ->
                        one("", "", "tired", "\"a, b\"", "\"said \"\"no\"\"\"", "caf\u00e9", "x".repeat(300));
                    default -> "";
                };
                log.append(column == 0 ? "" : delimiter).append(random.nextInt(oddOf) == 0 ? odd(cell) : cell);
            }
            log.append(end);
        }
    }

    private String value(String measure) {
        return switch (measure) {
            case "success" -> one("0", "1", "3/5");
            case "line-steps" -> Integer.toString(1 + random.nextInt(12));
            default -> one("3", "7.5", "12.25", "0.125", "8.40", "20.0");
        };
    }

    private String odd(String cell) {
        return one(
                cell + " ",
                "\"" + cell.replace("\"", "") + "\"",
                cell.toUpperCase(Locale.ROOT),
                "0" + cell,
                cell + "0",
                cell + ".5",
                "99999999",
                "2.",
                ".5",
                "1.0000000001",
                "x",
                "",
                "-" + cell,
                "\"two\nlines\"",
                "left");
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
