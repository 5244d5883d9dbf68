package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.ingest.ColumnMeaning;
import stridetally.ingest.DateOrder;
import stridetally.ingest.DayCount;
import stridetally.ingest.FormMapping;
import stridetally.ingest.TrialColumn;
import stridetally.problem.InputRefused;
import stridetally.units.DecimalMark;

/** Mappings as files. */
final class FormFileTest {
    private static final String ALL = """
            headings = ["Niño", "Semana", "Un pie (izq)", "Calentamiento"]
            heading_row = 2
            heading_lines = 1
            sheet = "Hoja \\"1\\""
            date_order = "day-first"
            decimal = "comma"
            blank_help = "independent"
            practice = ["Calentamiento"]

            [columns]
            "Niño" = "student"
            "Semana" = "date"
            "Un pie (izq)" = { measure = "single-leg-stance", side = "left", trial = 2, unit = "s" }
            "Calentamiento" = { measure = "single-leg-stance" }
            "Color" = "ignore"

            [constants]
            place = "school"
            year = 2027

            [date]
            origin = 2027-01-04
            unit = "weeks"
            first = 1

            [words.value]
            "No Vino" = "absent"
            """;

    @TempDir
    private Path folder = Path.of("");

    private FormMapping read(String text) throws IOException {
        Path file = folder.resolve("form.toml");
        Files.writeString(file, text, StandardCharsets.UTF_8);
        return FormFile.read(file, "form.toml");
    }

    private static ColumnMeaning column(FormMapping form, String heading) {
        return Objects.requireNonNull(form.columns().get(heading));
    }

    @Test
    void everythingThatCanBeSaidIsRead() throws IOException {
        FormMapping form = read(ALL);
        assertEquals(2, form.headingRow());
        assertEquals(Optional.of("Hoja \"1\""), form.sheet());
        assertEquals(Optional.of(DateOrder.DAY_FIRST), form.order());
        assertEquals(Optional.of(DecimalMark.COMMA), form.decimals());
        assertEquals(Optional.of("independent"), form.blankHelp());
        assertEquals(
                "value; measure single-leg-stance, trial 2, side left in s",
                column(form, "Un pie (izq)").words());
        assertEquals(
                Map.of(TrialColumn.MEASURE, "single-leg-stance", TrialColumn.USE, "practice"),
                column(form, "Calentamiento").sets());
        assertEquals("nothing", column(form, "Color").words());
        assertEquals(
                Optional.of(new DayCount(LocalDate.of(2027, 1, 4), 7, 1)),
                form.rules().dayCount());
        assertEquals(Optional.of(2027), form.rules().year());
        assertEquals(Map.of("no vino", "absent"), form.rules().words().get(TrialColumn.VALUE));
    }

    @Test
    void whatIsWrittenReadsBackTheSame() throws IOException {
        FormMapping form = read(ALL);
        assertEquals(form, read(FormText.of(form)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "heading = 2 | form.toml:1: \"heading\" is not a setting of a mapping; did you mean headings?",
                "[columns] ; a = 'studnt' | form.toml:2: \"studnt\" is not a column; did you mean student?",
                "[columns] ; a = { sid = 'left' } | did you mean side?",
                "[constants] ; plce = 'home' | did you mean place?",
                "[words.hlp] ; a = 'b' | did you mean help?",
                "[words.student] ; a = 'b' | names.csv",
                "date_order = 'US' | neither day-first nor month-first",
                "decimal = ',' | neither point nor comma",
                "[date] ; origin = 'May' | expected origin as a day",
                "[date] ; origin = 2027-01-04 ; unit = 'months' | neither days nor weeks",
                "heading_row = 'two' | expected a whole number",
                "a = = | not TOML",
            })
    void whatIsNotKnownIsRefusedWithItsPlace(String text, String sentence) {
        InputRefused refused = assertThrows(InputRefused.class, () -> read(text.replace(" ; ", "\n")));
        assertTrue(String.valueOf(refused.getMessage()).contains(sentence), refused.getMessage());
    }

    @Test
    void aMappingIsKeptInTheLogbookOnce() {
        Path book = folder.resolve("book");
        Logbook.create(book, "book");
        FormMapping form = FormMapping.NONE.of(List.of("Kind", "Tag"));
        try (LogbookWriter writer = LogbookWriter.open(book, java.time.OffsetDateTime.parse("2027-01-14T00:00Z"))) {
            assertTrue(writer.saveForm(form).isPresent());
            assertEquals(Optional.empty(), writer.saveForm(form));
        }
        List<FormMapping> kept = Logbook.open(book, Optional.empty()).forms();
        assertEquals(List.of("Kind", "Tag"), kept.get(0).headings());
        assertEquals(1, kept.size());
    }
}
