// A made-up log of trials for measuring speed, the same for the same seed. Usage: java MakeLog.java ROWS FILE [SEED]
//
// One row a try, in the order of the days, as a log grows: the whole caseload of a day stands together, so no student's
// rows do. Each student has two measures, about 50 days and 5 tries a day. A sixth of the notes are quoted.
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SplittableRandom;

public class MakeLog {
    static final int DAYS = 50;
    static final int TRIES = 5;
    static final int HALVES = 5;
    static final String[] MEASURES = {
        "single-leg-stance", "tandem-stance", "line-steps", "walk-speed", "hop-count", "tandem-steps"
    };
    static final String[] UNITS = {"s", "s", "steps", "m/s", "count", "steps"};
    static final String[] SIDES = {"left", "left", "", "", "right", ""};
    static final int[] DECIMALS = {1, 2, 0, 2, 0, 0};
    static final String[] HELP = {"independent", "supervision", "hand-held one", "contact guard", "minimal"};
    static final String[] NOTES = {
        "", "", "", "", "", "", "tired today", "new shoes", "\"gym busy, moved to hall\"",
        "\"said \"\"wobbly\"\" on turn\"", "repeat after rest", "outdoor surface"
    };

    public static void main(String[] arguments) throws IOException {
        long rows = Long.parseLong(arguments[0]);
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 20250901L;
        int students = (int) (rows / (2L * DAYS * TRIES));
        SplittableRandom random = new SplittableRandom(seed);
        int[][] measure = new int[students][2];
        double[][] start = new double[students][2];
        double[][] slope = new double[students][2];
        for (int s = 0; s < students; s++) {
            measure[s][0] = random.nextInt(6);
            do {
                measure[s][1] = random.nextInt(6);
            } while (measure[s][1] == measure[s][0]);
            for (int k = 0; k < 2; k++) {
                boolean walk = measure[s][k] == 3;
                start[s][k] = walk ? 0.7 + random.nextDouble() : 3 + 6 * random.nextDouble();
                slope[s][k] = (walk ? 0.001 : 0.015) * (random.nextDouble() - 0.25);
            }
        }
        LocalDate first = LocalDate.of(2024, 9, 3);
        StringBuilder text = new StringBuilder(1 << 16);
        text.append("student,date,activity,measure,side,trial,value,unit,help,observer,note\n");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(arguments[1])), 1 << 20)) {
            for (int d = 0; d < DAYS; d++) {
                for (int half = 0; half < HALVES; half++) {
                    String date = first.plusDays(d * 7L + half).toString();
                    for (int s = half; s < students; s += HALVES) {
                        for (int k = 0; k < 2; k++) {
                            double middle = start[s][k] + slope[s][k] * (d * 7 + half);
                            session(text, random, s, measure[s][k], date, middle);
                        }
                        if (text.length() > 60_000) {
                            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
                            text.setLength(0);
                        }
                    }
                }
            }
            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
        }
    }

    static void session(StringBuilder text, SplittableRandom random, int student, int m, String date, double middle) {
        double size = m == 3 ? 0.2 : 1;
        double day = size * (random.nextDouble() - 0.5);
        for (int t = 1; t <= TRIES; t++) {
            double noise = random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5;
            double value = Math.max(m == 3 ? 0.1 : 0, middle + day + size * 1.5 * noise);
            String code = Integer.toString(student);
            text.append('S').append("0".repeat(Math.max(0, 6 - code.length()))).append(code).append(',').append(date);
            text.append(",gym,").append(MEASURES[m]).append(',').append(SIDES[m]).append(',').append(t).append(',');
            long scale = DECIMALS[m] == 0 ? 1 : DECIMALS[m] == 1 ? 10 : 100;
            long whole = Math.round(value * scale);
            text.append(whole / scale);
            if (scale > 1) {
                text.append('.').append(scale == 100 && whole % scale < 10 ? "0" : "").append(whole % scale);
            }
            int help = random.nextInt(10) < 4 ? 0 : random.nextInt(HELP.length);
            text.append(',').append(UNITS[m]).append(',').append(HELP[help]).append(",obs0").append(1 + student % 7);
            text.append(',').append(NOTES[random.nextInt(NOTES.length)]).append('\n');
        }
    }
}
