package stridetally.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.Writer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stridetally.problem.OutputRefused;
import stridetally.scoring.Bound;
import stridetally.stats.Estimate;
import stridetally.table.Cell;

/**
 * Writes a nested JSON document. Numbers are unrounded; a figure is an object with its {@code value}, which is null with
 * the {@code reason} beside it when it cannot be had. Blank words are null. Two spaces a level, LF line ends.
 */
final class JsonPage {
    private final JsonGenerator generator;

    private interface Step {
        void run() throws IOException;
    }

    JsonPage(Appendable out) {
        try {
            generator = new JsonFactory().createGenerator(new Onto(out));
        } catch (IOException cause) {
            throw refused(cause);
        }
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(indenter);
        printer.indentArraysWith(indenter);
        generator.setPrettyPrinter(printer);
    }

    /** The document itself, or one member of an array. */
    void object(Runnable members) {
        step(generator::writeStartObject);
        members.run();
        step(generator::writeEndObject);
    }

    void object(String name, Runnable members) {
        step(() -> generator.writeFieldName(name));
        object(members);
    }

    /** The document itself, when it holds several. */
    <T> void array(List<T> items, Consumer<T> each) {
        step(generator::writeStartArray);
        items.forEach(each);
        step(generator::writeEndArray);
    }

    <T> void array(String name, List<T> items, Consumer<T> each) {
        step(() -> generator.writeFieldName(name));
        array(items, each);
    }

    void texts(String name, List<String> texts) {
        array(name, texts, text -> step(() -> generator.writeString(text)));
    }

    void text(String name, String text) {
        step(() -> {
            if (text.isBlank()) {
                generator.writeNullField(name);
            } else {
                generator.writeStringField(name, text);
            }
        });
    }

    void text(String name, Optional<String> text) {
        text(name, text.orElse(""));
    }

    void date(String name, Optional<LocalDate> day) {
        text(name, day.map(LocalDate::toString));
    }

    void date(String name, LocalDate day) {
        text(name, day.toString());
    }

    void whole(String name, long number) {
        step(() -> generator.writeNumberField(name, number));
    }

    void number(String name, double number) {
        step(() -> {
            generator.writeFieldName(name);
            generator.writeNumber(Cell.number(number).plain());
        });
    }

    void number(String name, Optional<Double> number) {
        number.ifPresentOrElse(value -> number(name, value), () -> step(() -> generator.writeNullField(name)));
    }

    void figure(String name, Estimate<Double> figure) {
        measured(name, figure.map(Measured::exact));
    }

    void measured(String name, Estimate<Measured> figure) {
        object(name, () -> {
            number("value", figure.value().map(Measured::value));
            figure.value().flatMap(Measured::bound).ifPresent(bound -> text("bound", words(bound)));
            if (!figure.isEstimated()) {
                text("reason", figure.reason());
            }
        });
    }

    void finish() {
        step(() -> {
            generator.writeRaw('\n');
            generator.close();
        });
    }

    private static String words(Bound bound) {
        return bound == Bound.AT_LEAST ? "at least" : "at most";
    }

    private static void step(Step step) {
        try {
            step.run();
        } catch (IOException cause) {
            throw refused(cause);
        }
    }

    private static OutputRefused refused(IOException cause) {
        return new OutputRefused("the document cannot be written; check the disk and try again", cause);
    }

    /** A writer onto what the caller owns: closing it closes nothing. */
    private static final class Onto extends Writer {
        private final Appendable out;

        Onto(Appendable out) {
            this.out = out;
        }

        @Override
        public void write(char[] text, int offset, int length) throws IOException {
            out.append(new String(text, offset, length));
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
