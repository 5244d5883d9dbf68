// DuckDB over JDBC on the same log: session table and trends, as SQL. Usage: java -cp duckdb_jdbc.jar PeerDuckDb.java JOB LOG FOLDER
// JOB is "scores" or "both". Theil-Sen and the sign sum are a join of the sessions with themselves.
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;

public class PeerDuckDb {
    static final String SESSIONS = "select student, measure, date, count(*) as n, avg(value) as mean,"
            + " median(value) as median, arg_max(value, trial) as last, stddev_samp(value) as sd,"
            + " avg(case when help = 'independent' then 1.0 else 0.0 end) as independent"
            + " from read_csv('%s', header = true, delim = ',', quote = '\"', escape = '\"')"
            + " group by student, measure, date";
    static final String TRENDS = "with p as (select student, measure, (date - date '1970-01-01')::double as x, mean as y"
            + " from sessions), line as (select student, measure, count(*) as n, regr_slope(y, x) as slope,"
            + " regr_r2(y, x) as r2 from p group by student, measure), pairs as (select a.student, a.measure,"
            + " median((b.y - a.y) / (b.x - a.x)) as robust, sum(sign(b.y - a.y)) as s from p a join p b"
            + " on a.student = b.student and a.measure = b.measure and a.x < b.x group by a.student, a.measure)"
            + " select line.*, robust, s from line left join pairs using (student, measure)";

    public static void main(String[] arguments) throws Exception {
        String sessions = SESSIONS.formatted(arguments[1]);
        Path folder = Path.of(arguments[2]);
        try (Connection connection = DriverManager.getConnection("jdbc:duckdb:");
                Statement statement = connection.createStatement()) {
            if (arguments[0].equals("scores")) {
                copy(statement, sessions, folder.resolve("scores.csv"));
                return;
            }
            statement.execute("create table sessions as " + sessions);
            copy(statement, "from sessions", folder.resolve("scores.csv"));
            copy(statement, TRENDS, folder.resolve("trends.csv"));
        }
    }

    static void copy(Statement statement, String query, Path file) throws Exception {
        statement.execute("copy (" + query + ") to '" + file + "' (header, delimiter ',')");
    }
}
