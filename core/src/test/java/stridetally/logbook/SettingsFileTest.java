package stridetally.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stridetally.model.DateRange;
import stridetally.model.Period;
import stridetally.model.Settings;
import stridetally.model.Thresholds;
import stridetally.model.WordScale;
import stridetally.problem.InputRefused;

class SettingsFileTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Notebook book;

    @BeforeEach
    void begin() {
        book = Notebook.create(folder);
    }

    @Test
    void readsEverySetting() {
        book.write("logbook.toml", """
                id = "north"
                version = 1
                languages = ["en", "es"]
                help_order = ["independent", "stand-by", "minimal"]

                [help_aliases]
                "close by" = "stand-by"

                [shown_units]
                walk-30s = "ft"

                [thresholds]
                on_course = 0.8
                fewest_points = 5

                [[period]]
                name = "Q1"
                from = 2025-09-02
                to = "2025-11-07"
                school = "Mirrowby"

                [[break]]
                name = "winter"
                from = 2025-12-22
                to = 2026-01-02
                """);
        Settings settings = book.open().settings();
        assertEquals("north", settings.id());
        assertEquals(List.of("en", "es"), settings.languages());
        DateRange days = new DateRange(LocalDate.of(2025, 9, 2), LocalDate.of(2025, 11, 7));
        assertEquals(List.of(new Period("Q1", days, "Mirrowby")), settings.periods());
        assertEquals(12, settings.breaks().get(0).days().days());
        assertEquals(Map.of("walk-30s", "ft"), settings.shownUnits());
        assertEquals(1, settings.help().find("Close-by").orElseThrow().rank());
        assertEquals(1, settings.help().find("SBA").orElseThrow().rank());
        assertTrue(settings.help().find("supervision").isEmpty());
        assertEquals(WordScale.PROMPT, settings.prompt());
        assertEquals(new Thresholds(0.8, 0.3, 5, 6, 4, 0.2), settings.thresholds());
    }

    @Test
    void doesWithoutTheFile() throws java.io.IOException {
        java.nio.file.Files.delete(book.root.resolve("logbook.toml"));
        assertEquals(Settings.usual("logbook"), book.open().settings());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "langauges = ['en']~logbook.toml:2: ~did you mean languages?",
                "id2 = 3~logbook.toml:2: ~did you mean id?",
                "[thresholds]|on_corse = 0.7~logbook.toml:3: ~did you mean on_course?",
                "[thresholds]|on_course = 7~logbook.toml:3: ~from 0 to 1",
                "[thresholds]|on_course = 0.2~logbook.toml~below on_course",
                "languages = 'en'~logbook.toml:2: ~expected a list",
                "[[period]]|name = 'Q1'|from = 2025-09-02~logbook.toml:2: ~needs \"to\"",
                "[[period]]|from = 2025-09-02|to = 2025-11-07~logbook.toml:2: ~needs a name",
                "[[break]]|name = 'x'|from = 2025-09-02|to = 2025-08-07~logbook.toml:2: ~before it begins",
                "help_order = ['minimal', 'minimal']~logbook.toml:2: ~twice",
                "[help_aliases]|near = 'beside'~logbook.toml:3: ~not a help word",
                "languages = ['en'~logbook.toml:~not TOML"
            })
    void refusesWhatItCannotUseWithTheLine(String lines, String place, String reason) {
        book.write("logbook.toml", "id = 'north'\n" + lines.replace('|', '\n') + "\n");
        InputRefused refused = assertThrows(InputRefused.class, () -> book.open());
        String sentence = String.valueOf(refused.getMessage());
        assertTrue(sentence.startsWith(place.strip()) && sentence.contains(reason), sentence);
    }

    @Test
    void namesTheLineOfASyntaxError() {
        book.write("logbook.toml", "id = 'north'\nversion = 1\nlanguages = = 3\n");
        InputRefused refused = assertThrows(InputRefused.class, () -> book.open());
        assertTrue(String.valueOf(refused.getMessage()).startsWith("logbook.toml:3"), refused.getMessage());
    }

    @Test
    void survivesDeepNesting() {
        book.write("logbook.toml", "id = " + "[".repeat(100_000) + "\n");
        assertThrows(InputRefused.class, () -> book.open());
    }
}
