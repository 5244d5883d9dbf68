import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;

/** Writes a long log of so many made-up tries: {@code java BenchImport.java ROWS SEED FILE}. Same seed, same bytes. */
final class BenchImport {
    private static final int STUDENTS = 2_000;
    private static final int TRIES = 5;

    private BenchImport() {}

    public static void main(String[] arguments) throws IOException {
        long rows = Long.parseLong(arguments[0]);
        Random random = new Random(Long.parseLong(arguments[1]));
        LocalDate first = LocalDate.of(2025, 9, 1);
        try (BufferedWriter out = Files.newBufferedWriter(Path.of(arguments[2]))) {
            out.write("student,date,measure,trial,value,unit,help,prompt,place,observer,note\n");
            for (long row = 0; row < rows; row++) {
                long session = row / TRIES;
                out.write("s-" + session % STUDENTS + ',' + first.plusDays(session / STUDENTS) + ",line-steps,"
                        + (row % TRIES + 1) + ',' + (1 + random.nextInt(20)) + ",steps,"
                        + (random.nextInt(4) == 0 ? "independent" : "stand-by") + ",verbal,school,obs-"
                        + session % 7 + ",\n");
            }
        }
    }
}
